/** Between torque and preload: the nut-factor form, and the long forms with both frictions. */
import { TradeError } from '../errors.js';
import { aboveZero, facts, finite, notBelowZero, numbers } from './amounts.js';
import { pitchDiameterMm } from './thread.js';

/** @typedef {import('./thread.js').Thread} Thread */
/**
 * What the long forms want to know of a bolt; the half angle is that of the flanks, 30 if left out.
 * @typedef {{pitchDiameterMm: number, leadMm: number, meanBearingDiameterMm: number,
 *   halfAngleDegrees?: number}} Screw
 */
/** @typedef {{thread: number, underHead: number}} Friction */

const FLANK_DEGREES = 30;
const STEEPEST_FLANK_DEGREES = 60;
const LARGEST_NUT_FACTOR = 2;

/** A friction or nut factor that no pair of metals has. */
export class FrictionImpossible extends TradeError {
  static code = 'friction-impossible';
  static says = 'The {what} must lie between 0 and {most}.';
  static nextStep = 'Type it as a plain number, such as 0.12.';
}

/** So much friction on so steep a thread that no torque would turn it. */
export class ScrewLocks extends TradeError {
  static code = 'screw-locks';
  static says = 'With this friction the thread cannot be turned at all.';
  static nextStep = 'Look at the lead, the pitch diameter and the friction again.';
}

/** A hole that the head would fall through. */
export class HoleTooLarge extends TradeError {
  static code = 'hole-too-large';
  static says = 'The hole is not smaller than the face that bears.';
  static nextStep = 'Measure the washer face and the hole again.';
}

/**
 * The number, if metal can have it as friction: from 0 to 1.
 * @param {number} number
 * @param {string} what
 * @param {number} [most]
 */
export function friction(number, what, most = 1) {
  if (finite(number, what) < 0 || number > most) throw new FrictionImpossible({ what, most });
  return number;
}

/**
 * The number, if it can be a nut factor: above 0, up to 2.
 * @param {number} number
 * @param {string} [what]
 */
export function nutFactor(number, what = 'nut factor') {
  return friction(aboveZero(number, what), what, LARGEST_NUT_FACTOR);
}

/**
 * T = K F d, the torque that gives a preload. Shigley, 9th ed., equation 8–27.
 * @param {number} preloadN
 * @param {number} factor the nut factor
 * @param {number} diameterMm
 */
export function torqueByNutFactor(preloadN, factor, diameterMm) {
  numbers({ preload: preloadN, diameter: diameterMm });
  const arm = nutFactor(factor) * aboveZero(diameterMm, 'diameter');
  return (arm * aboveZero(preloadN, 'preload')) / 1000;
}

/**
 * F = T / (K d), the preload that a torque gives.
 * @param {number} torqueNm
 * @param {number} factor the nut factor
 * @param {number} diameterMm
 */
export function preloadByNutFactor(torqueNm, factor, diameterMm) {
  numbers({ torque: torqueNm, diameter: diameterMm });
  const arm = nutFactor(factor) * aboveZero(diameterMm, 'diameter');
  return (aboveZero(torqueNm, 'torque') * 1000) / arm;
}

/**
 * The screw of a thread: its pitch diameter, its pitch as lead, 30° flanks.
 * @param {Thread} thread
 * @param {number} meanBearingDiameterMm
 * @returns {Screw}
 */
export function screwOf(thread, meanBearingDiameterMm) {
  return {
    pitchDiameterMm: pitchDiameterMm(thread),
    leadMm: thread.pitch_mm,
    meanBearingDiameterMm,
  };
}

/**
 * The mean diameter that the head or nut rubs on: (outside + hole) / 2. VDI 2230:2001.
 * @param {number} outsideMm
 * @param {number} holeMm
 */
