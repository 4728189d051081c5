/** Volumes and heights of a cylinder: displacement, gasket, deck, quench, piston speed. */
import { TradeError } from '../errors.js';
import { aboveZero, count, finite, notBelowZero } from './amounts.js';
import { rounded } from './units.js';

const QUARTER = Math.PI / 4;

/** A piston that stands higher than the gasket is thick. */
export class PistonStrikes extends TradeError {
  static code = 'geometry-piston-strikes';
  static says = 'The piston would strike the head: quench {quench} mm.';
  static nextStep = 'Measure deck height and gasket again, or take a thicker gasket.';
}

/** A ring land wider than its bore. */
export class LandAboveBore extends TradeError {
  static code = 'geometry-land-above-bore';
  static says = 'The land, {land} mm, is wider than the bore, {bore} mm.';
  static nextStep = 'Measure the land above the top ring again.';
}

/**
 * What one piston sweeps, in cm³: π/4 · bore² · stroke.
 * @param {number} boreMm
 * @param {number} strokeMm
 */
export function sweptVolume(boreMm, strokeMm) {
  return cm3Over(boreMm, 'bore', aboveZero(strokeMm, 'stroke'));
}

/**
 * What all pistons sweep together, in cm³.
 * @param {number} boreMm
 * @param {number} strokeMm
 * @param {number} cylinders
 */
export function displacement(boreMm, strokeMm, cylinders) {
  return sweptVolume(boreMm, strokeMm) * count(cylinders, 'cylinders', 1);
}

/**
 * The round opening of a head gasket, in cm³; thickness as compressed.
 * @param {number} gasketBoreMm
 * @param {number} gasketThicknessMm
 */
export function gasketVolume(gasketBoreMm, gasketThicknessMm) {
  const thick = notBelowZero(gasketThicknessMm, 'gasket thickness');
  return cm3Over(gasketBoreMm, 'gasket bore', thick);
}

/**
 * The room over a piston at its top, in cm³; below zero where the piston stands above the deck.
 * @param {number} boreMm
 * @param {number} pistonBelowDeckMm positive below the deck, negative above it
 */
export function deckVolume(boreMm, pistonBelowDeckMm) {
  return cm3Over(boreMm, 'bore', finite(pistonBelowDeckMm, 'piston below deck'));
}

/**
 * The crevice around a piston down to its top ring, in cm³.
 * @param {number} boreMm
 * @param {number} landMm
 * @param {number} heightMm from crown to top ring
 */
export function ringLandVolume(boreMm, landMm, heightMm) {
  const outer = aboveZero(boreMm, 'bore');
  const inner = aboveZero(landMm, 'land');
  const tall = notBelowZero(heightMm, 'height');
  if (inner > outer) throw new LandAboveBore({ land: rounded(inner, 3), bore: rounded(outer, 3) });
  return (QUARTER * (outer - inner) * (outer + inner) * tall) / 1000;
}

/**
 * How near the flat of the piston comes to the head, in mm: below deck + compressed gasket.
 * @param {number} pistonBelowDeckMm
 * @param {number} gasketThicknessMm
 */
export function quench(pistonBelowDeckMm, gasketThicknessMm) {
  const thick = notBelowZero(gasketThicknessMm, 'gasket thickness');
  const found = finite(pistonBelowDeckMm, 'piston below deck') + thick;
  if (found <= 0) throw new PistonStrikes({ quench: rounded(found, 3) });
  return found;
}

/**
 * How much comes off a deck, in mm, to bring the clearance volume down; below zero is to be added.
 * @param {number} boreMm
 * @param {number} volumeNowCm3
 * @param {number} volumeWantedCm3
 */
export function deckCut(boreMm, volumeNowCm3, volumeWantedCm3) {
  const now = aboveZero(volumeNowCm3, 'clearance volume');
  const wanted = aboveZero(volumeWantedCm3, 'clearance volume');
  return (now - wanted) / cm3Over(boreMm, 'bore', 1);
}

/**
 * Mean speed of a piston in m/s: 2 · stroke · speed of turning.
 * @param {number} strokeMm
 * @param {number} speedPerMin
 */
export function meanPistonSpeed(strokeMm, speedPerMin) {
  const travel = aboveZero(strokeMm, 'stroke');
  return (2 * travel * notBelowZero(speedPerMin, 'speed')) / 60000;
}

/**
 * The speed of turning, in 1/min, at which a piston has that mean speed.
 * @param {number} meanSpeedMPerS
 * @param {number} strokeMm
 */
export function speedFor(meanSpeedMPerS, strokeMm) {
  const travel = aboveZero(strokeMm, 'stroke');
  return (notBelowZero(meanSpeedMPerS, 'mean speed') * 60000) / (2 * travel);
}

/**
 * Cubic centimetres of a round column of that diameter and so many millimetres high.
 * @param {number} diameterMm
 * @param {string} what
 * @param {number} heightMm
 */
export function cm3Over(diameterMm, what, heightMm) {
  const wide = aboveZero(diameterMm, what);
  return (QUARTER * wide * wide * finite(heightMm, 'height')) / 1000;
}
