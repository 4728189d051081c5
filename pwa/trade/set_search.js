/**
 * The search behind sets: the cheapest box that holds enough pieces, and the best picked from it.
 * A box is a window on each measure. Whatever is picked from a cheapest box costs the same, and
 * every cheapest set lies in such a box; so it is enough to look at boxes whose sides are measured
 * values. A box is left as soon as it costs more than the best so far.
 */
import { before, picked, size } from './set_pick.js';
import { box, insert, pinnedAt } from './set_window.js';

const HAIR = 1e-9;

/** @typedef {import('./set_pick.js').Pool} Pool */
/** @typedef {import('./set_pick.js').Rank} Rank */

/**
 * @typedef {object} Search
 * @property {Pool} pool
 * @property {number[][]} orders the pieces in the order of each measure
 * @property {Int32Array} ranks where each piece stands in the order of the last measure
 * @property {{cost: number, rank: Rank | null}} found
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
  const search = { pool, orders, ranks, found: { cost: Infinity, rank: null } };
  descend(search, 0, orders[0] ?? [], 0);
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
  if (left === 1) scan(search, Int32Array.from(members), members.length, soFar);
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
    if (soFar + cost > search.found.cost + HAIR) return;
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
  for (let low = 0; low + search.pool.choose <= members.length; low++) {
    const again = low > 0 && size(column, members[low - 1]) === size(column, members[low]);
    if (!again) grow(search, members, low, soFar, { column, factor, held });
  }
}

/**
 * All windows that begin at one piece.
 * @param {Search} search
 * @param {number[]} members
 * @param {number} low
 * @param {number} soFar
 * @param {{column: readonly number[], factor: number, held: Int32Array}} level
 */
function grow(search, members, low, soFar, { column, factor, held }) {
  const from = size(column, members[low]);
  for (let high = low; high < members.length; high++) {
    const to = size(column, members[high]);
    const cost = soFar + factor * (to - from);
    if (cost > search.found.cost + HAIR) return;
    insert(held, high - low, size(members, high), search.ranks);
    const more = size(column, members[high + 1]) === to;
    if (!more) scan(search, held, high - low + 1, cost);
  }
}

/**
 * The narrowest windows on the last measure.
 * @param {Search} search
 * @param {Int32Array} held in the order of that measure
 * @param {number} length
 * @param {number} soFar
 */
function scan({ pool, found }, held, length, soFar) {
  const { columns, factors, choose } = pool;
  const column = columns[columns.length - 1] ?? [];
  const factor = Number(factors[columns.length - 1]);
  const [latest, earliest] = pinnedAt(pool, held, length);
  const end = Math.min(latest, length - choose);
  for (let low = 0; low <= end; low++) {
    const high = Math.max(low + choose - 1, earliest);
    const from = Number(column[Number(held[low])]);
    const cost = soFar + factor * (Number(column[Number(held[high])]) - from);
    const first = !low || Number(column[Number(held[low - 1])]) !== from;
    if (cost <= found.cost + HAIR && first)
      take(pool, found, box(held, length, low, high, column), cost);
  }
}

/**
 * @param {Pool} pool
 * @param {Search['found']} found
 * @param {number[]} inside
 * @param {number} cost
 */
function take(pool, found, inside, cost) {
  const rank = picked(pool, inside);
  if (!found.rank || cost < found.cost - HAIR) {
    found.cost = cost;
    found.rank = rank;
  } else if (before(rank, found.rank)) {
    found.cost = Math.min(cost, found.cost);
    found.rank = rank;
  }
}
