/** A torque reading held against its target: how far off, and whether it was read right. */
import { TradeError } from '../errors.js';
import { facts, share as shareOf, word } from './amounts.js';
import { convert, quantityOf, TORQUE_WORDS } from './units.js';

/** @typedef {import('./units.js').Measured} Measured */

const UNKNOWN_DEVIATION = 0.06;
const ASKS_WITHIN = 0.03;
const OVER = 2;
const UNDER = 0.5;
// Units convert through floats, so a reading on a limit may stand a hair beyond it.
const ROUNDING = 1e-9;

/** Nothing to hold the reading against. */
export class TargetMissing extends TradeError {
  static code = 'torque-target';
  static says = 'The target is not above zero.';
  static nextStep = 'Take the value from the manual.';
}

/**
 * @param {Measured} reading
 * @param {Measured} target
 */
function ofTarget(reading, target) {
  for (const each of [reading, target]) {
    facts(each, 'torque');
    word(each.value, 'torque');
  }
  const read = convert(Number(reading.value), reading.unit, target.unit);
  if (!(Number(target.value) > 0)) throw new TargetMissing();
  return read / Number(target.value);
}

/**
 * How far a reading is off its target, in per cent of the target; below it is negative.
 * @param {Measured} reading
 * @param {Measured} target
 */
export function deviation(reading, target) {
  return (ofTarget(reading, target) - 1) * 100;
}

/**
 * Whether a reading is short of its target or beyond it by more than is permitted; a reading on
 * the limit is within. Where the wrench's deviation is unknown, 6 % of the target are permitted.
 * @param {Measured} reading
 * @param {Measured} target
 * @param {number | null} [permitted]
 * @returns {'short' | 'within' | 'too-far'}
 */
export function against(reading, target, permitted) {
  const share = shareOf(permitted ?? UNKNOWN_DEVIATION, 'deviation');
  const ratio = ofTarget(reading, target);
  if (ratio < 1 - share - ROUNDING) return 'short';
  return ratio > 1 + share + ROUNDING ? 'too-far' : 'within';
}

/**
 * The unit the reading may really have been read in, or null: 45 N·m where 45 lbf·ft are wanted.
 * @param {Measured} reading
 * @param {Measured} target
 * @returns {string | null}
 */
export function asksUnit(reading, target) {
  const fits = Math.abs(ofTarget(reading, target) - 1) <= ASKS_WITHIN + ROUNDING;
  if (fits || quantityOf(target.unit) !== 'torque') return null;
  const read = Number(reading.value);
  const meant = TORQUE_WORDS.find((unit) => {
    const wanted = convert(Number(target.value), target.unit, unit);
    return Math.abs(read - wanted) <= (ASKS_WITHIN + ROUNDING) * wanted;
  });
  return meant ?? null;
}

/**
 * Whether a reading is over twice or under half its target, as a slip of the keypad is.
 * @param {Measured} reading
 * @param {Measured} target
 * @returns {'over-twice' | 'under-half' | null}
 */
export function outOfReason(reading, target) {
  const ratio = ofTarget(reading, target);
  if (ratio > OVER + ROUNDING) return 'over-twice';
  return ratio < UNDER - ROUNDING ? 'under-half' : null;
}
