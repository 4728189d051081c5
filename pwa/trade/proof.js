/** Proof of an assembled engine: compression, leak-down, prime. Only the owner's limits judge. */
import { TradeError } from '../errors.js';
import { aboveZero, count, notBelowZero, share } from './amounts.js';
import { sum } from './dimension.js';
import { convert } from './units.js';

export const AVIATION_SHARE = 0.25;
export const EVEN = 0.75;
const HAIR = 1e-9;

/** More pressure held than supplied. */
export class GaugesCrossed extends TradeError {
  static code = 'proof-gauges-crossed';
  static says = 'The cylinder gauge reads {held}, above the {supplied} supplied.';
  static nextStep = 'Check which gauge is which, then read both again.';
}

/** Nothing was read. */
export class NoReadings extends TradeError {
  static code = 'proof-no-readings';
  static says = 'There are no readings.';
  static nextStep = 'Read one cylinder at least.';
}

/** Seen at a place the engine has not. */
export class PlaceUnknown extends TradeError {
  static code = 'proof-place-unknown';
  static says = 'There is no place {place} of {places}.';
  static nextStep = 'Count the places again.';
}

/**
 * Share of the supplied pressure that a cylinder does not hold, 0 to 1; both are gauge.
 * @param {number} suppliedKPa
 * @param {number} heldKPa
 */
export function leakage(suppliedKPa, heldKPa) {
  const supplied = aboveZero(suppliedKPa, 'supplied');
  const held = notBelowZero(heldKPa, 'held');
  if (held > supplied * (1 + HAIR)) throw new GaugesCrossed({ held, supplied });
  return Math.max(0, (supplied - held) / supplied);
}

/**
 * Whether a leakage keeps a limit; the limit itself is within. For aircraft engines AVIATION_SHARE.
 * @param {number} leak
 * @param {number} most
 */
export function within(leak, most) {
  return share(leak, 'leakage') <= share(most, 'limit') + HAIR;
}

/**
 * A rule of thumb for leak-down: "good", "worn" from 10 %, "find-out-why" above 20 %.
 * @param {number} leak
 */
export function leakMark(leak) {
  if (share(leak, 'leakage') < 0.1 - HAIR) return 'good';
  return leak <= 0.2 + HAIR ? 'worn' : 'find-out-why';
}

/**
 * The master orifice of a differential tester, in mm: 0.040 in, from 5.00 in bore on 0.060 in.
 * @param {number} boreMm
 */
export function orifice(boreMm) {
  const wide = convert(aboveZero(boreMm, 'bore'), 'mm', 'in');
  return convert(wide >= 5 * (1 - 1e-12) ? 0.06 : 0.04, 'in', 'mm');
}

/**
 * How even the compression of the cylinders is; of equal readings the first is named.
 * @param {readonly number[]} readingsKPa
 */
export function evenness(readingsKPa) {
  if (!readingsKPa.length) throw new NoReadings();
  for (const each of readingsKPa) aboveZero(each, 'reading');
  const most = Math.max(...readingsKPa);
  const least = Math.min(...readingsKPa);
  return Object.freeze({
    lowest_over_highest: least / most,
    mean_kPa: sum(readingsKPa) / readingsKPa.length,
    lowest: readingsKPa.indexOf(least) + 1,
    highest: readingsKPa.indexOf(most) + 1,
    shares: Object.freeze(readingsKPa.map((each) => each / most)),
  });
}

/**
 * Whether the lowest is not below that share of the highest; exactly that share is even.
 * @param {number} lowestOverHighest
 * @param {number} [least]
 */
export function even(lowestOverHighest, least = EVEN) {
  return share(lowestOverHighest, 'evenness') >= share(least, 'limit') - HAIR;
}

/**
 * Whether oil was seen at every place, and where not yet; places count from 1.
 * @param {number} places
 * @param {readonly number[]} seen
 */
export function prime(places, seen) {
  const many = count(places, 'places', 1);
  const known = new Set(seen.map((each) => count(each, 'place', 1)));
  const most = Math.max(0, ...known);
  if (most > many) {
    throw new PlaceUnknown({ place: Math.min(...[...known].filter((n) => n > many)), places });
  }
  const missing = Array.from({ length: many }, (_, i) => i + 1).filter((n) => !known.has(n));
  return Object.freeze({ complete: !missing.length, missing: Object.freeze(missing) });
}
