/** The fasteners a joint form stands for: placed by pattern, numbered in the order of tightening. */

import { order, positions } from '../../trade/sequence.js';

/** @typedef {Record<string, any>} Form */

/** @param {any[]} fasteners @returns {Record<string, string>} group → numbers */
export function groupsOf(fasteners) {
  /** @type {Record<string, string>} */
  const groups = {};
  for (const f of fasteners) {
    if (f.group)
      groups[f.group] = groups[f.group] ? `${groups[f.group]} ${f.number}` : `${f.number}`;
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
    return form.points.map((/** @type {any} */ p, /** @type {number} */ i) => ({
      id: `f${i + 1}`,
      number: i + 1,
      ...p,
    }));
  }
  const rows = Math.min(form.rows, form.count);
  const spots = positions(form.pattern, form.count, rows);
  const numbers = order(form.pattern, form.count, rows);
  return numbers.map((at, i) => {
    const [x, y] = spots[at - 1] ?? [0, 0];
    return { id: `f${i + 1}`, number: i + 1, x, y };
  });
}

/** @param {string} text whole numbers in it */
export const numbersIn = (text) => (text.match(/[0-9]+/g) ?? []).map(Number);
