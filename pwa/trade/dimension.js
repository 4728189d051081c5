/**
 * A reading: its value, and how far the true value may lie from it.
 * All amounts of one call stand in one unit, and so does what comes out.
 */
import { TradeError } from '../errors.js';
import { isGiven, many } from './alike.js';
import { aboveZero, finite, notBelowZero } from './amounts.js';

/** What half the width of a limit is divided by; "normal" is a certificate's U with k = 2. */
export const SHAPES = Object.freeze({
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
  arcsine: Math.sqrt(2),
  normal: 2,
});

/** One reading has no scatter. */
export class TooFewRepeats extends TradeError {
  static code = 'dimension-few-repeats';
  static says = 'One reading says nothing about scatter.';
  static nextStep = 'Read it at least twice, the instrument taken off in between.';
}

/** No known way a limit spreads. */
export class ShapeUnknown extends TradeError {
  static code = 'dimension-shape';
  static says = '{shape} is no known spread of a limit.';
  static nextStep = 'Choose rectangular, triangular, arcsine or normal.';
}

/** Nothing to combine. */
export class NoParts extends TradeError {
  static code = 'dimension-nothing';
  static says = 'There is nothing to combine.';
  static nextStep = 'Give the resolution at least.';
}

/**
 * Standard uncertainty of a reading that shows only whole steps: resolution / √12.
 * @param {number} resolution
 */
export function fromResolution(resolution) {
  return aboveZero(resolution, 'resolution') / Math.sqrt(12);
}

/**
 * Standard uncertainty of an instrument known only to lie within ± a permitted error.
 * @param {number} permittedError
 * @param {string} [shape]
 */
export function fromLimit(permittedError, shape = 'rectangular') {
  if (!Object.hasOwn(SHAPES, shape)) throw new ShapeUnknown({ shape });
  const divisor = SHAPES[/** @type {keyof typeof SHAPES} */ (shape)];
  return notBelowZero(permittedError, 'permitted error') / divisor;
}

/**
 * Independent standard uncertainties together: the root of the sum of their squares.
 * @param {readonly number[]} parts
 */
export function combined(parts) {
  if (!many(parts, 'parts').length) throw new NoParts();
  return Math.hypot(...parts.map((each) => notBelowZero(each, 'uncertainty')));
}

/**
 * Expanded uncertainty U = k · u; k = 2 covers about 95 of 100.
 * @param {number} standardUncertainty
 * @param {number} [k]
 */
export function expanded(standardUncertainty, k = 2) {
  return notBelowZero(standardUncertainty, 'uncertainty') * aboveZero(k, 'k');
}

/**
 * Mean, spread and standard deviation of repeated readings, with the uncertainty of the mean.
 * @param {readonly number[]} values
 */
export function repeats(values) {
  if (many(values, 'readings').length < 2) throw new TooFewRepeats();
  for (const each of values) finite(each, 'reading');
  const count = values.length;
  const mean = sum(values) / count;
  const deviation = Math.sqrt(sum(values.map((each) => (each - mean) ** 2)) / (count - 1));
  return Object.freeze({
    mean,
    spread: Math.max(...values) - Math.min(...values),
    standard_deviation: deviation,
    standard_uncertainty_of_mean: deviation / Math.sqrt(count),
    count,
  });
}

/**
 * A reading from one or several values, with everything known of its uncertainty combined.
 * @param {readonly number[]} values
 * @param {{resolution?: number | null, permittedError?: number | null, shape?: string}} [known]
 */
export function reading(values, known = {}) {
  const { resolution, permittedError, shape } = known;
  if (!many(values, 'readings').length) throw new NoParts();
  let value = finite(values[0] ?? Number.NaN, 'reading');
  const parts = isGiven(resolution) ? [fromResolution(resolution)] : [];
  if (isGiven(permittedError)) parts.push(fromLimit(permittedError, shape));
  if (values.length > 1) {
    const summed = repeats(values);
    value = summed.mean;
    parts.push(summed.standard_uncertainty_of_mean);
  }
  return Object.freeze({ value, standard_uncertainty: combined(parts) });
}

/**
 * A sum that loses no digit to its order (Neumaier).
 * @param {readonly number[]} values
 */
export function sum(values) {
  let total = 0;
  let lost = 0;
  for (const each of values) {
    const next = total + each;
    lost += Math.abs(total) >= Math.abs(each) ? total - next + each : each - next + total;
    total = next;
  }
  return total + lost;
}
