/**
 * How an instrument scatters, pooled over many checks, and from one day to the next.
 * Numbers of one call stand in one unit, whatever is measured; so does what comes out.
 */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { aboveZero, count, finite, notBelowZero } from './amounts.js';
import { sum } from './dimension.js';

/** Two lists that belong together and are not of one length. */
export class ListsDiffer extends TradeError {
  static code = 'scatter-lists-differ';
  static says = '{one} and {other} are not as many.';
  static nextStep = 'Give one of each for every check.';
}

/** One day has no scatter between days. */
export class TooFewDays extends TradeError {
  static code = 'scatter-few-days';
  static says = 'One day says nothing about scatter from day to day.';
  static nextStep = 'Measure the same part again on another day.';
}

/** No checks at all. */
export class NothingToPool extends TradeError {
  static code = 'scatter-nothing';
  static says = 'There are no checks to pool.';
  static nextStep = 'Give one set of repeats at least.';
}

/**
 * Pooled repeatability: s = √(Σ SS / Σ ν).
 * @param {readonly number[]} sumsOfSquares
 * @param {readonly number[]} degreesOfFreedom
 */
export function pooled(sumsOfSquares, degreesOfFreedom) {
  if (!many(sumsOfSquares, 'sums of squares').length) throw new NothingToPool();
  if (sumsOfSquares.length !== many(degreesOfFreedom, 'degrees of freedom').length) {
    throw new ListsDiffer({ one: 'Sums of squares', other: 'degrees of freedom' });
  }
  const squares = sum(sumsOfSquares.map((each) => notBelowZero(each, 'sum of squares')));
  const freedom = sum(degreesOfFreedom.map((each) => aboveZero(each, 'degrees of freedom')));
  return Object.freeze({
    sum: squares,
    degrees_of_freedom: freedom,
    repeatability: Math.sqrt(squares / freedom),
  });
}

/**
 * Pooled repeatability from the standard deviation of each set and its number of repeats.
 * @param {readonly number[]} deviations
 * @param {readonly number[]} counts
 */
export function pooledDeviations(deviations, counts) {
  if (many(deviations, 'deviations').length !== many(counts, 'counts').length) {
    throw new ListsDiffer({ one: 'Standard deviations', other: 'numbers of repeats' });
  }
  const freedom = counts.map((each) => count(each, 'repeats', 2) - 1);
  const squares = deviations.map(
    (each, i) => (freedom[i] ?? 0) * notBelowZero(each, 'standard deviation') ** 2,
  );
  return pooled(squares, freedom);
}

/**
 * Repeatability within a day and scatter from day to day of one gauge on one part.
 * @param {readonly number[]} dailyMeans
 * @param {readonly number[]} dailyStandardDeviations
 * @param {number} readingsADay
 */
export function days(dailyMeans, dailyStandardDeviations, readingsADay) {
  if (many(dailyMeans, 'daily means').length < 2) throw new TooFewDays();
  many(dailyStandardDeviations, 'daily standard deviations');
  if (dailyMeans.length !== dailyStandardDeviations.length) {
    throw new ListsDiffer({ one: 'Daily means', other: 'daily standard deviations' });
  }
  const aDay = count(readingsADay, 'readings a day', 2);
  const means = dailyMeans.map((each) => finite(each, 'daily mean'));
  const squares = dailyStandardDeviations.map(
    (each) => notBelowZero(each, 'standard deviation') ** 2,
  );
  const within = sum(squares) / squares.length;
  const mean = sum(means) / means.length;
  const ofMeans = sum(means.map((each) => (each - mean) ** 2)) / (means.length - 1);
  const between = Math.max(0, ofMeans - within / aDay);
  return Object.freeze({
    mean,
    repeatability: Math.sqrt(within),
    standard_deviation_of_daily_means: Math.sqrt(ofMeans),
    between_days: Math.sqrt(between),
    standard_uncertainty: Math.sqrt(between + within),
  });
}
