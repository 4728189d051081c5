/**
 * A torque wrench through an adapter: what to set, and what then arrives at the bolt.
 * At the bolt the force of the hand has the lever wrench + adapter · cos(angle).
 */
import { TradeError } from '../errors.js';
import { isGiven } from './alike.js';
import { aboveZero, finite, notBelowZero } from './amounts.js';
import { applied as appliedAtWrench, settable } from './wrench.js';

/** Angles whose cosine is a plain number, which floats would miss by a hair. */
const COSINES = new Map([
  [0, 1],
  [60, 0.5],
  [90, 0],
  [120, -0.5],
  [180, -1],
  [240, -0.5],
  [270, 0],
  [300, 0.5],
]);
const HAIR = 1e-9;

/** The adapter points back as far as the hand, or farther. */
export class LeverGone extends TradeError {
  static code = 'adapter-no-lever';
  static says = 'Turned back like this the adapter leaves no lever: {lever} mm.';
  static nextStep = 'Turn the adapter outwards, or hold the wrench farther out.';
}

/** More than one turn. */
export class AngleUnclear extends TradeError {
  static code = 'adapter-angle';
  static says = '{angle}° is no angle between adapter and handle.';
  static nextStep = '0 points straight out, 90 across, 180 back over the handle.';
}

/** A hand that may be anywhere on the wrench. */
export class GripUnclear extends TradeError {
  static code = 'adapter-grip';
  static says = 'The hand cannot stray by the whole length of the wrench.';
  static nextStep = 'Say how far from the mark of the grip it may be.';
}

/**
 * The lever the hand has on the bolt, in mm.
 * @param {number} wrenchLengthMm square drive to the middle of the grip
 * @param {number} adapterLengthMm square drive to the middle of the bolt
 * @param {number} angleDeg 0 straight out, 90 across, 180 back over the handle
 */
export function effectiveLength(wrenchLengthMm, adapterLengthMm, angleDeg) {
  aboveZero(wrenchLengthMm, 'wrench length');
  notBelowZero(adapterLengthMm, 'adapter length');
  const lever = wrenchLengthMm + adapterLengthMm * cosine(angleDeg);
  if (lever <= wrenchLengthMm * HAIR) throw new LeverGone({ lever: lever.toFixed(1) });
  return lever;
}

/**
 * What to set for a wanted torque at the bolt.
 * @param {number} wantedNm
 * @param {number} wrenchLengthMm
 * @param {number} adapterLengthMm
 * @param {number} angleDeg
 */
export function setting(wantedNm, wrenchLengthMm, adapterLengthMm, angleDeg) {
  const lever = effectiveLength(wrenchLengthMm, adapterLengthMm, angleDeg);
  return (aboveZero(wantedNm, 'wanted') * wrenchLengthMm) / lever;
}

/**
 * What arrives at the bolt at a setting.
 * @param {number} setToNm
 * @param {number} wrenchLengthMm
 * @param {number} adapterLengthMm
 * @param {number} angleDeg
 */
export function applied(setToNm, wrenchLengthMm, adapterLengthMm, angleDeg) {
  const lever = effectiveLength(wrenchLengthMm, adapterLengthMm, angleDeg);
  return (aboveZero(setToNm, 'setting') * lever) / wrenchLengthMm;
}

/**
 * The setting through a straight extension bar: it stays as it is.
 * @param {number} torqueNm
 * @param {number} extensionLengthMm
 */
export function throughExtension(torqueNm, extensionLengthMm) {
  notBelowZero(extensionLengthMm, 'extension length');
  return aboveZero(torqueNm, 'torque');
}

/**
 * Least and most that may arrive at the bolt, at the ends of everything that is not sure.
 * @param {number} setToNm
 * @param {number} share the wrench's permitted deviation
 * @param {number} wrenchLengthMm
 * @param {number} adapterLengthMm
 * @param {number} angleDeg
 * @param {{gripMm?: number | null}} [more] how far the hand may be from its mark, to either side
 */
export function band(setToNm, share, wrenchLengthMm, adapterLengthMm, angleDeg, more = {}) {
  const lever = effectiveLength(wrenchLengthMm, adapterLengthMm, angleDeg);
  const stray = isGiven(more.gripMm) ? notBelowZero(more.gripMm, 'grip') : 0;
  if (stray >= wrenchLengthMm) throw new GripUnclear();
  const reach = lever - wrenchLengthMm;
  const factors = [-1, 1].map((side) => 1 + reach / (wrenchLengthMm + side * stray));
  if (Math.min(...factors) <= HAIR) throw new LeverGone({ lever: (lever - stray).toFixed(1) });
  const ends = appliedAtWrench(setToNm, share);
  return Object.freeze({
    low_N_m: ends.low_N_m * Math.min(...factors),
    high_N_m: ends.high_N_m * Math.max(...factors),
  });
}

/**
 * @typedef {object} Scale what is known of the wrench; its marks hold for the setting
 * @property {number | null} [graduationNm]
 * @property {number} [share] its permitted deviation
 * @property {number | null} [leastNm]
 * @property {number | null} [mostNm]
 * @property {number | null} [gripMm]
 */

/**
 * All of it for one wanted torque: setting, mark, range, and what arrives at the bolt.
 * @param {number} wantedNm
 * @param {number} wrenchLengthMm
 * @param {number} adapterLengthMm
 * @param {number} angleDeg
 * @param {Scale} [scale]
 */
export function plan(wantedNm, wrenchLengthMm, adapterLengthMm, angleDeg, scale = {}) {
  const { graduationNm, share = 0, leastNm, mostNm, gripMm } = scale;
  const exact = setting(wantedNm, wrenchLengthMm, adapterLengthMm, angleDeg);
  const mark = isGiven(graduationNm)
    ? settable(exact, graduationNm, leastNm, mostNm).settable_N_m
    : exact;
  const atBolt = applied(mark, wrenchLengthMm, adapterLengthMm, angleDeg);
  const ends = band(mark, share, wrenchLengthMm, adapterLengthMm, angleDeg, { gripMm });
  return Object.freeze({
    setting_N_m: exact,
    mark_N_m: mark,
    fits: fits(exact, leastNm, mostNm),
    applied_N_m: atBolt,
    low_N_m: ends.low_N_m,
    high_N_m: ends.high_N_m,
    error: (atBolt - wantedNm) / wantedNm,
  });
}

/**
 * @param {number} exact
 * @param {number | null} [least]
 * @param {number | null} [most]
 * @returns {'takes' | 'starts-at' | 'ends-at'}
 */
function fits(exact, least, most) {
  if (isGiven(least) && exact < finite(least, 'least') * (1 - HAIR)) return 'starts-at';
  return isGiven(most) && exact > finite(most, 'most') * (1 + HAIR) ? 'ends-at' : 'takes';
}

/** @param {number} degrees */
function cosine(degrees) {
  if (Math.abs(finite(degrees, 'angle')) > 360) throw new AngleUnclear({ angle: degrees });
  const turned = ((degrees % 360) + 360) % 360;
  return COSINES.get(turned) ?? Math.cos((turned * Math.PI) / 180);
}
