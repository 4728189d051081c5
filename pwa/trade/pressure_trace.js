/** A trace of oil pressure while priming, reduced to when it rose, how fast, and where it stays. */
import { TradeError } from '../errors.js';
import { aboveZero, finite, notBelowZero } from './amounts.js';
import { sum } from './dimension.js';

const LOW = 0.1;
const HIGH = 0.9;

/** Fewer than two points. */
export class TraceTooShort extends TradeError {
  static code = 'trace-too-short';
  static says = 'A trace needs two readings at least.';
  static nextStep = 'Read the gauge every second while the engine is turned.';
}

/** A reading not later than the one before. */
export class TimeBackwards extends TradeError {
  static code = 'trace-time-backwards';
  static says = 'Reading {place} is not later than the one before.';
  static nextStep = 'Put the readings in the order they were taken.';
}

/** @typedef {{timeS: number, pressureKPa: number}} Point */

/**
 * When the pressure first reached a threshold, in s, straight between readings; null if never.
 * @param {readonly Point[]} trace
 * @param {number} thresholdKPa
 */
export function timeTo(trace, thresholdKPa) {
  const aim = notBelowZero(thresholdKPa, 'threshold');
  return reached(checked(trace), aim);
}

/**
 * Mean in kPa of the readings later than so long before the end.
 * @param {readonly Point[]} trace
 * @param {number} lastS
 */
export function plateau(trace, lastS) {
  const long = aboveZero(lastS, 'last');
  return mean(checked(trace), long);
}

/**
 * How the pressure rose from a tenth to nine tenths of its plateau; null where there is none.
 * @param {readonly Point[]} trace
 * @param {number} lastS
 */
export function rise(trace, lastS) {
  const rows = checked(trace);
  const level = mean(rows, aboveZero(lastS, 'last'));
  const starts = reached(rows, LOW * level);
  const ends = reached(rows, HIGH * level);
  if (level <= 0 || starts === null || ends === null) return null;
  const back = Math.max(...rows.map((each) => each.pressureKPa)) - pressureAt(rows, rows.length - 1);
  return Object.freeze({ starts_s: starts, takes_s: ends - starts, falls_back_kPa: back });
}

/** @param {readonly Point[]} trace */
function checked(trace) {
  if (trace.length < 2) throw new TraceTooShort();
  for (const { timeS, pressureKPa } of trace) {
    finite(timeS, 'amount');
    notBelowZero(pressureKPa, 'pressure');
  }
  const back = trace.findIndex((each, i) => i > 0 && each.timeS <= timeAt(trace, i - 1));
  if (back > 0) throw new TimeBackwards({ place: back + 1 });
  return trace;
}

/**
 * @param {readonly Point[]} rows
 * @param {number} at
 */
const timeAt = (rows, at) => Number(rows[at]?.timeS);

/**
 * @param {readonly Point[]} rows
 * @param {number} at
 */
const pressureAt = (rows, at) => Number(rows[at]?.pressureKPa);

/**
 * @param {readonly Point[]} rows
 * @param {number} aim
 */
function reached(rows, aim) {
  if (pressureAt(rows, 0) >= aim) return timeAt(rows, 0);
  // A hair for thresholds that were converted from another unit.
  const at = rows.findIndex((each) => each.pressureKPa >= aim * (1 - 1e-12));
  if (at < 0) return null;
  const low = pressureAt(rows, at - 1);
  const before = timeAt(rows, at - 1);
  const part = Math.min(1, (aim - low) / (pressureAt(rows, at) - low));
  return before + (timeAt(rows, at) - before) * part;
}

/**
 * @param {readonly Point[]} rows
 * @param {number} last
 */
function mean(rows, last) {
  const from = timeAt(rows, rows.length - 1) - last;
  const late = rows.filter((each) => each.timeS > from + 1e-9).map((each) => each.pressureKPa);
  return sum(late) / late.length;
}
