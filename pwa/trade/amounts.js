/** Numbers that a rule may compute with: finite, of a size that exists, above zero where they must be. */
import { TradeError } from '../errors.js';

/** Beyond it no unit of ours measures anything in a workshop; below it no sum overflows. */
export const LARGEST = 1e15;
/** Less than this is nothing: no gauge shows it, and dividing by it overflows. */
export const LEAST = 1e-30;

/** Text, nothing, NaN or infinity where a number belongs. */
export class NotANumber extends TradeError {
  static code = 'amount-no-number';
  static says = 'The {what} is no number.';
  static nextStep = 'Read it again, and type the number.';
}

/** More than anything in a workshop measures. */
export class TooLarge extends TradeError {
  static code = 'amount-too-large';
  static says = 'The {what} is larger than anything in a workshop.';
  static nextStep = 'Look at the decimal sign and the unit.';
}

/** Nothing, or less, where there must be something. */
export class NotAboveZero extends TradeError {
  static code = 'amount-not-above-zero';
  static says = 'The {what} must be above zero.';
  static nextStep = 'Measure it again, or take it from the manual.';
}

/** Less than nothing, where that cannot be. */
export class BelowZero extends TradeError {
  static code = 'amount-below-zero';
  static says = 'The {what} is below zero.';
  static nextStep = 'Leave the minus sign out, or measure again.';
}

/** A share that is less than nothing or more than the whole. */
export class NotAShare extends TradeError {
  static code = 'amount-no-share';
  static says = 'The {what} is not between 0 and 1.';
  static nextStep = 'Type it as a share: 4 per cent is 0.04.';
}

/** A count that is no whole number, or below the least there can be. */
export class NotACount extends TradeError {
  static code = 'amount-no-count';
  static says = 'The {what} must be a whole number of {least} or more.';
  static nextStep = 'Count again.';
}

/** A value of quite another kind than the rule takes. */
export class WrongKind extends TradeError {
  static code = 'amount-wrong-kind';
  static says = 'The {what} is not of the kind that belongs there.';
  static nextStep = 'Look at what this rule takes, and give that.';
}

/**
 * Facts by name, such as a thread, a point or a cylinder; not one number, text or list.
 * @template T
 * @param {T} value
 * @param {string} what
 * @returns {T}
 */
export function facts(value, what) {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new WrongKind({ what });
  return value;
}

/**
 * A word. @param {string} value @param {string} what
 */
export function word(value, what) {
  if (typeof value !== 'string') throw new WrongKind({ what });
  return value;
}

/**
 * The number, if it is one; NaN, infinity, text and nothing are refused by name.
 * @param {number} number
 * @param {string} what
 */
export function finite(number, what) {
  if (typeof number !== 'number' || Number.isNaN(number)) throw new NotANumber({ what });
  if (!Number.isFinite(number)) throw new NotANumber({ what });
  if (Math.abs(number) > LARGEST) throw new TooLarge({ what });
  return number;
}

/**
 * Several amounts are numbers, each of them, before any one is judged.
 * @param {Record<string, number>} listed by what they are called
 */
export function numbers(listed) {
  for (const [what, number] of Object.entries(listed)) finite(number, what);
}

/**
 * The number, if it is above zero.
 * @param {number} number
 * @param {string} what
 */
export function aboveZero(number, what) {
  if (finite(number, what) < LEAST) throw new NotAboveZero({ what });
  return number;
}

/**
 * The number, if it is zero or above.
 * @param {number} number
 * @param {string} what
 */
export function notBelowZero(number, what) {
  if (finite(number, what) < 0) throw new BelowZero({ what });
  return number;
}

/**
 * The number, if it lies from 0 to 1.
 * @param {number} number
 * @param {string} what
 */
export function share(number, what) {
  if (finite(number, what) < 0 || number > 1) throw new NotAShare({ what });
  return number;
}

/**
 * The number, if it is whole and not below the least.
 * @param {number} number
 * @param {string} what
 * @param {number} [least]
 */
export function count(number, what, least = 0) {
  if (!Number.isInteger(finite(number, what)) || number < least) {
    throw new NotACount({ what, least });
  }
  return number;
}
