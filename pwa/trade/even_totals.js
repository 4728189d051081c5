/**
 * The most equal totals of three or more columns: bettered first, then proved. A window over the
 * totals is moved and narrowed. Whether an arrangement lies wholly in it is asked from both ends:
 * what one half of the places can use up, and what the other half can leave.
 */
import { met } from './both_ends.js';
import { pairs } from './narrowest.js';

const HAIR = 1e-9;

/**
 * A total, and the pieces it uses as bits: column by column, so many bits as there are places.
 * @typedef {{total: number, mask: number}} Option
 */

/** @typedef {readonly (readonly number[])[]} Table */

/** Whether a row may stand. @typedef {(row: readonly number[]) => boolean} Keeps */

/** @type {Keeps} */
const anything = () => true;

/**
 * The total of each assembly.
 * @param {Table} weights
 * @param {Table} rows
 */
export const totals = (weights, rows) =>
  rows.map((row) => row.reduce((sum, at, column) => sum + Number(weights[column]?.[at]), 0));

/**
 * The heaviest total less the lightest.
 * @param {Table} weights
 * @param {Table} rows
 */
export function spread(weights, rows) {
  const listed = totals(weights, rows);
  return Math.max(...listed) - Math.min(...listed);
}

/**
 * Column after column put anew to the totals of the others, until none makes them more equal.
 * @param {Table} weights
 * @param {number[][]} start
 * @param {Keeps} [keeps]
 */
export function bettered(weights, start, keeps = anything) {
  let rows = start;
  let width = spread(weights, start);
  let still = 0;
  while (still < weights.length) {
    for (let moved = 0; moved < weights.length; moved++) {
      const tried = putAnew(weights, rows, moved, keeps);
      const narrower = spread(weights, tried);
      still += 1;
      if (narrower < width - HAIR) {
        rows = tried;
        width = narrower;
        still = 0;
      }
    }
  }
  return rows;
}

/**
 * @param {Table} weights
 * @param {number[][]} rows
 * @param {number} moved
 * @param {Keeps} keeps
 */
function putAnew(weights, rows, moved, keeps) {
  const column = rows.map((row) => Number(weights[moved]?.[Number(row[moved])]));
  const rest = totals(weights, rows).map((total, at) => total - Number(column[at]));
  const taken = pairs(
    rest.map((each, place) =>
      column.map((other, at) => (keeps(swapped(rows, place, moved, at)) ? each + other : Infinity)),
    ),
  );
  const put = rows.map((row, place) =>
    row.map((piece, at) => (at === moved ? Number(rows[Number(taken[place])]?.[moved]) : piece)),
  );
  return put.sort((a, b) => Number(a[0]) - Number(b[0]));
}

/**
 * A row with one of its pieces taken from another row.
 * @param {number[][]} rows
 * @param {number} place
 * @param {number} moved
 * @param {number} from
 */
const swapped = (rows, place, moved, from) =>
  (rows[place] ?? []).map((piece, at) => (at === moved ? Number(rows[from]?.[moved]) : piece));

/**
 * The most equal assemblies.
 * @param {Table} weights
 * @param {number[][]} start an arrangement to better
 * @param {Keeps} [keeps]
 */
export function proved(weights, start, keeps = anything) {
  const rows = (weights[0] ?? []).map((first, place) =>
    options(first, weights.slice(1)).filter(({ mask }) => keeps([place, ...pieces(mask, weights)])),
  );
  let best = start;
  let width = spread(weights, start);
  const mean = weights.flat().reduce((sum, each) => sum + each, 0) / rows.length;
  const lows = new Set(rows.flatMap((row) => row.map(({ total }) => total)));
  for (const low of [...lows].sort((a, b) => b - a)) {
    let found = low <= mean + HAIR && mean < low + width ? within(rows, low, width) : null;
    while (found) {
      best = found.map((mask, place) => [place, ...pieces(mask, weights)]);
      width = spread(weights, best);
      found = mean < low + width ? within(rows, low, width) : null;
    }
  }
  return best;
}

/**
 * Every choice of one piece from each other column.
 * @param {number} first
 * @param {Table} columns
 */
function options(first, columns) {
  /** @type {Option[]} */
  let made = [{ total: first, mask: 0 }];
  for (const [shift, column] of columns.entries()) {
    made = made.flatMap(({ total, mask }) =>
      column.map((each, at) => ({
        total: total + each,
        mask: mask | (1 << (shift * column.length + at)),
      })),
    );
  }
  return made;
}

/**
 * @param {number} mask
 * @param {Table} weights
 */
function pieces(mask, weights) {
  const many = Number(weights[0]?.length);
  return weights
    .slice(1)
    .map((_, shift) => 31 - Math.clz32((mask >> (shift * many)) & ((1 << many) - 1)));
}

/**
 * What each place uses if all totals can lie in the window together.
 * @param {Option[][]} rows
 * @param {number} low
 * @param {number} width
 */
function within(rows, low, width) {
  const inside = rows.map((row) =>
    row
      .filter(({ total }) => low - HAIR <= total && total <= low + width - 2 * HAIR)
      .map(({ mask }) => mask),
  );
  const full = rows.flat().reduce((used, { mask }) => used | mask, 0);
  const reached = inside.flat().reduce((used, mask) => used | mask, 0);
  if (reached !== full || inside.some((masks) => !masks.length)) return null;
  const order = rows.map((_, place) => place);
  order.sort((a, b) => Number(inside[a]?.length) - Number(inside[b]?.length) || a - b);
  const [half, rest] = [0, 1].map((odd) => order.filter((_, at) => at % 2 === odd));
  return met(inside, half ?? [], rest ?? [], full);
}
