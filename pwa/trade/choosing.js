/**
 * Which shells, shims or washers from stock go where, so that every place lands nearest its target.
 * Clearance at a place = its gap without the pieces − pieces · thickness.
 */
import { TradeError } from '../errors.js';
import { isGiven, many } from './alike.js';
import { aboveZero, count, finite } from './amounts.js';
import { cheapest } from './assignment.js';
import { sum } from './dimension.js';

const HAIR = 1e-9;

/** Fewer shells, shims or washers than places. */
export class TooFewPieces extends TradeError {
  static code = 'choosing-too-few';
  static says = 'There are {pieces} for {places} places.';
  static nextStep = 'Get {missing} more, or choose for fewer places.';
}

/** Nothing to choose for. */
export class NoPlaces extends TradeError {
  static code = 'choosing-no-places';
  static says = 'There is no place to choose for.';
  static nextStep = 'Measure one place at least.';
}

/** Not a count, or a target, for each. */
export class CountsDiffer extends TradeError {
  static code = 'choosing-lists-differ';
  static says = 'There must be one {what} for each {of}.';
  static nextStep = 'Give one each.';
}

/** A window with its ends exchanged. */
export class WindowCrossed extends TradeError {
  static code = 'choosing-window';
  static says = 'The least clearance {least} mm is above the most, {most} mm.';
  static nextStep = 'Look which is which, and type both again.';
}

/**
 * @typedef {object} More
 * @property {readonly number[] | null} [counts] how often each thickness is there; once without
 * @property {number} [pieces] of one thickness in a place: 2 for a pair of equal shells
 * @property {number | null} [leastMm] the owner's window; a place that none keeps stays empty
 * @property {number | null} [mostMm]
 * @property {boolean} [mayLack] fewer than places are no refusal; as many as can be get one
 */

/**
 * The choice from stock with the least sum of deviations from the targets, proved best.
 * @param {readonly number[]} gapsMm
 * @param {readonly number[]} stockMm
 * @param {number | readonly number[]} targetMm one for all places, or one each
 * @param {More} [more]
 */
export function choose(gapsMm, stockMm, targetMm, more = {}) {
  for (const each of many(gapsMm, 'gaps')) finite(each, 'gap');
  for (const each of many(stockMm, 'stock')) aboveZero(each, 'stock');
  const aims = targets(targetMm, gapsMm.length);
  const times = count(isGiven(more.pieces) ? more.pieces : 1, 'pieces', 1);
  const lacks = more.mayLack === true;
  const listed = pieceByPiece(stockMm, more.counts ?? null, gapsMm.length, lacks);
  const keeps = window(more.leastMm ?? null, more.mostMm ?? null);
  const off = gapsMm.map((gap, i) =>
    listed.map((piece) => gap - times * Number(stockMm[piece]) - Number(aims[i])),
  );
  // One place left empty must cost more than all others can together.
  const empty =
    1 + gapsMm.length * Math.max(0, ...off.map((row) => Math.max(0, ...row.map(Math.abs))));
  const none = new Array(Math.max(0, gapsMm.length - listed.length)).fill(empty);
  const chosen = cheapest(
    off.map((row, i) => [
      ...row.map((each) => (keeps(each + Number(aims[i])) ? Math.abs(each) : empty)),
      ...none,
    ]),
  );
  const places = gapsMm.map((gap, i) => {
    const aim = Number(aims[i]);
    // Nothing is there for a place that goes without: what is no number keeps no window.
    const landed = Number(off[i]?.[Number(chosen[i])]);
    const fits = keeps(landed + aim);
    return Object.freeze({
      place: i + 1,
      piece: fits ? Number(listed[Number(chosen[i])]) + 1 : null,
      clearance_mm: fits ? landed + aim : null,
      deviation_mm: fits ? landed : null,
      thickness_wanted_mm: (gap - aim) / times,
    });
  });
  const found = places.flatMap((each) =>
    each.deviation_mm === null ? [] : [Math.abs(each.deviation_mm)],
  );
  return Object.freeze({
    places: Object.freeze(places),
    sum_of_deviations_mm: sum(found),
    worst_mm: Math.max(0, ...found),
    missing: Object.freeze(places.filter((each) => !each.piece).map((each) => each.place)),
  });
}

/**
 * @param {number | readonly number[]} target
 * @param {number} places
 */
function targets(target, places) {
  if (!places) throw new NoPlaces();
  if (!Array.isArray(target)) {
    return new Array(places).fill(finite(/** @type {number} */ (target), 'target'));
  }
  if (target.length !== places) throw new CountsDiffer({ what: 'target', of: 'place' });
  return target.map((each) => finite(each, 'target'));
}

/**
 * The stock piece by piece; more of one than there are places changes nothing.
 * @param {readonly number[]} stock
 * @param {readonly number[] | null} counts
 * @param {number} places
 * @param {boolean} lacks
 */
function pieceByPiece(stock, counts, places, lacks) {
  if (counts !== null && many(counts, 'counts').length !== stock.length) {
    throw new CountsDiffer({ what: 'count', of: 'thickness' });
  }
  const often = stock.map((_, i) =>
    counts ? count(/** @type {number} */ (counts[i]), 'count') : 1,
  );
  const pieces = sum(often);
  if (pieces < places && !lacks)
    throw new TooFewPieces({ pieces, places, missing: places - pieces });
  return often.flatMap((each, piece) => new Array(Math.min(each, places)).fill(piece));
}

/**
 * @param {number | null} least
 * @param {number | null} most
 */
function window(least, most) {
  const low = least === null ? -Infinity : finite(least, 'least');
  const high = most === null ? Infinity : finite(most, 'most');
  if (low > high) throw new WindowCrossed({ least, most });
  /** @param {number} clearance */
  return (clearance) => low - HAIR <= clearance && clearance <= high + HAIR;
}
