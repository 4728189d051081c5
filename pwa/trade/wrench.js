/** What a torque wrench can be trusted with: its range, its permitted deviation, its age. */
import { TradeError } from '../errors.js';
import { isGiven } from './alike.js';
import { aboveZero, count, finite, LEAST } from './amounts.js';
import { compare, parseNumber } from './units.js';

/** @typedef {import('./units.js').Measured} Measured */

const SMALL_TOOL = Object.freeze({ value: '10', unit: 'N·m' });
const SMALL_TOOL_DEVIATION = 0.06;
const DEVIATION = 0.04;
const MOST_DEVIATION = 50;
export const YEAR = 365;
/** Half a step and a limit are met by floats that miss them by a hair. */
const ROUNDING = 1e-9;
const DAY = /^([0-9]{4})-([0-9]{2})-([0-9]{2})/;

/** A day that is not written year, month, day, or is in no calendar. */
export class DateUnclear extends TradeError {
  static code = 'date-unclear';
  static says = '{typed} is no day.';
  static nextStep = 'Write year, month and day, like 2031-03-07.';
}

/** A permitted deviation outside what any wrench has. */
export class DeviationUnclear extends TradeError {
  static code = 'wrench-deviation';
  static says = 'A permitted deviation of {typed} % is none a wrench has.';
  static nextStep = 'Type the per cent from its certificate, above 0 and up to 50.';
}

/** A deviation from nothing. */
export class ReferenceMissing extends TradeError {
  static code = 'wrench-reference';
  static says = 'The reference torque is not above zero.';
  static nextStep = 'Type what the tester showed.';
}

/** Marks that have no distance. */
export class GraduationUnclear extends TradeError {
  static code = 'wrench-graduation';
  static says = 'The marks of the scale have no distance.';
  static nextStep = 'Type the step from one mark to the next.';
}

/**
 * Whether a wrench takes a torque; its lowest and highest mark belong to its range.
 * @param {Measured} wanted
 * @param {Measured | null} [least]
 * @param {Measured | null} [most]
 * @returns {'takes' | 'starts-at' | 'ends-at'}
 */
export function fit(wanted, least, most) {
  if (least && compare(least, wanted) > 0) return 'starts-at';
  return most && compare(wanted, most) > 0 ? 'ends-at' : 'takes';
}

/**
 * True when the wrench takes the torque.
 * @param {Measured} wanted
 * @param {Measured | null} [least]
 * @param {Measured | null} [most]
 */
export function inRange(wanted, least, most) {
  return fit(wanted, least, most) === 'takes';
}

/**
 * Permitted deviation of a setting wrench as a share: 0.04, or 0.06 for a small tool.
 * The tool's largest torque decides, not the value set; 10 N·m itself is small. The owner's
 * value in per cent goes before the rest. Null when neither is known.
 * @param {Measured | null} [most]
 * @param {string | null} [own]
 * @returns {number | null}
 */
export function permitted(most, own) {
  if (own !== null && own !== undefined) {
    const share = Number(parseNumber(own, { oneDecimalKey: true })) / 100;
    if (!(share > 0 && share <= MOST_DEVIATION / 100)) throw new DeviationUnclear({ typed: own });
    return share;
  }
  if (!most) return null;
  return compare(most, SMALL_TOOL) > 0 ? DEVIATION : SMALL_TOOL_DEVIATION;
}

/**
 * How far a wrench is off, as a share of the reference torque.
 * @param {number} indicatedNm
 * @param {number} referenceNm
 */
export function deviation(indicatedNm, referenceNm) {
  if (finite(referenceNm, 'reference') < LEAST) throw new ReferenceMissing();
  return (finite(indicatedNm, 'indicated') - referenceNm) / referenceNm;
}

/**
 * Whether a deviation, to either side, is no more than the permitted share; the limit is.
 * @param {number} off
 * @param {number} share
 */
export function within(off, share) {
  return Math.abs(finite(off, 'deviation')) <= checkedShare(share) + ROUNDING;
}

/**
 * Least and most that a wrench may really apply at a setting.
 * The reference divides, so 50 at a share of 0.04 applies 48.08 to 52.08.
 * @param {number} settingNm
 * @param {number} share
 */
export function applied(settingNm, share) {
  finite(settingNm, 'setting');
  const part = checkedShare(share);
  aboveZero(settingNm, 'setting');
  return Object.freeze({ low_N_m: settingNm / (1 + part), high_N_m: settingNm / (1 - part) });
}

/**
 * The mark nearest to a wanted torque; half way goes up, beyond either end the end is given.
 * @param {number} wantedNm
 * @param {number} graduationNm
 * @param {number | null} [leastNm] the lowest mark, from which the marks are counted
 * @param {number | null} [mostNm]
 */
export function settable(wantedNm, graduationNm, leastNm, mostNm) {
  if (finite(graduationNm, 'graduation') < LEAST) throw new GraduationUnclear();
  aboveZero(wantedNm, 'wanted');
  const first = isGiven(leastNm) ? finite(leastNm, 'least') : 0;
  const near = Math.max(0, Math.floor((wantedNm - first) / graduationNm + 0.5 + ROUNDING));
  const top = isGiven(mostNm)
    ? Math.floor((finite(mostNm, 'most') - first) / graduationNm + ROUNDING)
    : near;
  const mark = first + Math.min(near, top) * graduationNm;
  return Object.freeze({ settable_N_m: mark, error: (mark - wantedNm) / wantedNm });
}

/**
 * The least torque a setting wrench is good for: its lowest mark, else a fifth of its largest.
 * @param {number} mostNm
 * @param {number | null} [lowestMarkNm]
 */
export function rangeLow(mostNm, lowestMarkNm) {
  aboveZero(mostNm, 'most');
  if (!isGiven(lowestMarkNm)) return mostNm / 5;
  return aboveZero(lowestMarkNm, 'lowest mark');
}

/** @param {number} share */
function checkedShare(share) {
  if (!(finite(share, 'share') >= 0 && share < 1))
    throw new DeviationUnclear({ typed: share * 100 });
  return share;
}

/**
 * Whether the last calibration is recent enough; a day to come is told as such.
 * @param {string | null} calibrated
 * @param {string} today
 * @param {number} [goodFor] days
 */
export function calibration(calibrated, today, goodFor = YEAR) {
  count(goodFor, 'days', 1);
  if (calibrated === null) return Object.freeze({ state: 'unknown', days: null });
  const days = daysSince(calibrated, today);
  if (days < 0) return Object.freeze({ state: 'to-come', days });
  return Object.freeze({ state: days <= goodFor ? 'current' : 'old', days });
}

/**
 * Whole days from the day of calibration to today; below zero for a day to come.
 * @param {string} calibrated
 * @param {string} today
 */
export function daysSince(calibrated, today) {
  return dayNumber(today) - dayNumber(calibrated);
}

/** @param {string} typed */
function dayNumber(typed) {
  const found = typeof typed === 'string' ? DAY.exec(typed) : null;
  if (!found) throw new DateUnclear({ typed });
  const [year, month, day] = /** @type {[number, number, number]} */ (found.slice(1).map(Number));
  const lengths = monthDays(year);
  if (day < 1 || day > (lengths[month - 1] ?? 0)) throw new DateUnclear({ typed });
  const years = year - 1;
  const before = lengths.slice(0, month - 1).reduce((sum, each) => sum + each, 0);
  const leaps = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400);
  return 365 * years + leaps + before + day;
}

/** @param {number} year */
function monthDays(year) {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
}
