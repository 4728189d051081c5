/** The wrenches of the workshop: the list, a new one, and one to edit. */

import { value } from '../../log/workshop.js';
import { TORQUE_WORDS } from '../../trade/units.js';
import { lost } from '../../views/things.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, NumberField, numberOf, TextField } from '../forms_fields.js';
import { Before } from '../frame/before.js';
import { Act, Dock, html, Icon, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';
import { wrenchSays } from './wrench.js';

const SORTS = ['click', 'beam', 'dial', 'display', 'angle'];
const TEXTS = ['name', 'sort', 'unit', 'calibrated', 'lies'];
const NUMBERS = ['least', 'most', 'graduation', 'deviation'];
const BACK = { to: '/more', says: t('form.back') };

/** @param {any} props */
export function screen({ params, store, back }) {
  const { state, workshop } = useSlice(store, (s) => s.allOf('wrench'), []);
  if (state === 'wait' || !workshop)
    return html`<${Page} title=${t('wrench.list')} back=${BACK} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  if (!params.id) return html`<${List} wrenches=${workshop.all('wrench')} />`;
  const subject = params.id === 'new' ? null : workshop.subject(params.id);
  return html`<${Edit} key=${params.id} id=${params.id} subject=${subject} store=${store} back=${back} />`;
}

/** @param {any} subject its fields by name */
const fieldsOf = (subject) =>
  Object.fromEntries([...TEXTS, ...NUMBERS].map((name) => [name, value(subject, name) ?? '']));

/** @param {{wrenches: any[]}} props */
function List({ wrenches }) {
  return html`<${Page} title=${t('wrench.list')} back=${BACK} now="more"><div class="left">
    <div class="id"><h1 tabindex="-1">${t('wrench.list')}</h1></div>
    ${
      wrenches.length
        ? html`<ul class="sheet">${wrenches.map((one) => html`<li key=${one.id}><${ListRow} id=${one.id} wrench=${fieldsOf(one)} /></li>`)}</ul>`
        : html`<${Missing} says=${t('wrench.none')} />`
    }
    <${Dock}><${Act} href="/wrench/new" label=${t('wrench.new')} /></${Dock}></div></${Page}>`;
}

/** @param {any} props */
function ListRow({ id, wrench }) {
  return html`<a class="row" href=${`/wrench/${id}`}><${Icon} name="i-wrench" /><span class="says"><b>${wrench.name}</b>
    <span class="soft">${wrenchSays(wrench).join(' · ')}</span></span></a>`;
}

/** @param {any} props */
function Edit({ id, subject, store, back }) {
  /** @type {Record<string, any>} */
  const start = { ...fieldsOf(subject), ...(subject ? {} : { unit: 'N·m', sort: 'click' }) };
  const [draft, change, forget] = useDraft(store, `wrench:${id}`, start);
  const { keep, trouble } = useKeep(store);
  if (!draft)
    return html`<${Page} title=${t('wrench.edit.title')} back=${BACK} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const act = async () => {
    const entry = {
      heading: 'wrench',
      about: subject ? id : freshId(),
      body: { fields: changed(draft, subject) },
    };
    if (!(await keep([entry]))) return false;
    await forget();
    feedback('kept');
    say(t('form.kept', { name: draft.name }));
    back('/wrenches');
    return true;
  };
  const set = (/** @type {string} */ name) => (/** @type {string} */ text) =>
    change({ [name]: text });
  const number = (/** @type {string} */ name, /** @type {string} */ hint = '') =>
    html`<${NumberField} id=${name} label=${t(`wrench.${name}`)} value=${draft[name]} onChange=${set(name)} hint=${hint} />`;
  return html`<${Page} title=${t('wrench.edit.title')} back=${{ to: '/wrenches', says: t('form.back') }} quiet><div class="left form">
    <h1 tabindex="-1">${t('wrench.edit.title')}</h1>
    <${TextField} id="name" label=${t('form.name')} value=${draft.name} onChange=${set('name')} />
    <${Chips} label=${t('wrench.sort')} value=${draft.sort} onChange=${set('sort')} words=${SORTS.map((sort) => ({ value: sort, says: t(`wrench.sort.${sort}`) }))} />
    <${Chips} label=${t('wrench.unit')} value=${draft.unit} onChange=${set('unit')} words=${(draft.sort === 'angle' ? ['°'] : TORQUE_WORDS).map((unit) => ({ value: unit, says: unit }))} />
    <div class="in-row">${number('least')}${number('most')}</div>
    <div class="in-row">${number('graduation')}${number('deviation')}</div><p class="hint">${t('wrench.deviation.hint')}</p>
    <${TextField} id="calibrated" type="date" label=${t('wrench.calibrated.on')} value=${draft.calibrated} onChange=${set('calibrated')} />
    <${TextField} id="lies" label=${t('wrench.lies')} value=${draft.lies} onChange=${set('lies')} hint=${t('form.optional')} />
    ${subject && html`<${Before} heading="wrench" lost=${lost(subject)} />`}
    <${Dock}><${Act} confirm disabled=${!draft.name.trim()} onPress=${act} label=${t('form.keep')} second=${draft.name.trim() ? undefined : t('form.wants-name')} /></${Dock}>
  </div>${trouble}</${Page}>`;
}

/**
 * Only what is different is written, so that two devices may each change another field.
 * @param {Record<string, any>} draft
 * @param {any} subject
 */
function changed(draft, subject) {
  const now = [
    ...TEXTS.map((name) => [name, draft[name].trim() || null]),
    ...NUMBERS.map((name) => [name, numberOf(draft[name])]),
  ];
  return Object.fromEntries(now.filter(([name, text]) => text !== value(subject, name)));
}
