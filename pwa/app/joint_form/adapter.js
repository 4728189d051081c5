/** The adapter of a joint's wrench: its lengths, its angle, and what then has to be set. */

import { ADAPTER } from '../../trade/workings/adapter.js';
import { Chips, NumberField, numberOf, TextField } from '../forms_fields.js';
import { html, Icon } from '../frame/index.js';
import { written } from '../run/figures.js';
import { t } from '../texts/index.js';
import { Drawing } from '../workings/drawing.js';
import { outcomeOf } from '../workings/outcome.js';

/**
 * @typedef {{on: boolean, name: string, adapter_length: string, wrench_length: string, angle: string,
 *   unit: string}} AdapterForm
 */

const LENGTHS = /** @type {const} */ (['adapter_length', 'wrench_length']);
const UNITS = ['mm', 'in'];

/** @returns {AdapterForm} */
export const noAdapter = () => ({
  on: false,
  name: '',
  adapter_length: '',
  wrench_length: '',
  angle: '0',
  unit: 'mm',
});

/**
 * The form of a kept adapter: its lengths, or its name alone as older pages kept it.
 * @param {any} kept
 * @returns {AdapterForm}
 */
export function adapterForm(kept) {
  if (!kept) return noAdapter();
  if (typeof kept === 'string') return { ...noAdapter(), on: true, name: kept };
  return {
    on: true,
    name: kept.name ?? '',
    adapter_length: kept.adapter_length?.value ?? '',
    wrench_length: kept.wrench_length?.value ?? '',
    angle: kept.angle?.value ?? '0',
    unit: kept.adapter_length?.unit ?? 'mm',
  };
}

/** @param {AdapterForm} adapter the field as it is kept, its name alone, or null */
export function adapterKept(adapter) {
  if (!adapter.on) return null;
  const name = adapter.name.trim();
  const lengths = lengthsOf(adapter);
  if (!lengths) return name || null;
  return { ...(name ? { name } : {}), ...lengths };
}

/** @param {AdapterForm} adapter */
function lengthsOf({ adapter_length, wrench_length, angle, unit }) {
  const [reach, long, turn] = [adapter_length, wrench_length, angle].map(numberOf);
  if (!reach || !long || !turn) return null;
  return {
    adapter_length: { value: reach, unit },
    wrench_length: { value: long, unit },
    angle: { value: turn, unit: '°' },
  };
}

/** Whether some of it is typed and the rest is wanted. @param {AdapterForm} adapter */
export function adapterWants(adapter) {
  if (!adapter.on || lengthsOf(adapter)) return false;
  return LENGTHS.some((name) => adapter[name].trim() !== '') || !adapter.name.trim();
}

/** @param {{form: any, change: (part: any) => void, target: any}} props */
export function Adapter({ form, change, target }) {
  const { adapter } = form;
  const put = (/** @type {Partial<AdapterForm>} */ part) =>
    change({ adapter: { ...adapter, ...part } });
  const words = [
    { value: 'none', says: t('joint.adapter.none') },
    { value: 'some', says: t('joint.adapter.some') },
  ];
  return html`<section class="stack"><${Chips} label=${t('joint.adapter')} value=${adapter.on ? 'some' : 'none'} words=${words}
      onChange=${(/** @type {string} */ word) => put({ on: word === 'some' })} />
    ${adapter.on && html`<${Lengths} adapter=${adapter} put=${put} target=${target} />`}</section>`;
}

/** @param {any} props */
function Lengths({ adapter, put, target }) {
  const found = outcome(adapter, target);
  const field = (/** @type {string} */ name, /** @type {string} */ ask, /** @type {any} */ id) =>
    html`<${NumberField} id=${id} label=${t(`ask.${ask}`)} value=${adapter[name]} hint=${t(`ask.${ask}.hint`)}
      onChange=${(/** @type {string} */ text) => put({ [name]: text })} />`;
  return html`<${TextField} id="adapter-name" label=${t('joint.adapter.name')} value=${adapter.name} hint=${t('form.optional')}
      onChange=${(/** @type {string} */ name) => put({ name })} />
    ${field('adapter_length', 'adapter-length', 'adapter-length')}
    ${field('wrench_length', 'wrench-length', 'wrench-length')}
    <${Chips} label=${t('joint.adapter.unit')} value=${adapter.unit} onChange=${(/** @type {string} */ unit) => put({ unit })}
      words=${UNITS.map((unit) => ({ value: unit, says: unit }))} />
    ${field('angle', 'angle', 'adapter-angle')}
    <${Result} found=${found} target=${target} />`;
}

/** @param {AdapterForm} adapter @param {any} target */
function outcome(adapter, target) {
  const lengths = lengthsOf(adapter);
  if (!lengths) return null;
  return outcomeOf(ADAPTER, {
    wanted: target ?? { value: '100', unit: 'N·m' },
    'wrench-length': lengths.wrench_length,
    'adapter-length': lengths.adapter_length,
    angle: lengths.angle,
  });
}

/** @param {any} props */
function Result({ found, target }) {
  if (!found) return null;
  if (!found.told) {
    const says = Object.values(found.trouble)[0] ?? found.refusal;
    return html`<p class="wrong"><${Icon} name="i-caution" />${says}</p>`;
  }
  const [setting] = found.told.lines;
  const set = written({ value: setting.shown, unit: setting.unit });
  return html`<${Drawing} told=${found.told} />
    ${target && html`<p class="read-as" role="status">${t('joint.adapter.set', { set, target: written(target) })}</p>`}`;
}
