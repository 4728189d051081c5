/** Rules of thumb for fits: whether a reading looks like a slip, never whether it may be used. */
import { TradeError } from '../errors.js';
import { aboveZero, finite } from './amounts.js';

export const MARK = 'rule of thumb';
const HAIR = 1e-9;

/** @typedef {{low: number | null, high: number | null, word: string, per: string | null}} Rule */

/** No rule of thumb by this name. */
export class FitUnknown extends TradeError {
  static code = 'thumb-unknown';
  static says = 'There is no rule of thumb for {fit}.';
  static nextStep = 'Take the window from the manual.';
}

/** A band that goes by the size, without one. */
export class SizeMissing extends TradeError {
  static code = 'thumb-size';
  static says = 'The rule of thumb for {fit} goes by the diameter.';
  static nextStep = 'Give the {per} too.';
}

/**
 * @param {number | null} low
 * @param {number | null} high
 * @param {string | null} [per]
 * @param {string} [word]
 * @returns {Readonly<Rule>}
 */
function rule(low, high, per = null, word = 'mm') {
  return Object.freeze({ low, high, word, per });
}

/** Common practice, no source. The service manual of the engine in hand decides. */
export const BANDS = Object.freeze({
  'oil-clearance': rule(0.0007, 0.0015, 'journal'),
  'crankshaft-end-play': rule(0.05, 0.3),
  'rod-side-clearance': rule(0.1, 0.5),
  'piston-to-wall-cast': rule(0.02, 0.06),
  'piston-to-wall-forged': rule(0.05, 0.15),
  'ring-gap': rule(0.003, 0.006, 'bore'),
  'ring-side-clearance': rule(0.03, 0.1),
  pin: rule(0.005, 0.025),
  'camshaft-end-play': rule(0.03, 0.25),
  'lifter-in-bore': rule(0.02, 0.07),
  'stem-in-guide': rule(0.02, 0.08),
  'coil-room': rule(1, 2.5),
  'valve-lash': rule(0.1, 0.5),
  'lifter-preload': rule(0.25, 1, null, 'turn'),
  'valve-to-piston-intake': rule(2, null),
  'valve-to-piston-exhaust': rule(2.5, null),
  quench: rule(0.8, 1.3),
  'flatness-in-150': rule(null, 0.05),
  'flatness-overall': rule(null, 0.1),
});

/**
 * Whether a reading lies where such a fit usually does; both ends belong to the band.
 * @param {string} fit
 * @param {number} reading in mm, the lifter's preload in turns
 * @param {number | null} [sizeMm] journal or bore, for the bands that go by it
 */
export function plausible(fit, reading, sizeMm = null) {
  if (!Object.hasOwn(BANDS, fit)) throw new FitUnknown({ fit });
  const known = BANDS[/** @type {keyof typeof BANDS} */ (fit)];
  const times = known.per ? diameter(fit, known.per, sizeMm) : 1;
  finite(reading, 'reading');
  const low = known.low === null ? null : known.low * times;
  const high = known.high === null ? null : known.high * times;
  const inside =
    (low === null || reading >= low * (1 - HAIR)) &&
    (high === null || reading <= high * (1 + HAIR));
  return Object.freeze({ low, high, plausible: inside, mark: MARK });
}

/**
 * @param {string} fit
 * @param {string} per
 * @param {number | null} sizeMm
 */
function diameter(fit, per, sizeMm) {
  if (sizeMm === null) throw new SizeMissing({ fit, per });
  return aboveZero(sizeMm, per);
}
