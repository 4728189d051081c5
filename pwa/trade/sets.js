/**
 * The best n of m pieces to be used together: hard limits first, then the least spread.
 * Cost = Σ weight · (largest − smallest) / scale over the measures. Of equally cheap sets the one
 * with the least wear is chosen, then the one from the fewest donors.
 */
import { many } from './alike.js';
import { aboveZero, count, facts, finite, notBelowZero, word } from './amounts.js';
import {
  MeasureMissing,
  NameDoubled,
  NameUnknown,
  NoMeasure,
  PinnedTwiceOver,
  TooFewInPool,
  TooFewInside,
  TooManyPieces,
} from './set_errors.js';
import { inside } from './set_limits.js';
import { cheapest } from './set_search.js';

/** Pieces by number of measures. */
export const MOST = Object.freeze([0, 1000, 128, 48]);

/**
 * All numbers of one measure are in one unit.
 * @typedef {object} Measure
 * @property {string} name
 * @property {number} [weight]
 * @property {number | null} [scale] the spread that costs as much as the weight
 * @property {number | null} [lower]
 * @property {number | null} [upper]
 */

/**
 * @typedef {object} Piece
 * @property {string} name
 * @property {readonly number[]} sizes one for each measure, in their order
 * @property {number} [wear] less is better; counts only between sets of equal cost
 * @property {string | null} [donor]
 */

/** @typedef {{pinned?: readonly string[], excluded?: readonly string[]}} Wish */

/**
 * The best set of so many pieces, with ranked spares (the first is the next best) and who was
 * turned away by a limit.
 * @param {readonly Piece[]} pieces
 * @param {readonly Measure[]} measures
 * @param {number} choose
 * @param {Wish} [wish] pinned ones must be in; excluded ones are no spares either
 */
export function best(pieces, measures, choose, { pinned = [], excluded = [] } = {}) {
  count(choose, 'choose', 1);
  for (const each of [...many(pinned, 'pinned'), ...many(excluded, 'excluded')]) word(each, 'name');
  checkSizes(pieces, measures);
  const factors = measures.map(factor);
  const places = mayBeChosen(pieces, choose, pinned, excluded);
  const { kept, outside } = inside(pieces, measures, places, pinned);
  if (kept.length < choose) {
    const missing = choose - kept.length;
    throw new TooFewInside({ inside: kept.length, pieces: places.length, choose, missing });
  }
  const chosen = cheapest({
    columns: measures.map((_, at) => kept.map((each) => Number(each.sizes[at]))),
    factors,
    choose,
    pinned: new Set(kept.flatMap((each, i) => (pinned.includes(each.name) ? [i] : []))),
    wear: kept.map((each) => each.wear ?? 0),
    donors: kept.map((each) => each.donor ?? ''),
  });
  return told(kept, chosen, factors, outside);
}

/**
 * @param {readonly Piece[]} pieces
 * @param {readonly Measure[]} measures
 */
function checkSizes(pieces, measures) {
  for (const each of many(measures, 'measures')) facts(each, 'measure');
  for (const each of many(pieces, 'pieces')) {
    facts(each, 'piece');
    word(each.name, 'name');
    many(each.sizes, 'sizes');
  }
  if (!measures.length) throw new NoMeasure();
  const most = MOST[measures.length] ?? 0;
  if (pieces.length > most) {
    throw new TooManyPieces({ pieces: pieces.length, measures: measures.length, most });
  }
  for (const { name, sizes, wear = 0 } of pieces) {
    if (sizes.length !== measures.length) {
      throw new MeasureMissing({ name, sizes: sizes.length, measures: measures.length });
    }
    notBelowZero(wear, 'wear');
    sizes.forEach((each, at) => {
      finite(each, String(measures[at]?.name));
    });
  }
}

/** @param {Measure} measure */
function factor({ weight = 1, scale = null }) {
  const worth = aboveZero(weight, 'weight');
  return scale === null ? worth : worth / aboveZero(scale, 'scale');
}

/**
 * The pieces that may be chosen, and that the wish can be met at all.
 * @param {readonly Piece[]} pieces
 * @param {number} choose
 * @param {readonly string[]} pinned
 * @param {readonly string[]} excluded
 */
function mayBeChosen(pieces, choose, pinned, excluded) {
  const names = new Set();
  for (const { name } of pieces) {
    if (names.has(name)) throw new NameDoubled({ name });
    names.add(name);
  }
  const unknown = [...pinned, ...excluded].find((name) => !names.has(name));
  if (unknown !== undefined) throw new NameUnknown({ name: unknown });
  const pins = new Set(pinned);
  if (pins.size > choose || excluded.some((name) => pins.has(name))) {
    throw new PinnedTwiceOver({ pinned: pins.size, choose });
  }
  const places = pieces.filter((each) => !excluded.includes(each.name));
  const missing = choose - places.length;
  if (missing > 0) throw new TooFewInPool({ pieces: places.length, choose, missing });
  return places;
}

/**
 * @param {readonly Piece[]} kept
 * @param {readonly number[]} places
 * @param {readonly number[]} factors
 * @param {readonly {name: string, measure: string, side: string}[]} outside
 */
function told(kept, places, factors, outside) {
  const chosen = places.map((at) => /** @type {Piece} */ (kept[at]));
  const taken = new Set(chosen);
  const ends = factors.map((_, at) => endsOf(chosen, at));
  const spares = kept
    .filter((each) => !taken.has(each))
    .map((each) => ({ each, ...spanned(ends, each.sizes, factors) }))
    .sort((a, b) => a.cost - b.cost || (a.each.wear ?? 0) - (b.each.wear ?? 0))
    .map(({ each, cost, spreads }) => Object.freeze({ name: each.name, cost, spreads }));
  return Object.freeze({
    chosen: Object.freeze(chosen.map((each) => each.name)),
    ...spanned(ends, chosen[0]?.sizes ?? [], factors),
    wear: chosen.reduce((sum, each) => sum + (each.wear ?? 0), 0),
    donors: new Set(chosen.map((each) => each.donor ?? '')).size,
    spares: Object.freeze(spares),
    outside: Object.freeze(outside),
  });
}

/**
 * The smallest and the largest.
 * @param {readonly Piece[]} pieces
 * @param {number} at which measure
 * @returns {[number, number]}
 */
function endsOf(pieces, at) {
  let low = Infinity;
  let high = -Infinity;
  for (const { sizes } of pieces) {
    low = Math.min(low, Number(sizes[at]));
    high = Math.max(high, Number(sizes[at]));
  }
  return [low, high];
}

/**
 * What pieces between these ends span together with one more.
 * @param {readonly [number, number][]} ends
 * @param {readonly number[]} sizes
 * @param {readonly number[]} factors
 */
function spanned(ends, sizes, factors) {
  let cost = 0;
  const spreads = ends.map(([low, high], at) => {
    const spread = Math.max(high, Number(sizes[at])) - Math.min(low, Number(sizes[at]));
    cost += spread * Number(factors[at]);
    return spread;
  });
  return { cost, spreads };
}
