/** Hard limits of a set: who keeps them, and who is turned away on which side of which measure. */
import { finite } from './amounts.js';
import { LimitsCrossed, PinnedOutside } from './set_errors.js';

/** @typedef {import('./sets.js').Measure} Measure */
/** @typedef {import('./sets.js').Piece} Piece */

/**
 * Those that keep every limit, and those that do not.
 * @param {readonly Piece[]} pieces
 * @param {readonly Measure[]} measures
 * @param {readonly Piece[]} places
 * @param {readonly string[]} pinned
 */
export function inside(pieces, measures, places, pinned) {
  const limits = pieces.length ? measures.map(limitsOf) : [];
  /** @type {Piece[]} */
  const kept = [];
  const outside = [];
  for (const piece of places) {
    const off = offOf(piece, measures, limits);
    if (!off) kept.push(piece);
    else if (pinned.includes(piece.name)) throw new PinnedOutside(off);
    else outside.push(Object.freeze(off));
  }
  return { kept, outside };
}

/**
 * @param {Measure} measure
 * @returns {[number, number]}
 */
function limitsOf({ name, lower = null, upper = null }) {
  const low = lower === null ? -Infinity : finite(lower, 'lower');
  const high = upper === null ? Infinity : finite(upper, 'upper');
  if (low > high) throw new LimitsCrossed({ measure: name });
  return [low, high];
}

/**
 * @param {Piece} piece
 * @param {readonly Measure[]} measures
 * @param {readonly [number, number][]} limits
 */
function offOf({ name, sizes }, measures, limits) {
  for (const [at, [low, high]] of limits.entries()) {
    const size = Number(sizes[at]);
    // A hair for limits that were converted from another unit.
    const hair = 1e-9 * Math.max(1, Math.abs(size));
    const measure = String(measures[at]?.name);
    if (size < low - hair) return { name, measure, side: 'below' };
    if (size > high + hair) return { name, measure, side: 'above' };
  }
  return null;
}
