/** Lists that stand side by side, a number of each in every row. */
import { RowsUneven } from './errors.js';

/** @typedef {import('./given.js').Typed} Typed */

/**
 * Lists of one row must be of one length.
 * @param {import('./working.js').Working} working
 * @param {Record<string, Typed[]>} values
 */
export function refuseUneven(working, values) {
  for (const row of new Set(working.asks.map((ask) => ask.row))) {
    if (row === null) continue;
    const lengths = working.asks
      .filter((ask) => ask.row === row && !(ask.optional && !(ask.name in values)))
      .map((ask) => ({ about: ask.name, length: (values[ask.name] ?? []).length }));
    const [least, ...rest] = lengths.sort((one, other) => one.length - other.length);
    if (least && rest.some(({ length }) => length !== least.length))
      throw new RowsUneven({ row, about: least.about });
  }
}
