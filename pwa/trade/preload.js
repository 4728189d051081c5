/** Preload of a bolt: its band from one torque, its share of proof, its limit in tightening. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { aboveZero, count, facts, numbers, share as shareOf } from './amounts.js';
import { classOf, loads, yieldStressMpa } from './strength.js';
import { pitchDiameterMm, rootDiameterMm } from './thread.js';
import { friction, nutFactor, preloadByNutFactor } from './torque_form.js';

/** @typedef {import('./thread.js').Thread} Thread */

const FEWEST_TO_SCATTER = 2;
/** 2/√3 as the guideline rounds it: one over the cosine of half the flank angle. */
const HELIX = 1.155;

/** A band of nut factors whose low end lies above its high end. */
export class NutFactorsCrossed extends TradeError {
  static code = 'nut-factors-crossed';
  static says = 'The lower nut factor {low} is above the upper one {high}.';
  static nextStep = 'Look which is which, then type both again.';
}

/** A waist that is no narrower part of the bolt. */
export class WaistTooWide extends TradeError {
  static code = 'waist-too-wide';
  static says = 'The waist is not narrower than the thread itself.';
  static nextStep = 'Measure the thinnest part of the shank, or leave it out.';
}

/**
 * The band of preload from one torque, wrench and friction at their worst together.
 * @param {{torqueNm: number, wrenchDeviation: number, nutFactorLow: number, nutFactorHigh: number,
 *   diameterMm: number}} given
 */
export function band({ torqueNm, wrenchDeviation, nutFactorLow, nutFactorHigh, diameterMm }) {
  numbers({ torque: torqueNm, diameter: diameterMm });
  const off = shareOf(wrenchDeviation, 'wrench deviation');
  const low = nutFactor(nutFactorLow, 'lower nut factor');
  const high = nutFactor(nutFactorHigh, 'upper nut factor');
  if (low > high) throw new NutFactorsCrossed({ low, high });
  const middle = (low + high) / 2;
  const mid = preloadByNutFactor(torqueNm, middle, diameterMm);
  return Object.freeze({
    low_N: (mid * (1 - off) * middle) / high,
    mid_N: mid,
    high_N: (mid * (1 + off) * middle) / low,
  });
}

/**
 * What becomes of the preload when the thread is not as the value assumes.
 * @param {{torqueNm: number, diameterMm: number, nutFactorAssumed: number, nutFactorActual: number}} given
 */
export function change({ torqueNm, diameterMm, nutFactorAssumed, nutFactorActual }) {
  numbers({ torque: torqueNm, diameter: diameterMm });
  return Object.freeze({
    assumed_N: preloadByNutFactor(torqueNm, nutFactorAssumed, diameterMm),
    actual_N: preloadByNutFactor(torqueNm, nutFactorActual, diameterMm),
    change: nutFactorAssumed / nutFactorActual - 1,
  });
}

/**
 * F/A in MPa, the pull on each square millimetre.
 * @param {number} preloadN
 * @param {number} areaMm2
 */
export const stress = (preloadN, areaMm2) =>
  aboveZero(preloadN, 'preload') / aboveZero(areaMm2, 'area');

/**
 * A stress as a share of a limit, such as the proof stress.
 * @param {number} stressMpa
 * @param {number} limitMpa
 */
export const share = (stressMpa, limitMpa) =>
  aboveZero(stressMpa, 'stress') / aboveZero(limitMpa, 'limit');

/**
 * A preload as a share of the proof load of its thread and class (table value).
 * @param {number} preloadN
 * @param {Thread} thread
 * @param {string} propertyClass
 */
export const shareOfProof = (preloadN, thread, propertyClass) =>
  aboveZero(preloadN, 'preload') / loads(thread, propertyClass).proof_load_N;

/**
 * The preload at which pull and twist together reach a share of the yield stress. VDI 2230:2001.
 * The waist is the diameter of a reduced shank.
 * @param {{thread: Thread, propertyClass: string, frictionThread: number, shareOfYield?: number,
 *   waistMm?: number | null}} given
 */
export function atShareOfYield(given) {
  const { thread, propertyClass, frictionThread, shareOfYield = 0.9, waistMm = null } = given;
  facts(thread, 'thread');
  const part = aboveZero(shareOf(shareOfYield, 'share of yield'), 'share of yield');
  const rub = friction(frictionThread, 'friction in the thread');
  const name = classOf(propertyClass, thread.standard);
  const limit = part * yieldStressMpa(name, thread.diameter_mm);
  const narrow = narrowest(thread, waistMm);
  const middle = pitchDiameterMm(thread);
  const twist = ((1.5 * middle) / narrow) * (thread.pitch_mm / (Math.PI * middle) + HELIX * rub);
  return (((limit * Math.PI) / 4) * narrow ** 2) / Math.sqrt(1 + 3 * twist ** 2);
}

/** @type {(thread: Thread, waistMm: number | null) => number} */
function narrowest(thread, waistMm) {
  const narrow = (pitchDiameterMm(thread) + rootDiameterMm(thread)) / 2;
  if (waistMm === null) return narrow;
  if (aboveZero(waistMm, 'waist') > thread.diameter_mm) throw new WaistTooWide();
  return Math.min(waistMm, narrow);
}

/**
 * How preloads from one torque lie about their mean; standard deviation with n - 1.
 * @param {number[]} preloadsN
 */
export function scatter(preloadsN) {
  count(many(preloadsN, 'preloads').length, 'number of preloads', FEWEST_TO_SCATTER);
  for (const each of preloadsN) aboveZero(each, 'preload');
  const mean = preloadsN.reduce((sum, each) => sum + each, 0) / preloadsN.length;
  const squares = preloadsN.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  return Object.freeze({
    mean_N: mean,
    standard_deviation_N: Math.sqrt(squares / (preloadsN.length - 1)),
    lowest_over_mean: Math.min(...preloadsN) / mean,
    highest_over_mean: Math.max(...preloadsN) / mean,
  });
}
