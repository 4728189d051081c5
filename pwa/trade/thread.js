/**
 * Threads of fasteners: diameters and tensile stress area, on the basic profile of ISO 68-1, which
 * unified threads share. Diameters are the basic ones of ISO 724, without tolerance.
 */
import { aboveZero, facts, WrongKind, word } from './amounts.js';

const PITCH_FACTOR = (3 * Math.sqrt(3)) / 8;
const MINOR_FACTOR = (5 * Math.sqrt(3)) / 8;
const ROOT_FACTOR = { metric: (17 * Math.sqrt(3)) / 24, unified: 0.6875 * Math.sqrt(3) };
const INCH_AREA_FACTOR = 0.9743;
export const MM_AN_INCH = 25.4;

/** @typedef {'metric' | 'unified'} Standard */
/**
 * @typedef {{standard: Standard, size: string, series: string, designation: string,
 *   diameter_mm: number, pitch_mm: number, threads_per_inch: number | null}} Thread
 */

/**
 * The thread, if it is one: both its sizes above zero, of a known standard.
 * @param {Thread} thread
 */
function checked(thread) {
  facts(thread, 'thread');
  aboveZero(thread.diameter_mm, 'diameter');
  aboveZero(thread.pitch_mm, 'pitch');
  if (!Object.hasOwn(ROOT_FACTOR, word(thread.standard, 'standard')))
    throw new WrongKind({ what: 'standard' });
  return thread;
}

/**
 * d2 = d - 0.649519 P. ISO 724; ASME B1.1, the same basic profile.
 * @param {Thread} thread
 */
export const pitchDiameterMm = (thread) =>
  checked(thread).diameter_mm - PITCH_FACTOR * thread.pitch_mm;

/**
 * d1 = d - 1.082532 P, of the nut thread.
 * @param {Thread} thread
 */
export const minorDiameterMm = (thread) =>
  checked(thread).diameter_mm - MINOR_FACTOR * thread.pitch_mm;

/**
 * d3, of the bolt thread: metric d - 1.226869 P, unified (rounded root) d - 1.190785 P.
 * @param {Thread} thread
 */
export const rootDiameterMm = (thread) =>
  checked(thread).diameter_mm - ROOT_FACTOR[thread.standard] * thread.pitch_mm;

/**
 * The tensile stress area by the formula of its own standard, or of the other one.
 * @param {Thread} thread
 * @param {Standard | null} [formula]
 */
export function stressAreaMm2(thread, formula = null) {
  const pitch = checked(thread).pitch_mm;
  const root = thread.diameter_mm - ROOT_FACTOR.metric * pitch;
  const mean =
    (formula ?? thread.standard) === 'metric'
      ? (pitchDiameterMm(thread) + root) / 2
      : thread.diameter_mm - INCH_AREA_FACTOR * pitch;
  return (Math.PI / 4) * mean ** 2;
}

/**
 * Pitch, minor and root diameter and the tensile stress area.
 * @param {Thread} thread
 */
export function sizes(thread) {
  return Object.freeze({
    pitch_diameter_mm: pitchDiameterMm(thread),
    minor_diameter_mm: minorDiameterMm(thread),
    root_diameter_mm: rootDiameterMm(thread),
    stress_area_mm2: stressAreaMm2(thread),
  });
}
