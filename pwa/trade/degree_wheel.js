/**
 * Valve timing from a degree wheel: durations, overlap, centrelines, and back.
 * Angles are in degrees at the crankshaft. Each is counted towards the side its name tells; below
 * zero lies on the other side of that dead centre.
 */
import { TradeError } from '../errors.js';
import { finite } from './amounts.js';
import { rounded } from './units.js';

const HALF = 180;
/** @type {ReadonlyMap<string, number>} */
const SIDES = new Map([
  ['before', 1],
  ['after', -1],
]);

/** Farther from its dead centre than the next one. */
export class AngleTooLarge extends TradeError {
  static code = 'wheel-angle-too-large';
  static says = 'The {what}, {angle}°, lies beyond the next dead centre.';
  static nextStep = 'Count from the dead centre that is nearest.';
}

/** Closed before it opens. */
export class ValveNeverOpen extends TradeError {
  static code = 'wheel-never-open';
  static says = 'The {valve} would close before it opens.';
  static nextStep = 'Look which side of the dead centre each reading lies on.';
}

/** Neither before nor after. */
export class SideUnknown extends TradeError {
  static code = 'wheel-side';
  static says = '{side} is no side of a dead centre.';
  static nextStep = 'Choose before or after.';
}

/**
 * Durations, overlap, centrelines, lobe separation and advance from the four readings.
 * @param {number} intakeOpensBtdcDeg
 * @param {number} intakeClosesAbdcDeg
 * @param {number} exhaustOpensBbdcDeg
 * @param {number} exhaustClosesAtdcDeg
 */
export function timing(
  intakeOpensBtdcDeg,
  intakeClosesAbdcDeg,
  exhaustOpensBbdcDeg,
  exhaustClosesAtdcDeg,
) {
  const opens = within(intakeOpensBtdcDeg, 'intake opening');
  const closes = within(intakeClosesAbdcDeg, 'intake closing');
  const exhaustOpens = within(exhaustOpensBbdcDeg, 'exhaust opening');
  const exhaustCloses = within(exhaustClosesAtdcDeg, 'exhaust closing');
  const intake = lasting(opens + HALF + closes, 'intake');
  const exhaust = lasting(exhaustOpens + HALF + exhaustCloses, 'exhaust');
  const intakeMiddle = intake / 2 - opens;
  const exhaustMiddle = exhaust / 2 - exhaustCloses;
  const separation = (intakeMiddle + exhaustMiddle) / 2;
  return Object.freeze({
    intake_duration_deg: intake,
    exhaust_duration_deg: exhaust,
    overlap_deg: opens + exhaustCloses,
    intake_centreline_deg: intakeMiddle,
    exhaust_centreline_deg: exhaustMiddle,
    lobe_separation_deg: separation,
    advance_deg: separation - intakeMiddle,
  });
}

/**
 * Where the wheel should read for a camshaft of those figures; timing the other way round.
 * @param {number} intakeDurationDeg
 * @param {number} exhaustDurationDeg
 * @param {number} lobeSeparationDeg
 * @param {number} advanceDeg
 */
export function readingsFor(intakeDurationDeg, exhaustDurationDeg, lobeSeparationDeg, advanceDeg) {
  const intake = lasting(finite(intakeDurationDeg, 'amount'), 'intake');
  const exhaust = lasting(finite(exhaustDurationDeg, 'amount'), 'exhaust');
  const separation = finite(lobeSeparationDeg, 'amount');
  const early = finite(advanceDeg, 'amount');
  const opens = intake / 2 - (separation - early);
  const closes = exhaust / 2 - (separation + early);
  return Object.freeze({
    intake_opens_btdc_deg: within(opens, 'intake opening'),
    intake_closes_abdc_deg: within(intake - HALF - opens, 'intake closing'),
    exhaust_opens_bbdc_deg: within(exhaust - HALF - closes, 'exhaust opening'),
    exhaust_closes_atdc_deg: within(closes, 'exhaust closing'),
  });
}

/**
 * What the wheel shows, before top dead centre, where the piston truly is at its top.
 * @param {number} stopBtdcDeg at a positive stop
 * @param {number} stopAtdcDeg at the same stop from the other side
 */
export function trueTop(stopBtdcDeg, stopAtdcDeg) {
  return (within(stopBtdcDeg, 'stop before top') - within(stopAtdcDeg, 'stop after top')) / 2;
}

/**
 * A reading set right for a wheel that shows so much before top at true top.
 * @param {number} readingDeg
 * @param {number} wheelAtTopDeg
 * @param {string} side "before" or "after" the dead centre the reading is counted from
 */
export function corrected(readingDeg, wheelAtTopDeg, side) {
  const sign = SIDES.get(side);
  if (sign === undefined) throw new SideUnknown({ side });
  const shift = sign * within(wheelAtTopDeg, 'wheel at top');
  return within(readingDeg, 'reading') - shift;
}

/**
 * @param {number} angle
 * @param {string} what
 */
function within(angle, what) {
  if (Math.abs(finite(angle, what)) >= HALF) {
    throw new AngleTooLarge({ what, angle: rounded(angle, 1) });
  }
  return angle;
}

/**
 * @param {number} duration
 * @param {string} valve
 */
function lasting(duration, valve) {
  if (duration <= 0) throw new ValveNeverOpen({ valve });
  return duration;
}
