/** What a set costs at the least, before any search. */
import { size } from './set_pick.js';

/** @typedef {import('./set_pick.js').Pool} Pool */

/**
 * For each measure: what all measures after it cost at the least, each for itself.
 * @param {Pool} pool
 * @param {readonly (readonly number[])[]} orders the pieces in the order of each measure
 */
export function leastAfter({ columns, factors, choose }, orders) {
  const least = columns.map(() => 0);
  for (let level = columns.length - 1; level > 0; level--) {
    const column = columns[level] ?? [];
    const order = orders[level] ?? [];
    let narrowest = Infinity;
    for (let low = 0; low + choose <= order.length; low++) {
      const spread = size(column, order[low + choose - 1]) - size(column, order[low]);
      if (spread < narrowest) narrowest = spread;
    }
    least[level - 1] = size(least, level) + size(factors, level) * narrowest;
  }
  return least;
}
