/** A blank label given to something that is here already, found by name. */

import { useEffect, useState } from 'preact/hooks';
import { code as codeView } from '../../views/code.js';
import { find } from '../../views/find.js';
import { feedback } from '../feedback.js';
import { TextField } from '../forms_fields.js';
import { markOf, pathOf } from '../frame/code_found.js';
import {
  Act,
  Code,
  codeGroups,
  Dock,
  html,
  Icon,
  Missing,
  Page,
  say,
  useSlice,
  Wait,
} from '../frame/index.js';
import { Press } from '../press.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

/** What a label is stuck on. */
const LABELLED = ['part', 'holder', 'wrench', 'instrument'];

/** @param {any} props */
export function screen({ params, store, go }) {
  const { workshop } = useSlice(store, (s) => s.codeSlice(params.code), [params.code]);
  const [rows, setRows] = useState(/** @type {any[] | null} */ (null));
  const [query, setQuery] = useState('');
  const [picked, setPicked] = useState(/** @type {any} */ (null));
  const { keep, trouble } = useKeep(store);
  useEffect(() => {
    Promise.resolve(store.findRows()).then(setRows);
  }, []);
  const back = { to: `/L/${params.code}`, says: t('form.back') };
  const title = t('bind.title', { code: codeGroups(params.code) });
  if (!workshop || !rows)
    return html`<${Page} title=${title} back=${back} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const found = codeView(workshop, params.code);
  const hits = query.trim() ? hitsOf(rows, query) : [];
  const act = async () => {
    const entry = {
      heading: 'label',
      about: found.code,
      after: found.after,
      body: { marks: picked.id },
    };
    if (!(await keep([entry]))) return false;
    feedback('kept');
    say(t('form.kept', { name: picked.name }));
    go(pathOf(picked), { replace: true });
    return true;
  };
  return html`<${Page} title=${title} back=${back} quiet><div class="left form"><h1 tabindex="-1">${title}</h1><div class="about"><${Code} code=${found.code} /></div>
    <${TextField} id="find" label=${t('bind.find')} value=${query} onChange=${setQuery} />
    ${
      hits.length > 0 &&
      html`<div class="sheet pick" role="group" aria-label=${title}>${hits.map(
        (/** @type {any} */ hit) => html`<${Press} key=${hit.id} class="row"
      aria-pressed=${String(hit.id === picked?.id)} onPress=${() => setPicked(hit)}><${Icon} name=${markOf(hit)} /><span class="says"><b>${hit.name}</b></span></${Press}>`,
      )}</div>`
    }
    ${query.trim() && !hits.length && html`<${Missing} says=${t('bind.nothing', { query })} />`}
    <${Dock}><${Act} confirm disabled=${!picked} onPress=${act} label=${picked ? t('bind.act', { name: picked.name }) : t('bind.none')} /></${Dock}>
  </div>${trouble}</${Page}>`;
}

/** @param {any[]} rows @param {string} query */
function hitsOf(rows, query) {
  const found = find(
    rows.filter((row) => LABELLED.includes(row.heading)),
    query,
  );
  return found.groups.flatMap((/** @type {any} */ group) => group.hits).slice(0, 10);
}
