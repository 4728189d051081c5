/** One reading as a number: in the unit that is asked for, where it was taken, and how sure it is. */
import { value } from '../log/workshop.js';
import { finite } from '../trade/amounts.js';
import { combined, fromLimit, fromResolution } from '../trade/dimension.js';
import { convert, convertDifference, quantityOf } from '../trade/units.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Facts} Facts */
/** @typedef {{position: string | null, direction: string | null}} Spot */
/** @typedef {Spot & {size: number, step: number, decimals: number, instrument: string}} Line */

/** More decimals no gauge of a workshop shows. */
export const MOST_DECIMALS = 8;
const NOTHING = 1e-12;

/** Whether both units measure the same. @param {string} one @param {string} other */
export function sameSort(one, other) {
  try {
    return quantityOf(one) === quantityOf(other);
  } catch {
    return false;
  }
}

/** Where a reading was taken. @param {Facts} reading @returns {Spot} */
export function spotOf(reading) {
  return { position: plain.text(reading.position), direction: plain.text(reading.direction) };
}

/**
 * An amount in a unit, or null where it is of another quantity, or beyond everything.
 * @param {plain.Measured | null} read
 * @param {string} unit
 */
export function inUnit(read, unit) {
  if (!read || !sameSort(read.unit, unit)) return null;
  try {
    const number = finite(Number(read.value), 'reading');
    return read.unit === unit ? number : convert(number, read.unit, unit);
  } catch {
    return null;
  }
}

/**
 * A reading in a unit, or null where it tells nothing of that quantity; step is what its last digit
 * is worth.
 * @param {Facts} reading
 * @param {plain.Measured | null} read its value, as it was read
 * @param {string} unit
 * @returns {Line | null}
 */
export function lineIn(reading, read, unit) {
  const size = inUnit(read, unit);
  if (!read || size === null) return null;
  const places = Math.min(MOST_DECIMALS, read.value.split('.')[1]?.length ?? 0);
  const digit = 10 ** -places;
  const step = read.unit === unit ? digit : Math.abs(convertDifference(digit, read.unit, unit));
  const instrument = plain.asId(reading.instrument);
  return { ...spotOf(reading), size, step, decimals: decimalsOf(step), instrument };
}

/** How many decimals show a step. @param {number} step */
function decimalsOf(step) {
  let decimals = 0;
  while (decimals < MOST_DECIMALS && step * 10 ** decimals < 1 - 1e-9) decimals += 1;
  return decimals;
}

/**
 * The standard uncertainty of one reading, and what it is taken from: the instrument's certificate,
 * else its permitted deviation together with its resolution, else the last digit typed.
 * @param {Subject | null} instrument
 * @param {string} unit
 * @param {number} step what the last digit typed is worth
 */
export function sureness(instrument, unit, step) {
  const certified = width(instrument, 'uncertainty', unit);
  if (certified !== null) return { u: fromLimit(certified, 'normal'), from: 'uncertainty' };
  const resolution = width(instrument, 'resolution', unit);
  const shown = fromResolution(resolution ?? step);
  const deviation = width(instrument, 'deviation', unit);
  if (deviation !== null) return { u: combined([shown, fromLimit(deviation)]), from: 'deviation' };
  return { u: shown, from: resolution === null ? 'last-digit' : 'resolution' };
}

/**
 * A width an instrument tells of itself, in a unit; null where it is not told, nothing, or of
 * another quantity.
 * @param {Subject | null} instrument
 * @param {string} name
 * @param {string} unit
 */
function width(instrument, name, unit) {
  const kept = plain.quantity({ value: value(instrument, name), unit: value(instrument, 'unit') });
  if (!kept || !sameSort(kept.unit, unit)) return null;
  try {
    const number = finite(Number(kept.value), name);
    const found = Math.abs(convertDifference(number, kept.unit, unit));
    return found > NOTHING ? finite(found, name) : null;
  } catch {
    return null;
  }
}
