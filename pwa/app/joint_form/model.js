/** What the joint form holds, where it comes from, and the fields it becomes. */

import { value } from '../../log/workshop.js';
import { alike } from '../../views/plain.js';
import { numberOf } from '../forms_fields.js';
import { adapterForm, adapterKept, adapterWants, noAdapter } from './adapter.js';
import { fastenersOf, groupsOf, numbersIn } from './fasteners.js';

const PLAIN = [
  'name',
  'noun',
  'plural',
  'thread',
  'strength_class',
  'pattern',
  'casting',
  'fastener_part',
  'wrench',
  'build',
];

/**
 * @typedef {{group: string, value: string, unit: string}} FormValue
 * @typedef {{id: string, how: string, values: FormValue[]}} FormPass
 * @typedef {Record<string, any>} Form
 */

/** @returns {FormValue} */
export const newValue = (unit = 'N·m') => ({ group: '', value: '', unit });

/** @param {string} how @param {FormPass[]} passes @returns {FormPass} */
export function newPass(how, passes) {
  const used = new Set(passes.map((pass) => pass.id));
  let n = passes.length;
  while (used.has(`p${n}`)) n += 1;
  const valued = how === 'torque' || how === 'angle';
  const unit =
    how === 'angle'
      ? '°'
      : (passes.flatMap((p) => p.values).find((v) => v.unit !== '°')?.unit ?? 'N·m');
  return { id: `p${n}`, how, values: valued ? [newValue(unit)] : [] };
}

/** @param {string | undefined} part a part the new joint clamps @returns {Form} */
export function emptyForm(part) {
  return {
    name: '',
    noun: 'bolt',
    plural: 'bolts',
    thread: '',
    strength_class: '',
    adapter: noAdapter(),
    pattern: 'rows',
    casting: 'plain',
    fastener_part: '',
    wrench: '',
    build: '',
    count: 10,
    rows: 2,
    points: [],
    fasteners: null,
    order: '',
    parts: part ? [part] : [],
    passes: [newPass('hand', []), newPass('torque', [newPass('hand', [])])],
    lubricant: '',
    source: '',
    cautions: [],
    retorque: '',
    groups: {},
  };
}

/** @param {any} subject @returns {Form} */
export function formOf(subject) {
  const programme = value(subject, 'programme') ?? {};
  const fasteners = value(subject, 'fasteners') ?? [];
  const numberOfId = new Map(fasteners.map((/** @type {any} */ f) => [f.id, f.number]));
  const empty = emptyForm(undefined);
  const plain = Object.fromEntries(
    PLAIN.map((name) => [name, value(subject, name) ?? (name === 'casting' ? 'plain' : '')]),
  );
  return {
    ...empty,
    ...plain,
    adapter: adapterForm(value(subject, 'adapter')),
    fasteners,
    count: fasteners.length || 10,
    parts: value(subject, 'parts') ?? [],
    points: fasteners.map((/** @type {any} */ { x, y }) => ({ x, y })),
    groups: groupsOf(fasteners),
    ...programmeForm(programme, empty, numberOfId),
  };
}

/**
 * @param {any} programme
 * @param {Form} empty
 * @param {Map<string, number>} numberOfId
 */
function programmeForm(programme, empty, numberOfId) {
  const said = (/** @type {string} */ name) => programme[name] ?? empty[name];
  const numbers = (programme.sequence ?? []).map((/** @type {string} */ id) => numberOfId.get(id));
  return {
    passes: programme.passes?.length ? programme.passes.map(passForm) : empty.passes,
    order: numbers.filter(Boolean).join(' '),
    lubricant: said('lubricant'),
    source: said('source'),
    cautions: said('cautions'),
    retorque: said('retorque'),
    invented: programme.invented,
  };
}

/** @param {any} pass @returns {FormPass} */
const passForm = (pass) => ({
  id: pass.id,
  how: pass.how,
  values: (pass.values ?? []).map((/** @type {any} */ v) => ({ ...v, group: v.group ?? '' })),
});

/** Whether the order names each fastener once. @param {Form} form */
export function orderIsWhole(form) {
  const fasteners = fastenersOf(form);
  const given = numbersIn(form.order);
  const wanted = new Set(fasteners.map((f) => f.number));
  return (
    !form.order.trim() || (given.length === wanted.size && given.every((n) => wanted.delete(n)))
  );
}

/** @param {Form} form what is wanted before it can be kept: a text key and its facts, or null */
export function wants(form) {
  if (!form.name.trim()) return { key: 'joint.wants.name', facts: {} };
  const at = form.passes.findIndex((/** @type {FormPass} */ p) =>
    p.values.some((v) => numberOf(v.value) === null),
  );
  if (at >= 0) return { key: 'joint.wants.value', facts: { n: at + 1 } };
  if (adapterWants(form.adapter)) return { key: 'joint.wants.adapter', facts: {} };
  return orderIsWhole(form)
    ? null
    : { key: 'joint.order.wrong', facts: { n: fastenersOf(form).length } };
}

/**
 * The fields of the entry; only those that are different from what is kept.
 * @param {Form} form
 * @param {any} subject
 * @returns {Record<string, any>}
 */
export function fieldsOf(form, subject) {
  const fasteners = fastenersOf(form);
  const fields = {
    ...Object.fromEntries(PLAIN.map((name) => [name, form[name].trim() || null])),
    adapter: adapterKept(form.adapter),
    parts: form.parts,
    fasteners,
    programme: programmeOf(form, fasteners),
  };
  return Object.fromEntries(
    Object.entries(fields).filter(([name, now]) => !alike(now, value(subject, name) ?? null)),
  );
}

/** @param {Form} form @param {any[]} fasteners */
function programmeOf(form, fasteners) {
  const idOf = new Map(fasteners.map((f) => [f.number, f.id]));
  const given = numbersIn(form.order);
  const sequence = (given.length ? given : fasteners.map((f) => f.number))
    .map((n) => idOf.get(n))
    .filter(Boolean);
  const passes = form.passes.map((/** @type {FormPass} */ pass) => ({
    id: pass.id,
    how: pass.how,
    ...(pass.values.length ? { values: pass.values.map(measuredOf) } : {}),
  }));
  return {
    passes,
    lubricant: form.lubricant.trim() || null,
    sequence,
    source: form.source.trim() || null,
    cautions: form.cautions.filter((/** @type {any} */ c) => c.says.trim()),
    ...(form.retorque.trim() ? { retorque: form.retorque.trim() } : {}),
    ...(form.invented ? { invented: true } : {}),
  };
}

/** @param {FormValue} v */
const measuredOf = (v) => ({
  ...(v.group.trim() ? { group: v.group.trim() } : {}),
  value: numberOf(v.value),
  unit: v.unit,
});