export function meanBearingDiameter(outsideMm, holeMm) {
  numbers({ 'outside diameter': outsideMm, hole: holeMm });
  aboveZero(outsideMm, 'outside diameter');
  notBelowZero(holeMm, 'hole');
  if (holeMm >= outsideMm) throw new HoleTooLarge();
  return (outsideMm + holeMm) / 2;
}

/**
 * Everything a number, and the friction possible, before any one amount is judged.
 * @param {Record<string, number>} amount
 * @param {Screw} screw
 * @param {Friction} rub
 */
function checked(amount, screw, rub) {
  facts(screw, 'screw');
  const { thread, underHead } = facts(rub, 'friction');
  numbers({
    ...amount,
    'pitch diameter': screw.pitchDiameterMm,
    lead: screw.leadMm,
    'mean bearing diameter': screw.meanBearingDiameterMm,
  });
  friction(thread, 'friction in the thread');
  friction(underHead, 'friction under the head');
}

/**
 * The arm in millimetres at which the preload turns back, in the thread and under the head.
 * @type {(screw: Screw, rub: Friction) => number}
 */
function arm(screw, rub) {
  const half = screw.halfAngleDegrees ?? FLANK_DEGREES;
  const flank = friction(half, 'half angle of the flanks', STEEPEST_FLANK_DEGREES);
  const middle = aboveZero(screw.pitchDiameterMm, 'pitch diameter');
  const rise = aboveZero(screw.leadMm, 'lead') / (Math.PI * middle);
  const slant = rub.thread / Math.cos((flank * Math.PI) / 180);
  if (slant * rise >= 1) throw new ScrewLocks();
  const bearing = aboveZero(screw.meanBearingDiameterMm, 'mean bearing diameter');
  return ((middle / 2) * (rise + slant)) / (1 - slant * rise) + (rub.underHead * bearing) / 2;
}

/** @type {(screw: Screw, rub: Friction) => number} */
function guideArm(screw, rub) {
  const lead = aboveZero(screw.leadMm, 'lead');
  const flanks = (rub.thread * aboveZero(screw.pitchDiameterMm, 'pitch diameter')) / Math.sqrt(3);
  const bearing = aboveZero(screw.meanBearingDiameterMm, 'mean bearing diameter');
  return lead / (2 * Math.PI) + flanks + (rub.underHead * bearing) / 2;
}

/**
 * T = F (d2/2 (tan λ + µ sec a)/(1 - µ tan λ sec a) + µc dc/2), tan λ = lead/(π d2).
 * @param {number} preloadN
 * @param {Screw} screw
 * @param {Friction} rub
 */
export function torqueByFriction(preloadN, screw, rub) {
  checked({ preload: preloadN }, screw, rub);
  return (aboveZero(preloadN, 'preload') * arm(screw, rub)) / 1000;
}

/**
 * The way back of torqueByFriction.
 * @param {number} torqueNm
 * @param {Screw} screw
 * @param {Friction} rub
 */
export function preloadByFriction(torqueNm, screw, rub) {
  checked({ torque: torqueNm }, screw, rub);
  return (aboveZero(torqueNm, 'torque') * 1000) / arm(screw, rub);
}

/**
 * T = F (0.159155 P + 0.577350 µ d2 + µk Dkm/2): the long form with the small term left out.
 * VDI 2230:2001, for 60° between the flanks.
 * @param {number} preloadN
 * @param {Screw} screw
 * @param {Friction} rub
 */
export function torqueByGuide(preloadN, screw, rub) {
  checked({ preload: preloadN }, screw, rub);
  return (aboveZero(preloadN, 'preload') * guideArm(screw, rub)) / 1000;
}

/**
 * The way back of torqueByGuide.
 * @param {number} torqueNm
 * @param {Screw} screw
 * @param {Friction} rub
 */
export function preloadByGuide(torqueNm, screw, rub) {
  checked({ torque: torqueNm }, screw, rub);
  return (aboveZero(torqueNm, 'torque') * 1000) / guideArm(screw, rub);
}
