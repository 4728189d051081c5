/**
 * Proofs of an assembled engine: leak-down, compression, oil pressure, prime.
 * Shares and means only. What is enough says the owner's limit; what others publish is offered with
 * its source and never as authority. Pressures in kPa, times in seconds.
 */
import { isGiven, many } from './alike.js';
import {
  aboveZero,
  count,
  facts,
  finite,
  notBelowZero,
  numbers,
  share as shareOf,
} from './amounts.js';
import {
  GaugesCrossed,
  LimitsCrossed,
  NoReadings,
  PlaceUnknown,
  TimeRunsBack,
} from './proof_errors.js';
import { convert } from './units.js';

/** @typedef {{time_s: number, pressure_kPa: number}} Point */
/**
 * What the owner's manual asks in a range of speed (1/min) and temperature (°C); an end left out is
 * open, the ends themselves belong to the range.
 * @typedef {{least_kPa?: number | null, most_kPa?: number | null, speed_from?: number | null,
 *   speed_to?: number | null, temperature_from_C?: number | null,
 *   temperature_to_C?: number | null}} PressureLimit
 */

/** FAA AC 43.13-1B, chapter 8: loss above 25 % calls for repair (aircraft engines). */
export const DIFFERENTIAL_LIMIT = 0.25;
/** Common practice, no source: the lowest not under three quarters of the highest. */
export const EVEN_SHARE = 0.75;
const LARGER_ORIFICE_FROM_MM = 127;
const SMALL_ORIFICE_MM = 1.016;
const LARGE_ORIFICE_MM = 1.524;
/** A share on its limit may stand a hair beyond it, since units convert through floats. */
const ROUNDING = 1e-9;

/**
 * Share of the supplied pressure that a cylinder does not hold, 0 to 1; both gauge pressures.
 * @param {number} suppliedKpa
 * @param {number} heldKpa
 */
export function leakage(suppliedKpa, heldKpa) {
  numbers({ supply: suppliedKpa, 'cylinder pressure': heldKpa });
  aboveZero(suppliedKpa, 'supply');
  notBelowZero(heldKpa, 'cylinder pressure');
  if (heldKpa > suppliedKpa * (1 + ROUNDING)) throw new GaugesCrossed();
  return Math.max(0, (suppliedKpa - heldKpa) / suppliedKpa);
}

/**
 * Whether a leakage is within a limit; the limit itself still is.
 * @param {number} share
 * @param {number} [limit]
 */
export const leaksNoMoreThan = (share, limit = DIFFERENTIAL_LIMIT) =>
  shareOf(share, 'leakage') <= shareOf(limit, 'limit') + ROUNDING;

/**
 * The orifice of the differential tester for a bore: 0.040 in below 5.00 in, else 0.060 in.
 * FAA AC 43.13-1B change 1, paragraph 8-14 (aircraft engines).
 * @param {number} boreMm
 */
export function orifice(boreMm) {
  const large = aboveZero(boreMm, 'bore') >= LARGER_ORIFICE_FROM_MM * (1 - ROUNDING);
  return large ? LARGE_ORIFICE_MM : SMALL_ORIFICE_MM;
}

/**
 * The lowest compression as a share of the highest, their mean and their places, counted from 1.
 * @param {readonly number[]} readingsKpa
 */
export function evenness(readingsKpa) {
  if (!many(readingsKpa, 'readings').length) throw new NoReadings({ what: 'compression' });
  for (const each of readingsKpa) notBelowZero(each, 'compression');
  const low = Math.min(...readingsKpa);
  const high = aboveZero(Math.max(...readingsKpa), 'highest compression');
  return Object.freeze({
    lowest_over_highest: low / high,
    mean_kPa: mean(readingsKpa),
    lowest_place: readingsKpa.indexOf(low) + 1,
    highest_place: readingsKpa.indexOf(high) + 1,
  });
}

/** @param {readonly number[]} numbers */
const mean = (numbers) => numbers.reduce((sum, each) => sum + each, 0) / numbers.length;

/**
 * Whether cylinders are even by a limit; the limit itself still is.
 * @param {number} lowestOverHighest
 * @param {number} [limit]
 */
export const isEven = (lowestOverHighest, limit = EVEN_SHARE) =>
  shareOf(lowestOverHighest, 'lowest over highest') >= shareOf(limit, 'limit') - ROUNDING;

