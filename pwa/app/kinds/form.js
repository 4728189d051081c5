/** The form of a kind, top to bottom as a piece is judged: look, measure, why not, goes with. */

import { useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { TextField, YesNo } from '../forms_fields.js';
import { html, Key } from '../frame/index.js';
import { Choice } from '../new_thing/choice.js';
import { t } from '../texts/index.js';
import { shownFields } from './fields.js';
import { readyNames, readyOf, startOf } from './ready.js';
import { Measure, measureSays, Question, Rows } from './rows.js';

/** @param {any} props */
export function Form({ subject, kinds, shown, change }) {
  const text = (/** @type {string} */ name, /** @type {string} */ label, hint = '') =>
    html`<${TextField} id=${name} label=${label} hint=${hint} value=${shown[name]} onChange=${(/** @type {string} */ typed) => change({ [name]: typed })} />`;
  const yesNo = (
    /** @type {string} */ name,
    /** @type {string} */ label,
    /** @type {string} */ texts,
  ) =>
    html`<${YesNo} label=${label} texts=${texts} value=${shown[name]} onChange=${(/** @type {any} */ said) => change({ [name]: said })} />`;
  return html`${!value(subject, 'criteria')?.length && html`<${Start} ...${{ subject, kinds, shown, change }} />`}
    ${text('name', t('form.name'), isThere(subject, kinds, shown.name) ? t('kind.clash') : '')}${text('plural', t('field.plural'))}
    <${Rows} heading=${t('kind.look')} none=${t('kind.look.none')} add=${t('kind.look.add')} rows=${shown.criteria} Row=${Question} about=${subject?.id}
      onChange=${(/** @type {any[]} */ criteria) => change({ criteria })} title=${(/** @type {any} */ row) => row.asks || t('kind.look.new')} says=${(/** @type {any} */ row) => row.hint} />
    ${text('source', t('kind.source'))}
    <${Rows} heading=${t('kind.measure')} none=${t('kind.measure.none')} add=${t('kind.measure.add')} rows=${shown.measures} Row=${Measure}
      onChange=${(/** @type {any[]} */ measures) => change({ measures })} title=${(/** @type {any} */ row) => row.name || t('kind.measure.new')} says=${measureSays} />
    <section class="stack form"><h2>${t('kind.reasons')}</h2>${['spare', 'machine', 'scrap'].map((word) => text(word, t(`kind.reasons.${word}`), t('kind.parted')))}</section>
    ${yesNo('own_place', t('kind.place'), 'kind.place')}
    ${yesNo('single_use', t('field.single_use'), 'once')}
    <${GoesWith} ...${{ subject, kinds, shown, change }} />`;
}

/** Whether another kind is called so. @param {any} subject @param {any[]} kinds @param {string} name */
const isThere = (subject, kinds, name) =>
  kinds.some(
    (one) => one.id !== subject?.id && one.name.toLowerCase() === name.trim().toLowerCase(),
  );

/** @param {any} props */
function Start({ subject, kinds, shown, change }) {
  const list = readyNames(subject ? [] : kinds).map((name) => ({ id: name, name }));
  const [begun, setBegun] = useState('');
  const own = subject ? { name: shown.name, plural: shown.plural } : {};
  const begin = (/** @type {string} */ name) => {
    setBegun(name);
    change({ ...shownFields(null, name ? startOf(name, kinds) : {}), ...own });
  };
  return html`<div class="stack"><${Choice} id="ready" label=${t('kind.from')} none=${t('kind.from.none')} more=${t('kind.from.more')} list=${list} heading="kind"
    first=${readyOf(shown.name)?.name} value=${begun} onChange=${begin} />
    <p class="hint">${t('kind.from.hint')}</p></div>`;
}

/** Kinds that it cannot be fitted without. @param {any} props */
function GoesWith({ subject, kinds, shown, change }) {
  const chosen = kinds.filter((/** @type {any} */ one) => shown.companions.includes(one.id));
  const list = kinds.filter(
    (/** @type {any} */ one) => one.id !== subject?.id && !shown.companions.includes(one.id),
  );
  const usual = readyOf(shown.name)?.goesWith ?? [];
  const put = (/** @type {string[]} */ companions) => change({ companions });
  return html`<div class="stack"><h2>${t('kind.goes-with')}</h2>
    ${usual.length > 0 && html`<p class="hint">${t('kind.goes-with.usual', { names: usual.join(', ') })}</p>`}
    ${
      chosen.length > 0 &&
      html`<div class="chips" role="group" aria-label=${t('kind.goes-with')}>${chosen.map(
        (
          /** @type {any} */ one,
        ) => html`<${Key} key=${one.id} className="press" pressed=${true} label=${one.name}
      onPress=${() => put(shown.companions.filter((/** @type {string} */ id) => id !== one.id))} />`,
      )}</div>`
    }
    <${Choice} id="companion" label=${t('kind.goes-with.add')} none=${t('kind.goes-with.none')} more=${t('edit.more')} list=${list} heading="kind" value=""
      onChange=${(/** @type {string} */ id) => id && put([...shown.companions, id])} /></div>`;
}
