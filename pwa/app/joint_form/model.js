/** What the joint form holds, where it comes from, and the fields it becomes. */

import { value } from '../../log/workshop.js';
import { order, positions } from '../../trade/sequence.js';
import { numberOf } from '../forms_fields.js';

const PLAIN = ['name', 'noun', 'plural', 'thread', 'pattern', 'casting', 'fastener_part', 'wrench', 'build'];

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
  const unit = how === 'angle' ? '°' : (passes.flatMap((p) => p.values).find((v) => v.unit !== '°')?.unit ?? 'N·m');
  return { id: `p${n}`, how, values: valued ? [newValue(unit)] : [] };
}

/** @param {string | undefined} part a part the new joint clamps @returns {Form} */
export function emptyForm(part) {
  return {
    name: '', noun: 'bolt', plural: 'bolts', thread: '', pattern: 'rows', casting: 'plain', fastener_part: '', wrench: '', build: '',
    count: 10, rows: 2, points: [], fasteners: null, order: '', parts: part ? [part] : [],
    passes: [newPass('hand', []), newPass('torque', [newPass('hand', [])])],
    lubricant: '', source: '', cautions: [], retorque: '', groups: {},
  };
}

/** @param {any} subject @returns {Form} */
export function formOf(subject) {
  const programme = value(subject, 'programme') ?? {};
  const fasteners = value(subject, 'fasteners') ?? [];
  const numberOfId = new Map(fasteners.map((/** @type {any} */ f) => [f.id, f.number]));
  const empty = emptyForm(undefined);
  const plain = Object.fromEntries(PLAIN.map((name) => [name, value(subject, name) ?? (name === 'casting' ? 'plain' : '')]));
  const passes = (programme.passes ?? []).map((/** @type {any} */ pass) => ({
    id: pass.id, how: pass.how,
    values: (pass.values ?? []).map((/** @type {any} */ v) => ({ group: v.group ?? '', value: v.value, unit: v.unit })),
  }));
  return {
    ...empty, ...plain, fasteners, count: fasteners.length || 10, parts: value(subject, 'parts') ?? [],
    points: fasteners.map(({ x, y }) => ({ x, y })), passes: passes.length ? passes : empty.passes,
    order: (programme.sequence ?? []).map((/** @type {string} */ id) => numberOfId.get(id)).filter(Boolean).join(' '),
    lubricant: programme.lubricant ?? '', source: programme.source ?? '', cautions: programme.cautions ?? [],
    retorque: programme.retorque ?? '', groups: groupsOf(fasteners), invented: programme.invented,
  };
}

/** @param {any[]} fasteners @returns {Record<string, string>} group → numbers */
function groupsOf(fasteners) {
  /** @type {Record<string, string>} */
  const groups = {};
  for (const f of fasteners) {
    if (f.group) groups[f.group] = groups[f.group] ? `${groups[f.group]} ${f.number}` : `${f.number}`;
  }
  return groups;
}

/**
 * The fasteners as drawn: kept ones as they are, else placed by pattern and numbered in the order of
 * tightening, as manuals do.
 * @param {Form} form
 * @returns {any[]}
 */
export function fastenersOf(form) {
  const placed = form.fasteners?.length ? form.fasteners : place(form);
  const group = new Map(
    Object.entries(form.groups).flatMap(([name, text]) => numbersIn(text).map((n) => [n, name])),
  );
  return placed.map((/** @type {any} */ f) => {
    const { group: _, ...rest } = f;
    return group.has(f.number) ? { ...rest, group: group.get(f.number) } : rest;
  });
}

/** @param {Form} form */
function place(form) {
  if (form.pattern === 'points') {
    return form.points.map((/** @type {any} */ p, /** @type {number} */ i) => ({ id: `f${i + 1}`, number: i + 1, ...p }));
  }
  const rows = Math.min(form.rows, form.count);
  const spots = positions(form.pattern, form.count, rows);
  const numbers = order(form.pattern, form.count, rows);
  return numbers.map((at, i) => {
    const [x, y] = spots[at - 1];
    return { id: `f${i + 1}`, number: i + 1, x, y };
  });
}

/** @param {string} text whole numbers in it */
export const numbersIn = (text) => (text.match(/[0-9]+/g) ?? []).map(Number);

/** Whether the order names each fastener once. @param {Form} form */
export function orderIsWhole(form) {
  const fasteners = fastenersOf(form);
  const given = numbersIn(form.order);
  const wanted = new Set(fasteners.map((f) => f.number));
  return !form.order.trim() || (given.length === wanted.size && given.every((n) => wanted.delete(n)));
}

/** @param {Form} form what is wanted before it can be kept: a text key and its facts, or null */
export function wants(form) {
  if (!form.name.trim()) return { key: 'joint.wants.name', facts: {} };
  const at = form.passes.findIndex((/** @type {FormPass} */ p) => p.values.some((v) => numberOf(v.value) === null));
  if (at >= 0) return { key: 'joint.wants.value', facts: { n: at + 1 } };
  return orderIsWhole(form) ? null : { key: 'joint.order.wrong', facts: { n: fastenersOf(form).length } };
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
    parts: form.parts,
    fasteners,
    programme: programmeOf(form, fasteners),
  };
  return Object.fromEntries(
    Object.entries(fields).filter(([name, now]) => JSON.stringify(now) !== JSON.stringify(value(subject, name) ?? null)),
  );
}

/** @param {Form} form @param {any[]} fasteners */
function programmeOf(form, fasteners) {
  const idOf = new Map(fasteners.map((f) => [f.number, f.id]));
  const given = numbersIn(form.order);
  const sequence = (given.length ? given : fasteners.map((f) => f.number)).map((n) => idOf.get(n)).filter(Boolean);
  const passes = form.passes.map((/** @type {FormPass} */ pass) => ({
    id: pass.id,
    how: pass.how,
    ...(pass.values.length ? { values: pass.values.map(valueOf) } : {}),
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
const valueOf = (v) => ({ ...(v.group.trim() ? { group: v.group.trim() } : {}), value: numberOf(v.value), unit: v.unit });
