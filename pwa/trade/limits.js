/**
 * A reading held against limits: inside, outside, or too close to call.
 * All amounts of one call stand in one unit.
 */
import { TradeError } from '../errors.js';
import { finite, notBelowZero } from './amounts.js';

/** Standard uncertainties that a guard band is wide: U with k = 2, or 95 % to one side. */
export const GUARD_RULES = Object.freeze({ expanded: 2, 'one-sided': 1.65 });
/** Limit and guard band are added in floats, so a reading on the edge may miss it by a hair. */
const HAIR = 1e-12;

/** @typedef {'inside' | 'outside' | 'too-close-to-call'} Lies */

/** A lower limit above the upper one. */
export class LimitsCrossed extends TradeError {
  static code = 'limits-crossed';
  static says = 'The lower limit {lower} lies above the upper limit {upper}.';
  static nextStep = 'Look which is which, and type both again.';
}

/** Nothing to hold the reading against. */
export class LimitsMissing extends TradeError {
  static code = 'limits-missing';
  static says = 'There is no limit to hold the reading against.';
  static nextStep = 'Take a limit from the manual, to one side at least.';
}

/** No rule for the guard band by this name. */
export class GuardRuleUnknown extends TradeError {
  static code = 'limits-guard-rule';
  static says = '{rule} is no rule for a guard band.';
  static nextStep = 'Choose expanded (U, k = 2) or one-sided (1.65 u).';
}

/**
 * How far a reading must stay off a limit.
 * @param {number} standardUncertainty
 * @param {string} [rule]
 */
export function guardBand(standardUncertainty, rule = 'expanded') {
  if (!Object.hasOwn(GUARD_RULES, rule)) throw new GuardRuleUnknown({ rule });
  const factor = GUARD_RULES[/** @type {keyof typeof GUARD_RULES} */ (rule)];
  return notBelowZero(standardUncertainty, 'uncertainty') * factor;
}

/**
 * Whether a reading proves that the thing keeps its limits, or that it does not.
 * @param {number} reading
 * @param {number | null} lower null where that side has no limit
 * @param {number | null} upper
 * @param {number} guard
 */
export function judge(reading, lower, upper, guard) {
  finite(reading, 'reading');
  notBelowZero(guard, 'guard band');
  checked(lower, upper);
  const hair = HAIR * Math.max(...[reading, guard, lower ?? 0, upper ?? 0].map(Math.abs));
  const lies = place(reading, lower, upper, guard, hair);
  return Object.freeze({
    lies,
    proves: proves(lies),
    accept_low: lower === null ? null : lower + guard,
    accept_high: upper === null ? null : upper - guard,
    reject_below: lower === null ? null : lower - guard,
    reject_above: upper === null ? null : upper + guard,
    provable: lower === null || upper === null || lower + guard <= upper - guard + hair,
  });
}

/**
 * How much of the room between two limits the guard bands eat; from 1 on nothing can be proved.
 * @param {number} guard
 * @param {number} lower
 * @param {number} upper
 */
export function shareOfLimits(guard, lower, upper) {
  notBelowZero(guard, 'guard band');
  if (finite(lower, 'lower limit') >= finite(upper, 'upper limit'))
    throw new LimitsCrossed({ lower, upper });
  return (2 * guard) / (upper - lower);
}

/**
 * @param {number | null} lower
 * @param {number | null} upper
 */
function checked(lower, upper) {
  if (lower !== null) finite(lower, 'lower limit');
  if (upper !== null) finite(upper, 'upper limit');
  if (lower === null && upper === null) throw new LimitsMissing();
  if (lower !== null && upper !== null && lower > upper) throw new LimitsCrossed({ lower, upper });
}

/**
 * @param {number} reading
 * @param {number | null} lower
 * @param {number | null} upper
 * @param {number} guard
 * @param {number} hair
 * @returns {Lies}
 */
function place(reading, lower, upper, guard, hair) {
  // How far the reading stays inside the nearer limit; below zero it is beyond.
  const inside = Math.min(
    lower === null ? Infinity : reading - lower,
    upper === null ? Infinity : upper - reading,
  );
  if (inside >= guard - hair) return 'inside';
  return inside < -guard - hair ? 'outside' : 'too-close-to-call';
}

/** @param {Lies} lies */
function proves(lies) {
  if (lies === 'too-close-to-call') return null;
  return lies === 'inside' ? 'conformity' : 'non-conformity';
}
