/** Whether something is a list, and whether it was given at all. */
import { TradeError } from '../errors.js';

/** One thing, or none, where several belong. */
export class NotAList extends TradeError {
  static code = 'amount-no-list';
  static says = 'The {what} must be a list.';
  static nextStep = 'Give them all, one after the other.';
}

/**
 * The list, if it is one.
 * @template T
 * @param {readonly T[]} listed
 * @param {string} what
 */
export function many(listed, what) {
  if (!Array.isArray(listed)) throw new NotAList({ what });
  return listed;
}

/**
 * False for what was left out. Whatever else was given is looked at, so that nothing odd is
 * passed over in silence.
 * @template T
 * @param {T | null | undefined} value
 * @returns {value is T}
 */
export function isGiven(value) {
  return value !== null && value !== undefined;
}
