/** Units: amounts in words of closed lists, converted exactly, shown without losing a digit. */
import { count, facts, finite, TooLarge, word } from './amounts.js';
import { decimal, exact, float, product, ratioOf, roundedRatio, sum } from './exact.js';
import { parseNumber } from './number.js';
import { BelowAbsoluteZero, NumberUnclear, UnitsDiffer, UnitUnknown } from './unit_errors.js';
import { OFFSETS, UNIT_WORDS } from './unit_words.js';

export { parseNumber, UNIT_WORDS };

/** @typedef {{value: string, unit: string}} Measured a number as it was typed, with its unit word */
/** @typedef {import('./exact.js').Ratio} Ratio */
/** @typedef {{quantity: string, size: Ratio, offset: Ratio}} Size */

/** The units a torque is shown in. */
export const TORQUE_WORDS = Object.freeze(Object.keys(UNIT_WORDS.torque));

const LEAST_DECIMALS = /** @type {Record<string, number>} */ ({ torque: 1 });
const MOST_DECIMALS = 100;
const KEPT = /^-?[0-9]*\.?[0-9]*$/;
const NOUGHT = Object.freeze({ up: 0n, down: 1n });
// A float of the absolute zero may stand a hair below it.
const ABSOLUTE_ZERO = Object.freeze({ up: -273150000001n, down: 1000000000n });

/** @type {Map<string, Size>} */
const SIZES = new Map(
  Object.entries(UNIT_WORDS).flatMap(([quantity, words]) =>
    Object.entries(words).map(([word, size]) => {
      const offset = /** @type {Record<string, string>} */ (OFFSETS)[word];
      return [word, { quantity, size: ratioOf(size), offset: offset ? ratioOf(offset) : NOUGHT }];
    }),
  ),
);

/**
 * A measured value; if it is given back, number and unit can be read.
 * @param {string} value
 * @param {string} unit
 * @returns {Measured}
 */
export function measured(value, unit) {
  parseNumber(value, { oneDecimalKey: true, signed: true });
  if (!KEPT.test(value)) throw new NumberUnclear({ typed: value });
  quantityOf(unit);
  return Object.freeze({ value, unit });
}

/** @param {string} unit */
function sized(unit) {
  const found = SIZES.get(unit);
  if (!found) throw new UnitUnknown({ unit });
  return found;
}

/**
 * What a unit word measures.
 * @param {string} unit
 */
export function quantityOf(unit) {
  return sized(unit).quantity;
}

/**
 * From one unit to another, exactly: amount · scale + offset.
 * @param {string} unit
 * @param {string} to
 */
function between(unit, to) {
  const [from, into] = [sized(unit), sized(to)];
  if (from.quantity !== into.quantity) throw new UnitsDiffer({ unit, other: to });
  const back = { up: into.size.down, down: into.size.up };
  const less = { up: -into.offset.up, down: into.offset.down };
  return { scale: product(from.size, back), offset: product(sum(from.offset, less), back) };
}

/**
 * @param {Ratio} amount
 * @param {string} unit
 */
function aboveAbsoluteZero(amount, unit) {
  const { quantity, size, offset } = sized(unit);
  if (quantity !== 'temperature') return;
  const celsius = sum(product(amount, size), offset);
  const over = sum(celsius, { up: -ABSOLUTE_ZERO.up, down: ABSOLUTE_ZERO.down });
  if (over.up < 0n) throw new BelowAbsoluteZero({ typed: `${float(amount)} ${unit}` });
}

/**
 * The same amount in another unit of the same quantity; temperatures are points.
 * @param {number} value
 * @param {string} unit
 * @param {string} to
 */
export function convert(value, unit, to) {
  const { scale, offset } = between(unit, to);
  const amount = exact(finite(value, 'amount'));
  aboveAbsoluteZero(amount, unit);
  return unit === to ? value : float(sum(product(amount, scale), offset));
}

/**
 * A difference of two amounts in another unit: 18 °F warmer are 10 °C warmer.
 * @param {number} value
 * @param {string} unit
 * @param {string} to
 */
export function convertDifference(value, unit, to) {
  return float(product(exact(finite(value, 'amount')), between(unit, to).scale));
}

/** An amount as it was typed, if it is one. @param {Measured} amount */
function kept(amount) {
  facts(amount, 'amount');
  if (!/[0-9]/.test(word(amount.value, 'amount')) || !KEPT.test(amount.value))
    throw new NumberUnclear({ typed: amount.value });
  return amount;
}

/**
 * -1, 0 or 1 as the first amount is less than, as much as, or more than the second; exact.
 * @param {Measured} one
 * @param {Measured} other
 */
export function compare(one, other) {
  for (const each of [one, other]) kept(each);
  const { scale, offset } = between(one.unit, other.unit);
  const left = sum(product(decimal(one.value), scale), offset);
  const right = decimal(other.value);
  const difference = left.up * right.down - right.up * left.down;
  if (difference === 0n) return 0;
  return difference > 0n ? 1 : -1;
}

/**
 * The amount in another unit, with the digits its resolution is worth, rounded half up.
 * One step of the last digit shown is no more than one step of the last digit typed; torque has
 * one decimal at least. In its own unit a number stays as it was typed.
 * @param {Measured} amount
 * @param {string} to
 */
export function shown(amount, to) {
  if (kept(amount).unit === to) return amount.value;
  const { scale, offset } = between(amount.unit, to);
  const typed = decimal(amount.value);
  let decimals = LEAST_DECIMALS[quantityOf(to)] ?? 0;
  while (scale.down * typed.down > scale.up * 10n ** BigInt(decimals)) decimals += 1;
  return roundedRatio(sum(product(typed, scale), offset), decimals);
}

/**
 * The amount as plain decimal text with so many decimals, rounded half away from zero.
 * @param {number} amount
 * @param {number} decimals
 */
export function rounded(amount, decimals) {
  if (count(decimals, 'decimals') > MOST_DECIMALS)
    throw new TooLarge({ what: 'number of decimals' });
  return roundedRatio(exact(finite(amount, 'amount')), decimals);
}