/** @param {readonly Point[]} points */
function trace(points) {
  if (!many(points, 'points').length) throw new NoReadings({ what: 'pressure' });
  for (const each of points) {
    const { time_s: time, pressure_kPa: pressure } = facts(each, 'point');
    notBelowZero(time, 'time');
    notBelowZero(pressure, 'pressure');
  }
  const back = points.some(({ time_s: time }, i) => i > 0 && time <= (points[i - 1]?.time_s ?? 0));
  if (back) throw new TimeRunsBack();
  return points;
}

/**
 * When a pressure trace first reaches a threshold, by straight lines; null if it never does.
 * @param {readonly Point[]} points
 * @param {number} thresholdKpa
 */
export function timeTo(points, thresholdKpa) {
  const wanted = aboveZero(thresholdKpa, 'threshold');
  const read = trace(points);
  const near = wanted * (1 - ROUNDING);
  const place = read.findIndex(({ pressure_kPa: pressure }) => pressure >= near);
  const [before, at] = [read[place - 1], read[place]];
  if (!at) return null;
  if (!before) return at.time_s;
  const part = (wanted - before.pressure_kPa) / (at.pressure_kPa - before.pressure_kPa);
  return before.time_s + Math.min(1, part) * (at.time_s - before.time_s);
}

/**
 * The pressure over the last so many seconds: the readings later than the end less that time.
 * @param {readonly Point[]} points
 * @param {number} lastS
 */
export function plateau(points, lastS) {
  const span = aboveZero(lastS, 'time of the plateau');
  const read = trace(points);
  const begin = (read.at(-1)?.time_s ?? 0) - span + ROUNDING;
  const late = read.filter(({ time_s: time }) => time > begin).map((each) => each.pressure_kPa);
  return Object.freeze({
    mean_kPa: mean(late),
    least_kPa: Math.min(...late),
    most_kPa: Math.max(...late),
    readings: late.length,
  });
}

/**
 * The places where no oil was seen yet; none missing is a complete prime.
 * @param {number} places
 * @param {readonly number[]} seen
 */
export function missingPlaces(places, seen) {
  const most = count(places, 'number of places', 1);
  for (const place of many(seen, 'places seen')) {
    if (count(place, 'place', 1) > most) throw new PlaceUnknown({ place, places });
  }
  return Array.from({ length: most }, (_, i) => i + 1).filter((place) => !seen.includes(place));
}

/** @type {(number: number, low: number | null | undefined, high: number | null | undefined) => boolean} */
function holds(number, low, high) {
  const hair = ROUNDING * Math.max(1, Math.abs(number));
  return (low ?? -Infinity) - hair <= number && number <= (high ?? Infinity) + hair;
}

/** A limit has numbers for its ends, the least not above the most. @param {PressureLimit} limit */
function checkLimit(limit) {
  for (const end of Object.values(facts(limit, 'limit'))) if (isGiven(end)) finite(end, 'limit');
  const { least_kPa: least, most_kPa: most } = limit;
  if (typeof least === 'number' && !holds(least, null, most)) {
    throw new LimitsCrossed({ what: 'oil pressure' });
  }
}

/**
 * An oil pressure against the owner's limits for its speed and temperature, and no others. All limits
 * whose range holds the reading count; too low is said before too high.
 * @param {{pressureKpa: number, speed: number, temperatureC: number}} reading
 * @param {readonly PressureLimit[]} limits
 * @returns {'no limit' | 'too low' | 'too high' | 'within'}
 */
export function oilPressure({ pressureKpa, speed, temperatureC }, limits) {
  notBelowZero(pressureKpa, 'oil pressure');
  notBelowZero(speed, 'speed');
  convert(temperatureC, '°C', '°C');
  for (const each of many(limits, 'limits')) checkLimit(each);
  const ours = limits.filter(
    (each) =>
      holds(speed, each.speed_from, each.speed_to) &&
      holds(temperatureC, each.temperature_from_C, each.temperature_to_C),
  );
  if (!ours.every((each) => holds(pressureKpa, each.least_kPa, null))) return 'too low';
  if (!ours.every((each) => holds(pressureKpa, null, each.most_kPa))) return 'too high';
  return ours.length ? 'within' : 'no limit';
}
