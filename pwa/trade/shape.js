/** How far a bore or journal is from round and straight, how a shaft runs, what wear has taken. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { aboveZero, finite } from './amounts.js';
import { sum } from './dimension.js';

/** One diameter is always round. */
export class TooFewDirections extends TradeError {
  static code = 'shape-directions';
  static says = 'Out-of-round needs two directions in one plane.';
  static nextStep = 'Measure the same plane again, a quarter turn on.';
}

/** One plane has no taper. */
export class TooFewPlanes extends TradeError {
  static code = 'shape-planes';
  static says = 'Taper needs two planes.';
  static nextStep = 'Measure again farther along, in the same directions.';
}

/** A dial that was read once has not moved. */
export class TooFewStations extends TradeError {
  static code = 'shape-stations';
  static says = 'Run-out needs two readings of the dial.';
  static nextStep = 'Turn the shaft once round, and note the highest and the lowest.';
}

/** Planes that were not measured alike. */
export class DirectionsDiffer extends TradeError {
  static code = 'shape-directions-differ';
  static says = 'The planes were not measured in the same directions.';
  static nextStep = 'Give every plane as many readings, in the same order.';
}

/** Neither a shaft nor a bore. */
export class FeatureUnknown extends TradeError {
  static code = 'shape-feature';
  static says = '{feature} is neither shaft nor bore.';
  static nextStep = 'Choose shaft, which wears smaller, or bore, which wears larger.';
}

/** A wear limit on the wrong side of new. */
export class NoWearAllowed extends TradeError {
  static code = 'shape-no-wear';
  static says = 'The wear limit leaves no wear between it and new.';
  static nextStep = 'Look which is the size when new, and which the limit.';
}

/**
 * Largest less smallest diameter of one plane, in mm.
 * @param {readonly number[]} planeMm
 */
export function outOfRound(planeMm) {
  return spread(diameters(planeMm));
}

/**
 * The largest out-of-round of several planes, in mm.
 * @param {readonly (readonly number[])[]} planesMm
 */
export function outOfRoundOfPlanes(planesMm) {
  if (!many(planesMm, 'planes').length) throw new TooFewPlanes();
  return Math.max(...planesMm.map(outOfRound));
}

/**
 * Taper as the difference of two planes' mean diameters: the widest less the narrowest, in mm.
 * @param {readonly (readonly number[])[]} planesMm
 */
export function taperOfMeans(planesMm) {
  return spread(alikePlanes(planesMm).map((plane) => sum(plane) / plane.length));
}

/**
 * Taper as largest less smallest diameter along one direction, the worst direction, in mm.
 * @param {readonly (readonly number[])[]} planesMm
 */
export function taperAlong(planesMm) {
  const planes = alikePlanes(planesMm);
  const first = planes[0] ?? [];
  return Math.max(...first.map((_, i) => spread(planes.map((plane) => plane[i] ?? 0))));
}

/**
 * Run-out from the readings of a dial while the shaft turns once round.
 * @param {readonly number[]} dialMm
 */
export function runOut(dialMm) {
  if (many(dialMm, 'dial').length < 2) throw new TooFewStations();
  const total = spread(dialMm.map((each) => finite(each, 'dial')));
  return Object.freeze({ run_out_mm: total, eccentricity_mm: total / 2 });
}

/**
 * What wear has taken, and which share of what may go.
 * @param {number} newMm
 * @param {number} nowMm
 * @param {string} [feature] shaft wears smaller, bore larger
 * @param {number | null} [limitMm] the size at which it is worn out
 */
export function wear(newMm, nowMm, feature = 'shaft', limitMm = null) {
  if (!['shaft', 'bore'].includes(feature)) throw new FeatureUnknown({ feature });
  const side = feature === 'shaft' ? 1 : -1;
  const gone = side * (aboveZero(newMm, 'new') - aboveZero(nowMm, 'now'));
  if (limitMm === null) return Object.freeze({ wear_mm: gone, share_of_allowed: null });
  const allowed = side * (newMm - aboveZero(limitMm, 'limit'));
  if (allowed <= 0) throw new NoWearAllowed();
  return Object.freeze({ wear_mm: gone, share_of_allowed: gone / allowed });
}

/** @param {readonly number[]} listed */
function spread(listed) {
  return Math.max(...listed) - Math.min(...listed);
}

/** @param {readonly number[]} plane */
function diameters(plane) {
  if (many(plane, 'plane').length < 2) throw new TooFewDirections();
  for (const each of plane) finite(each, 'diameter');
  return plane.map((each) => aboveZero(each, 'diameter'));
}

/** @param {readonly (readonly number[])[]} planes */
function alikePlanes(planes) {
  if (many(planes, 'planes').length < 2) throw new TooFewPlanes();
  for (const plane of planes) many(plane, 'plane');
  const wide = planes[0]?.length ?? 0;
  if (!wide || planes.some((each) => each.length !== wide)) throw new DirectionsDiffer();
  return planes.map((plane) => plane.map((each) => aboveZero(each, 'diameter')));
}
