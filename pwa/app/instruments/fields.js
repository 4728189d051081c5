/** The fields of a wrench's and an instrument's form. */
import { TORQUE_WORDS } from '../../trade/units.js';
import { Chips, NumberField, TextField } from '../forms_fields.js';
import { html } from '../frame/index.js';
import { QUANTITIES, unitsOf } from '../quantities.js';
import { t } from '../texts/index.js';
import { SORTS, WRENCH_SORTS } from './form.js';
import { sortSays } from './says.js';

/** @typedef {{shown: Record<string, string>, set: (name: string) => (to: string) => void}} FieldsProps */

/** @param {FieldsProps & {name: string, label: string}} props */
const Numeric = ({ shown, set, name, label }) =>
  html`<${NumberField} id=${name} label=${label} value=${shown[name]} signed=${name === 'least' || name === 'most'} onChange=${set(name)} />`;

/** @param {string[]} units */
const asWords = (units) => units.map((unit) => ({ value: unit, says: unit }));

/** @param {FieldsProps} props */
export function WrenchFields({ shown, set }) {
  const number = (/** @type {string} */ name) =>
    html`<${Numeric} ...${{ shown, set, name }} label=${t(`wrench.${name}`)} />`;
  const units = shown.sort === 'angle' ? ['°'] : [...TORQUE_WORDS];
  return html`<${TextField} id="name" label=${t('form.name')} value=${shown.name} onChange=${set('name')} />
    <${Chips} label=${t('wrench.sort')} value=${shown.sort} onChange=${set('sort')} words=${WRENCH_SORTS.map((sort) => ({ value: sort, says: t(`wrench.sort.${sort}`) }))} />
    <${Chips} label=${t('wrench.unit')} value=${shown.unit} onChange=${set('unit')} words=${asWords(units)} />
    <div class="in-row">${number('least')}${number('most')}</div>
    ${number('graduation')}${number('deviation')}<p class="hint">${t('wrench.deviation.hint')}</p>`;
}

/** @param {FieldsProps} props */
export function InstrumentFields({ shown, set }) {
  const { sort = '', quantity = '', unit = '' } = shown;
  const number = (/** @type {string} */ name, of = '') =>
    html`<${Numeric} ...${{ shown, set, name }} label=${t(`instrument.${name}`) + of} />`;
  const sorts = Object.keys(SORTS).concat(sort && !SORTS[sort] ? [sort] : []);
  return html`<${Chips} label=${t('wrench.sort')} value=${sort} onChange=${set('sort')} words=${sorts.map((one) => ({ value: one, says: sortSays({ heading: 'instrument', sort: one }) }))} />
    <${TextField} id="name" label=${t('form.name')} value=${shown.name} onChange=${set('name')} />
    <${Chips} label=${t('instrument.quantity')} value=${quantity} onChange=${set('quantity')} words=${QUANTITIES.map((one) => ({ value: one, says: t(`quantity.${one}`) }))} />
    <${Chips} label=${t('wrench.unit')} value=${unit} onChange=${set('unit')} words=${asWords(unitsOf(quantity))} />
    <div class="in-row">${number('least', `, ${unit}`)}${number('most', `, ${unit}`)}</div><p class="hint">${t('instrument.range.hint')}</p>${number('resolution', `, ${unit}`)}
    ${number('deviation')}${number('uncertainty')}<p class="hint">${t('instrument.sure.hint', { unit })}</p>`;
}

/** When it was calibrated and is due again. @param {FieldsProps} props */
export const Days = ({ shown, set }) =>
  html`<${TextField} id="calibrated" type="date" label=${t('wrench.calibrated.on')} value=${shown.calibrated} onChange=${set('calibrated')} />
  <${TextField} id="due" type="date" label=${t('tool.due.on')} value=${shown.due} onChange=${set('due')} hint=${t('cal.due.hint')} />`;

/** Where it lies and what else is to be said. @param {FieldsProps} props */
export const Rest = ({ shown, set }) =>
  html`<${TextField} id="lies" label=${t('wrench.lies')} value=${shown.lies} onChange=${set('lies')} hint=${t('form.optional')} />
  <${TextField} id="note" label=${t('fact.note')} value=${shown.note} area onChange=${set('note')} />`;

/** What a certificate says: the days, and how far it is off. @param {FieldsProps & {heading: string}} props */
export function Certificate({ heading, shown, set }) {
  const number = (/** @type {string} */ name, /** @type {string} */ label) =>
    html`<${Numeric} ...${{ shown, set, name }} label=${label} />`;
  return html`<${Days} shown=${shown} set=${set} />
    ${number('deviation', t(`${heading}.deviation`))}${heading === 'instrument' && number('uncertainty', t('instrument.uncertainty'))}
    <p class="hint">${heading === 'wrench' ? t('wrench.deviation.hint') : t('instrument.sure.hint', { unit: shown.unit ?? '' })}</p>`;
}
