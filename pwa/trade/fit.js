/**
 * Fits: the clearance or interference of two measured features, and how sure it is.
 * Standard uncertainties combine as the root of the sum of their squares; a fit whose readings
 * come without any has none, and cannot be held against a window.
 */
import { TradeError } from '../errors.js';
import { isGiven, many } from './alike.js';
import { aboveZero, facts, finite, notBelowZero } from './amounts.js';
import { guardBand, judge as judged } from './limits.js';

const COVERAGE = 2;

/** A plain bearing is two shells. */
export class TwoWalls extends TradeError {
  static code = 'fit-two-walls';
  static says = 'A bearing has two shells, so two walls.';
  static nextStep = 'Measure both, or give the same wall twice.';
}

/** A window cannot be judged by a reading of unknown quality. */
export class NoUncertainty extends TradeError {
  static code = 'fit-no-uncertainty';
  static says = 'How sure the readings are is not known.';
  static nextStep = 'Give the resolution of each instrument at least.';
}

/** Less than nothing between the ends of a ring. */
export class GapClosed extends TradeError {
  static code = 'fit-gap-closed';
  static says = 'The ring gap would close: {gap} mm.';
  static nextStep = 'Measure the bore again, or file the ring before it goes in.';
}

/**
 * @typedef {object} Clearance
 * @property {number} clearance_mm below zero is interference
 * @property {number} interference_mm the same with the other sign
 * @property {number | null} standard_uncertainty_mm
 * @property {number | null} low_mm
 * @property {number | null} high_mm clearance ± U, k = 2
 */

/**
 * Clearance of a shaft in a bore, with the standard uncertainty of both readings.
 * @param {number} boreMm
 * @param {number} shaftMm
 * @param {number | null} [boreUMm]
 * @param {number | null} [shaftUMm]
 */
export function clearance(boreMm, shaftMm, boreUMm, shaftUMm) {
  const room = aboveZero(boreMm, 'bore') - aboveZero(shaftMm, 'shaft');
  return withBand(room, [
    [boreUMm, 1],
    [shaftUMm, 1],
  ]);
}

/**
 * Oil clearance of a plain bearing: housing less the walls of both shells less journal.
 * @param {number} housingMm its bore without shells, caps torqued
 * @param {readonly number[]} wallsMm of the two shells
 * @param {number} journalMm
 * @param {{housingUMm?: number | null, wallUMm?: number | null, journalUMm?: number | null}} [u]
 */
export function oilClearance(housingMm, wallsMm, journalMm, u = {}) {
  aboveZero(housingMm, 'housing');
  aboveZero(journalMm, 'journal');
  if (many(wallsMm, 'walls').length !== 2) throw new TwoWalls();
  const [one = 0, other = 0] = wallsMm.map((each) => aboveZero(each, 'wall'));
  return withBand(housingMm - one - other - journalMm, [
    [u.housingUMm, 1],
    [u.wallUMm, Math.SQRT2],
    [u.journalUMm, 1],
  ]);
}

/**
 * Side clearance of a ring in its groove, or of rods between the cheeks.
 * @param {number} grooveMm
 * @param {number} widthMm
 * @param {number | null} [grooveUMm]
 * @param {number | null} [widthUMm]
 */
export function sideClearance(grooveMm, widthMm, grooveUMm, widthUMm) {
  return clearance(grooveMm, widthMm, grooveUMm, widthUMm);
}

/**
 * Piston to wall: bore at the gauge height less the skirt there, both at one temperature.
 * @param {number} boreMm
 * @param {number} pistonMm
 * @param {number | null} [boreUMm]
 * @param {number | null} [pistonUMm]
 */
export function pistonToWall(boreMm, pistonMm, boreUMm, pistonUMm) {
  return clearance(boreMm, pistonMm, boreUMm, pistonUMm);
}

/**
 * End play: how far the dial moves from one end to the other.
 * @param {number} backMm
 * @param {number} forwardMm
 * @param {number | null} [dialUMm] of one reading
 */
export function endPlay(backMm, forwardMm, dialUMm) {
  const moved = Math.abs(finite(forwardMm, 'forward') - finite(backMm, 'back'));
  return withBand(moved, [[dialUMm, Math.SQRT2]]);
}

/**
 * The gap of a ring in a bore that is wider by so much: it grows by π for each of diameter.
 * @param {number} gapMm
 * @param {number} boreChangeMm of the diameter
 */
export function ringGapAfter(gapMm, boreChangeMm) {
  const then = notBelowZero(gapMm, 'gap') + Math.PI * finite(boreChangeMm, 'bore change');
  if (then < 0) throw new GapClosed({ gap: then.toFixed(3) });
  return then;
}

/**
 * The ring gap as a share of the bore, which is how rules of thumb put it.
 * @param {number} gapMm
 * @param {number} boreMm
 */
export function gapPerBore(gapMm, boreMm) {
  return notBelowZero(gapMm, 'gap') / aboveZero(boreMm, 'bore');
}

/**
 * How much is to be filed off the ends of a ring; nothing where the gap is wide enough.
 * @param {number} gapMm
 * @param {number} wantedMm
 */
export function toFile(gapMm, wantedMm) {
  return Math.max(0, notBelowZero(wantedMm, 'wanted') - notBelowZero(gapMm, 'gap'));
}

/**
 * Whether a fit lies in the owner's window: inside, outside, or too close to call.
 * @param {Clearance} found
 * @param {number | null} leastMm
 * @param {number | null} mostMm
 * @param {string} [rule]
 */
export function judge(found, leastMm, mostMm, rule = 'expanded') {
  facts(found, 'clearance');
  if (found.standard_uncertainty_mm === null) throw new NoUncertainty();
  const guard = guardBand(found.standard_uncertainty_mm, rule);
  return judged(found.clearance_mm, leastMm, mostMm, guard);
}

/**
 * @param {number} room
 * @param {[number | null | undefined, number][]} parts
 * @returns {Readonly<Clearance>}
 */
function withBand(room, parts) {
  const known = parts.flatMap(([each, times]) =>
    isGiven(each) ? [notBelowZero(each, 'uncertainty') * times] : [],
  );
  const u = known.length === parts.length ? Math.hypot(...known) : null;
  return Object.freeze({
    clearance_mm: room,
    interference_mm: -room,
    standard_uncertainty_mm: u,
    low_mm: u === null ? null : room - COVERAGE * u,
    high_mm: u === null ? null : room + COVERAGE * u,
  });
}
