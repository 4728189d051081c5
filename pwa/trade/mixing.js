/**
 * Two shells of unlike thickness in one bearing, so that every bearing lands nearest its target.
 * Clearance at a place = its gap without shells − both walls. Every way to share out the stock is
 * looked at, the same stock left over counting once, so that the choice is proved best.
 */
import { TradeError } from '../errors.js';
import { isGiven, many } from './alike.js';
import { aboveZero, count, finite, notBelowZero } from './amounts.js';
import { CountsDiffer, NoPlaces, TooFewPieces } from './choosing.js';
import { sum } from './dimension.js';

/** Different stocks left over that are looked at after any one place. */
const MOST_WAYS = 13_000;
const HAIR = 1e-9;

/** @typedef {[number, number]} Pair */
/** @typedef {{cost: number, left: number[], before: Way | null, pair: Pair}} Way */

/** Shells enough, but none that may stand together. */
export class NoPair extends TradeError {
  static code = 'mixing-no-pair';
  static says = 'The shells cannot be paired: their walls differ by more than {apart} mm.';
  static nextStep = 'Allow a larger difference, or get more of one thickness.';
}

/** More ways than can be looked at. */
export class TooMixed extends TradeError {
  static code = 'mixing-too-mixed';
  static says = 'There are too many different walls to look at every way of pairing them.';
  static nextStep = 'Put walls that measure alike together with their count, or leave some out.';
}

/**
 * Two shells for each place with the least sum of deviations from the target, proved best.
 * @param {readonly number[]} gapsMm housing less journal of each place
 * @param {readonly number[]} wallsMm of single shells
 * @param {number} targetMm
 * @param {{counts?: readonly number[] | null, mostApartMm?: number | null}} [more]
 */
export function choose(gapsMm, wallsMm, targetMm, more = {}) {
  for (const each of many(gapsMm, 'gaps')) finite(each, 'gap');
  for (const each of many(wallsMm, 'walls')) aboveZero(each, 'wall');
  finite(targetMm, 'target');
  const stock = stockOf(wallsMm, more.counts ?? null, gapsMm.length);
  const apart = notBelowZero(more.mostApartMm ?? 0, 'most apart');
  const pairs = pairsOf(wallsMm, isGiven(more.mostApartMm) ? apart : Infinity);
  /** @param {number} gap @param {Pair} pair */
  const off = (gap, [one, other]) => gap - Number(wallsMm[one]) - Number(wallsMm[other]) - targetMm;
  const table = gapsMm.map((gap) => pairs.map((pair) => off(gap, pair)));
  const places = best(table, pairs, stock, apart).map((pair, i) => {
    const deviation = off(Number(gapsMm[i]), pair);
    return Object.freeze({
      place: i + 1,
      shells: pair.map((each) => each + 1),
      clearance_mm: deviation + targetMm,
      deviation_mm: deviation,
    });
  });
  const found = places.map((each) => Math.abs(each.deviation_mm));
  return Object.freeze({
    places: Object.freeze(places),
    sum_of_deviations_mm: sum(found),
    worst_mm: Math.max(...found),
  });
}

/**
 * @param {readonly number[]} walls
 * @param {number} apart
 * @returns {Pair[]}
 */
function pairsOf(walls, apart) {
  return walls.flatMap((wall, one) =>
    walls.slice(one).flatMap((next, further) => {
      const together = Math.abs(wall - next) <= apart + HAIR;
      return together ? [/** @type {Pair} */ ([one, one + further])] : [];
    }),
  );
}

/**
 * @param {number[][]} table
 * @param {Pair[]} pairs
 * @param {number[]} stock
 * @param {number} apart
 */
function best(table, pairs, stock, apart) {
  /** @type {Way[]} */
  let layer = [{ cost: 0, left: stock, before: null, pair: [0, 0] }];
  for (const row of table) {
    layer = next(layer, row, pairs);
    if (!layer.length) throw new NoPair({ apart });
    if (layer.length > MOST_WAYS) throw new TooMixed();
  }
  let way = layer.reduce((least, each) => (each.cost < least.cost ? each : least));
  const chosen = [];
  while (way.before) {
    chosen.unshift(way.pair);
    way = way.before;
  }
  return chosen;
}

/**
 * @param {Way[]} layer
 * @param {number[]} row
 * @param {Pair[]} pairs
 */
function next(layer, row, pairs) {
  /** @type {Map<string, Way>} */
  const made = new Map();
  for (const way of layer) {
    pairs.forEach((pair, i) => {
      const left = without(way.left, pair);
      if (!left) return;
      const key = left.join();
      const cost = way.cost + Math.abs(Number(row[i]));
      const known = made.get(key);
      if (!known || cost < known.cost) made.set(key, { cost, left, before: way, pair });
    });
  }
  return [...made.values()];
}

/**
 * @param {number[]} left
 * @param {Pair} pair
 */
function without(left, pair) {
  const rest = [...left];
  for (const each of pair) rest[each] = Number(rest[each]) - 1;
  return pair.some((each) => Number(rest[each]) < 0) ? null : rest;
}

/**
 * @param {readonly number[]} walls
 * @param {readonly number[] | null} counts
 * @param {number} places
 */
function stockOf(walls, counts, places) {
  if (!places) throw new NoPlaces();
  if (counts !== null && many(counts, 'counts').length !== walls.length)
    throw new CountsDiffer({ what: 'count', of: 'wall' });
  const often = walls.map((_, i) =>
    counts ? count(/** @type {number} */ (counts[i]), 'count') : 1,
  );
  const pieces = sum(often);
  const wanted = 2 * places;
  if (pieces < wanted) throw new TooFewPieces({ pieces, places, missing: wanted - pieces });
  return often.map((each) => Math.min(each, wanted));
}
