/** What a piece measures: for each measure of its kind the mean of the latest inspection that read it. */

import { value } from '../log/workshop.js';
import { convert, quantityOf } from '../trade/units.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {{id: string, name: string | null, unit: string | null, least: string | null, most: string | null}} Measure */
/** @typedef {{size: number, decimals: number, order: string}} Size */

/**
 * The measures of a kind.
 * @param {Subject | null} kind
 * @returns {Measure[]}
 */
export function measuresOf(kind) {
  return plain.mappings(value(kind, 'measures')).flatMap((each) => {
    const id = plain.text(each.id);
    if (id === null) return [];
    return {
      id,
      name: plain.text(each.name),
      unit: plain.text(each.unit),
      least: plain.text(each.least),
      most: plain.text(each.most),
    };
  });
}

/**
 * The size of a part on one measure, in the unit of that measure, or null.
 * @param {Subject | null} part
 * @param {Measure} measure
 * @returns {Size | null}
 */
export function sizeOf(part, measure) {
  const looks = part?.facts.filter((fact) => fact.heading === 'inspection' && !fact.struck) ?? [];
  for (const fact of [...looks].reverse()) {
    const found = plain
      .mappings(fact.body.readings)
      .filter((each) => each.measure === measure.id)
      .flatMap((each) => inUnit(each.value, measure.unit) ?? []);
    if (found.length) {
      const sum = found.reduce((all, each) => all + each.size, 0);
      const decimals = Math.max(...found.map((each) => each.decimals));
      return { size: sum / found.length, decimals, order: fact.order };
    }
  }
  return null;
}

/**
 * @param {unknown} kept
 * @param {string | null} unit
 */
function inUnit(kept, unit) {
  const read = plain.quantity(kept);
  if (!read) return null;
  const to = unit ?? read.unit;
  const decimals = read.value.split('.')[1]?.length ?? 0;
  if (to === read.unit) return { size: Number(read.value), decimals };
  return sameSort(read.unit, to)
    ? { size: convert(Number(read.value), read.unit, to), decimals }
    : null;
}

/** Whether both units measure the same. @param {string} one @param {string} other */
export function sameSort(one, other) {
  try {
    return quantityOf(one) === quantityOf(other);
  } catch {
    return false;
  }
}
