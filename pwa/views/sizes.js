/** What sets, pool and shelf need of measured: a measure in short, and the size of a part. */
import * as measured from './measured.js';

export const { sizeOf } = measured;

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('./measured.js').Size} Size */
/** @typedef {{id: string, name: string | null, unit: string | null, least: string | null, most: string | null}} Measure */

/**
 * The measures of a kind, in short.
 * @param {Subject | null} kind
 * @returns {Measure[]}
 */
export function measuresOf(kind) {
  return measured
    .measuresOf(kind)
    .map(({ id, name, unit, least, most }) => ({ id, name, unit, least, most }));
}
