/**
 * The search behind sets: the cheapest box that holds enough pieces, and the best picked from it.
 * A box is a window on each measure. Whatever is picked from a cheapest box costs the same, and
 * every cheapest set lies in such a box; so it is enough to look at boxes whose sides are measured
 * values. A box is left as soon as it costs more than the best so far.
 */
import { leastAfter } from './set_bounds.js';
import { settle, size } from './set_pick.js';
import { begin, box, insert, pinnedAt } from './set_window.js';

const HAIR = 1e-9;
const MOST_BOXES = 64;

/** @typedef {import('./set_pick.js').Pool} Pool */

/**
 * @typedef {object} Search
 * @property {Pool} pool
 * @property {number[][]} orders the pieces in the order of each measure
 * @property {Int32Array} ranks where each piece stands in the order of the last measure
 * @property {number[]} least what the measures after this one cost at the least
 * @property {import('./set_pick.js').Found} found
 */

/**
 * Places of the best set: least cost, then least wear, then fewest donors.
 * The pool holds at least as many pieces as are chosen.
 * @param {Pool} pool
 * @returns {readonly number[]}
 */
export function cheapest(pool) {
  const orders = pool.columns.map((column) =>
    column.map((_, i) => i).sort((a, b) => size(column, a) - size(column, b) || a - b),
  );
  const ranks = new Int32Array(pool.wear.length);
  const last = orders[orders.length - 1] ?? [];
  last.forEach((each, rank) => {
    ranks[each] = rank;
  });
  /** @type {Search} */
  const search = {
    pool,
    orders,
    ranks,
    least: leastAfter(pool, orders),
    found: { cost: Infinity, rank: null, boxes: [] },
  };
  descend(search, 0, orders[0] ?? [], 0);
  settle(pool, search.found);
  return search.found.rank?.places ?? [];
}

/**
 * @param {Search} search
 * @param {number} level
 * @param {number[]} members in the order of this level's measure
 * @param {number} soFar
 */
function descend(search, level, members, soFar) {
  const left = search.pool.columns.length - level;
  if (left === 1) scan(search, Int32Array.from(members), members.length, soFar, -1);
  else if (left === 2) sweep(search, level, members, soFar);
  else narrowestFirst(search, level, members, soFar);
}

/**
 * @param {Search} search
 * @param {number} level
 * @param {number[]} members
 * @param {number} soFar
 */
function narrowestFirst(search, level, members, soFar) {
  const { columns, factors, choose } = search.pool;
  const sizes = members.map((each) => size(columns[level] ?? [], each));
  const windows = [];
  for (let low = 0; low + choose <= sizes.length; low++) {
    for (let high = low + choose - 1; high < sizes.length; high++) {
      const spread = size(sizes, high) - size(sizes, low);
      if (whole(sizes, low, high)) windows.push({ cost: size(factors, level) * spread, low, high });
    }
  }
  windows.sort((a, b) => a.cost - b.cost);
  for (const { cost, low, high } of windows) {
    if (soFar + cost + size(search.least, level) > search.found.cost + HAIR) return;
    const inside = members.slice(low, high + 1);
    descend(search, level + 1, inOrder(search, level + 1, inside), soFar + cost);
  }
}

/**
 * Whether a window begins at the first of equal sizes and ends at the last of them.
 * @param {readonly number[]} sizes
 * @param {number} low
 * @param {number} high
 */
const whole = (sizes, low, high) =>
  sizes[low - 1] !== sizes[low] && sizes[high + 1] !== sizes[high];

/**
 * @param {Search} search
 * @param {number} level
 * @param {number[]} inside
 */
function inOrder({ pool, orders }, level, inside) {
  const marks = new Uint8Array(pool.wear.length);
  for (const each of inside) marks[each] = 1;
  return (orders[level] ?? []).filter((each) => marks[each]);
}

/**
 * Two measures left: windows of the one grow piece by piece, kept in the order of the other.
 * @param {Search} search
 * @param {number} level
 * @param {number[]} members
 * @param {number} soFar
 */
function sweep(search, level, members, soFar) {
  const column = search.pool.columns[level] ?? [];
  const factor = size(search.pool.factors, level);
  const held = new Int32Array(members.length);
  const least = size(search.least, level);
  for (let low = 0; low + search.pool.choose <= members.length; low++) {
    const again = low > 0 && size(column, members[low - 1]) === size(column, members[low]);
    if (!again) grow(search, members, low, soFar, { column, factor, held, least });
  }
}

/**
 * All windows that begin at one piece.
 * @param {Search} search
 * @param {number[]} members
 * @param {number} low
 * @param {number} soFar
 * @param {{column: readonly number[], factor: number, held: Int32Array, least: number}} level
 */
function grow(search, members, low, soFar, { column, factor, held, least }) {
  const from = size(column, members[low]);
  for (let high = low; high < members.length; high++) {
    const to = size(column, members[high]);
    const cost = soFar + factor * (to - from);
    if (cost + least > search.found.cost + HAIR) return;
    const at = insert(held, high - low, size(members, high), search.ranks);
    const more = size(column, members[high + 1]) === to;
    if (!more && high - low + 1 >= search.pool.choose) {
      const alone = size(column, members[high - 1]) !== to;
      scan(search, held, high - low + 1, cost, alone && !search.pool.pinned.size ? at : -1);
    }
  }
}

/**
 * The narrowest windows on the last measure.
 * @param {Search} search
 * @param {Int32Array} held in the order of that measure
 * @param {number} length
 * @param {number} soFar
 * @param {number} latecomer where the one stands that every window must hold; -1 for any
 */
function scan({ pool, found }, held, length, soFar, latecomer) {
  const { columns, factors, choose } = pool;
  const column = columns[columns.length - 1] ?? [];
  const factor = Number(factors[columns.length - 1]);
  const [latest, earliest] = pinnedAt(pool, held, length);
  const end = Math.min(latest, length - choose, latecomer < 0 ? length : latecomer);
  for (let low = begin(held, column, choose, latecomer); low <= end; low++) {
    const high = Math.max(low + choose - 1, earliest);
    const from = Number(column[Number(held[low])]);
    const cost = soFar + factor * (Number(column[Number(held[high])]) - from);
    const first = !low || Number(column[Number(held[low - 1])]) !== from;
    if (cost <= found.cost + HAIR && first)
      take(pool, found, box(held, length, low, high, column), cost);
  }
}

/**
 * Which of the box make the set is asked later: most boxes are soon bettered by a cheaper one.
 * @param {Pool} pool
 * @param {Search['found']} found
 * @param {number[]} inside
 * @param {number} cost
 */
function take(pool, found, inside, cost) {
  if (cost < found.cost - HAIR) {
    found.cost = cost;
    found.rank = null;
    found.boxes.length = 0;
  }
  if (found.boxes.push(inside) > MOST_BOXES) settle(pool, found);
}
