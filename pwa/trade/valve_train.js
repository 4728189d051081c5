/** Lash, preload, installed height and coil bind, and the shims that set them. */
import { TradeError } from '../errors.js';
import { aboveZero, notBelowZero } from './amounts.js';

/** A shim makes the installed height less, never more. */
export class NoShimRaises extends TradeError {
  static code = 'valve-height-below';
  static says = 'The height of {installed} mm is already below {wanted} mm: no shim can raise it.';
  static nextStep = 'Sink the seat, or take a retainer or valve that stands higher.';
}

/** A shim of nothing or less. */
export class NoShimThatThin extends TradeError {
  static code = 'valve-shim-none';
  static says = 'The shim would have to be {thickness} mm thick.';
  static nextStep = 'Shorten the stem, or sink the seat less; no shim does it.';
}

/**
 * The shim that gives the wanted lash: shim in + (measured − wanted) / ratio, in mm.
 * @param {number} lashMeasuredMm
 * @param {number} lashWantedMm
 * @param {number} shimInMm
 * @param {number} [ratio] movement at the valve for each of movement at the shim
 */
export function lashShim(lashMeasuredMm, lashWantedMm, shimInMm, ratio = 1) {
  notBelowZero(lashMeasuredMm, 'lash measured');
  notBelowZero(lashWantedMm, 'lash wanted');
  aboveZero(shimInMm, 'shim in');
  const wanted = shimInMm + (lashMeasuredMm - lashWantedMm) / aboveZero(ratio, 'ratio');
  if (wanted <= 0) throw new NoShimThatThin({ thickness: wanted.toFixed(3) });
  return wanted;
}

/**
 * Lash at the cam side of a rocker, from the lash at the valve, in mm.
 * @param {number} lashMm
 * @param {number} ratio
 */
export function lashAtLifter(lashMm, ratio) {
  return notBelowZero(lashMm, 'lash') / aboveZero(ratio, 'ratio');
}

/**
 * Lash at the valve, from the lash at the cam side of a rocker, in mm.
 * @param {number} lashMm
 * @param {number} ratio
 */
export function lashAtValve(lashMm, ratio) {
  return notBelowZero(lashMm, 'lash') * aboveZero(ratio, 'ratio');
}

/**
 * How far turns past zero lash press the plunger of a hydraulic lifter.
 * @param {number} turns
 * @param {number} pitchMm
 * @param {number} [ratio] valve side over pushrod side of a rocker that turns about the stud
 */
export function preload(turns, pitchMm, ratio = 1) {
  aboveZero(pitchMm, 'pitch');
  const nut = notBelowZero(turns, 'turns') * pitchMm;
  return Object.freeze({
    stud_travel_mm: nut,
    plunger_travel_mm: nut * (1 + 1 / aboveZero(ratio, 'ratio')),
  });
}

/**
 * Turns of a nut or screw for a travel along its thread.
 * @param {number} travelMm
 * @param {number} pitchMm
 */
export function turnsFor(travelMm, pitchMm) {
  return notBelowZero(travelMm, 'travel') / aboveZero(pitchMm, 'pitch');
}

/**
 * The shim under a spring that brings its installed height down to the wanted one, in mm.
 * @param {number} installedHeightMm
 * @param {number} heightWantedMm
 */
export function heightShim(installedHeightMm, heightWantedMm) {
  aboveZero(installedHeightMm, 'installed height');
  aboveZero(heightWantedMm, 'height wanted');
  if (installedHeightMm < heightWantedMm) {
    throw new NoShimRaises({
      installed: installedHeightMm.toFixed(2),
      wanted: heightWantedMm.toFixed(2),
    });
  }
  return installedHeightMm - heightWantedMm;
}

/**
 * What is left of a spring at full lift before its coils touch; below zero it binds.
 * @param {number} installedHeightMm
 * @param {number} liftMm at the valve
 * @param {number} bindHeightMm of the spring pressed solid
 */
export function coilRoom(installedHeightMm, liftMm, bindHeightMm) {
  aboveZero(installedHeightMm, 'installed height');
  notBelowZero(liftMm, 'lift');
  const left = installedHeightMm - liftMm - aboveZero(bindHeightMm, 'bind height');
  return Object.freeze({ room_mm: left, binds: left <= 0 });
}
