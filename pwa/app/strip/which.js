/** Which donor is stripped: one that is known, or a new one by its name. */

import { useState } from 'preact/hooks';
import { Chips, TextField } from '../forms_fields.js';
import { Act, Dock, html, Page } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';

const NEW = 'new';

/** @param {any} props */
export function Which({ donors, back, keep, begin, trouble }) {
  const [picked, setPicked] = useState(donors.length ? '' : NEW);
  const [name, setName] = useState('');
  const known = donors.find((/** @type {any} */ one) => one.id === picked);
  const said = known?.name ?? name.trim();
  const act = async () => {
    if (known) return begin(known.id);
    const id = freshId();
    const fields = { name: name.trim() };
    if (!(await keep([{ heading: 'donor', about: id, body: { fields } }]))) return false;
    return begin(id);
  };
  const words = [
    ...donors.map((/** @type {any} */ one) => ({ value: one.id, says: one.name })),
    { value: NEW, says: t('strip.new') },
  ];
  const ready = Boolean(picked && said);
  return html`<${Page} title=${t('strip.title')} back=${back} quiet><div class="left form">
    <div class="id"><h1 tabindex="-1">${t('strip.title')}</h1>${!donors.length && html`<p class="where">${t('strip.which.none')}</p>`}</div>
    ${donors.length > 0 && html`<${Chips} label=${t('strip.which')} value=${picked} words=${words} onChange=${setPicked} />`}
    ${picked === NEW && html`<${TextField} id="donor-name" label=${t('strip.new.name')} value=${name} onChange=${setName} />`}
    <${Dock}><${Act} confirm disabled=${!ready} onPress=${act} label=${ready ? t('strip.begin', { name: said }) : t('strip.begin.none')} /></${Dock}>
  </div>${trouble}</${Page}>`;
}
