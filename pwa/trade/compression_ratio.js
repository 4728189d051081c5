/** Compression ratio from measured volumes: how sure it is, what matters most, what to change. */
import { TradeError } from '../errors.js';
import { isGiven } from './alike.js';
import { aboveZero, facts, finite, LEAST, notBelowZero } from './amounts.js';
import { rounded } from './units.js';

const COVERAGE = 2;
const QUARTER = Math.PI / 4000;

/** A dome larger than all the room above it. */
export class NoClearanceVolume extends TradeError {
  static code = 'ratio-no-clearance-volume';
  static says = 'Nothing is left above the piston: {volume} cm³.';
  static nextStep = 'Measure chamber, dome and deck height again.';
}

/** A ratio of 1 compresses nothing. */
export class RatioTooSmall extends TradeError {
  static code = 'ratio-not-above-one';
  static says = 'A compression ratio must be above 1.';
  static nextStep = 'Type it as 9.5 for 9.5 to 1.';
}

/**
 * What is measured of one cylinder. A piston above the deck is below zero, so is a dome; a gasket
 * bore that is not known is as the bore. The same keys hold standard uncertainties.
 * @typedef {object} Cylinder
 * @property {number} boreMm
 * @property {number} strokeMm
 * @property {number} chamberCm3
 * @property {number} gasketThicknessMm as compressed
 * @property {number} pistonBelowDeckMm
 * @property {number | null} [gasketBoreMm]
 * @property {number | null} [dishCm3]
 * @property {number | null} [ringLandCm3]
 */

/**
 * (swept + clearance volume) / clearance volume.
 * @param {number} sweptCm3
 * @param {number} clearanceVolumeCm3
 */
export function ratio(sweptCm3, clearanceVolumeCm3) {
  finite(clearanceVolumeCm3, 'amount');
  return 1 + aboveZero(sweptCm3, 'swept volume') / room(clearanceVolumeCm3);
}

/**
 * Standard uncertainty of the ratio from those of the two volumes, not correlated.
 * @param {number} sweptCm3
 * @param {number} clearanceVolumeCm3
 * @param {number} clearanceUCm3
 * @param {number} [sweptUCm3]
 */
export function ratioUncertainty(sweptCm3, clearanceVolumeCm3, clearanceUCm3, sweptUCm3 = 0) {
  const volume = room(finite(clearanceVolumeCm3, 'amount'));
  const ofRoom = notBelowZero(clearanceUCm3, 'clearance volume');
  const ofSwept = notBelowZero(sweptUCm3, 'swept volume');
  const slope = aboveZero(sweptCm3, 'swept volume') / volume ** 2;
  return Math.hypot(slope * ofRoom, ofSwept / volume);
}

/**
 * The clearance volume in cm³ that gives a ratio: swept / (ratio − 1).
 * @param {number} sweptCm3
 * @param {number} wanted
 */
export function clearanceFor(sweptCm3, wanted) {
  if (finite(wanted, 'ratio') <= 1) throw new RatioTooSmall();
  return aboveZero(sweptCm3, 'swept volume') / (wanted - 1);
}

/**
 * The ratio of a cylinder with its volumes, its uncertainty and what matters most in it.
 * @param {Cylinder} cylinder
 * @param {Partial<Cylinder>} [unsure] standard uncertainties; what is not known counts as none
 */
export function measured(cylinder, unsure = {}) {
  const given = plain(cylinder);
  const volumes = columns(given);
  const volume = clearance(given, volumes);
  const added = parts(given, unsure, volumes, volume);
  const u = added.length ? Math.hypot(...added.map(([, part]) => part)) : null;
  const found = 1 + volumes.swept / volume;
  const quench = given.pistonBelowDeckMm + given.gasketThicknessMm;
  return Object.freeze({
    ratio: found,
    swept_cm3: volumes.swept,
    gasket_cm3: volumes.gasket,
    deck_cm3: volumes.deck,
    clearance_volume_cm3: volume,
    quench_mm: quench > 0 ? quench : null,
    standard_uncertainty: u,
    low: u === null ? null : found - COVERAGE * u,
    high: u === null ? null : found + COVERAGE * u,
    matters: added
      .map(([name, part]) => /** @type {[string, number]} */ ([name, u ? (part / u) ** 2 : 0]))
      .sort((a, b) => b[1] - a[1]),
  });
}

/**
 * What chamber, gasket, deck height or dish alone gives the ratio wanted.
 * @param {Cylinder} cylinder
 * @param {number} wanted
 */
export function changeFor(cylinder, wanted) {
  const given = plain(cylinder);
  const volumes = columns(given);
  const now = clearance(given, volumes);
  const aim = clearanceFor(volumes.swept, wanted);
  const less = now - aim;
  const cut = less / (QUARTER * given.boreMm ** 2);
  const thick = given.gasketThicknessMm - less / (QUARTER * given.gasketBoreMm ** 2);
  const chamber = given.chamberCm3 - less;
  const below = given.pistonBelowDeckMm - cut;
  return Object.freeze({
    clearance_volume_cm3: aim,
    chamber_cm3: chamber > 0 ? chamber : null,
    gasket_thickness_mm: thick > 0 ? thick : null,
    piston_below_deck_mm: below + given.gasketThicknessMm > 0 ? below : null,
    dish_cm3: given.dishCm3 - less,
    deck_cut_mm: cut,
  });
}

/** @param {number} volume */
function room(volume) {
  if (volume < LEAST) throw new NoClearanceVolume({ volume: rounded(volume, 2) });
  return volume;
}

/** @param {Cylinder} cylinder */
function plain(cylinder) {
  return {
    boreMm: aboveZero(facts(cylinder, 'cylinder').boreMm, 'bore'),
    strokeMm: aboveZero(cylinder.strokeMm, 'stroke'),
    gasketBoreMm: aboveZero(cylinder.gasketBoreMm ?? cylinder.boreMm, 'gasket bore'),
    chamberCm3: notBelowZero(cylinder.chamberCm3, 'chamber'),
    gasketThicknessMm: notBelowZero(cylinder.gasketThicknessMm, 'gasket thickness'),
    ringLandCm3: notBelowZero(cylinder.ringLandCm3 ?? 0, 'ring land'),
    pistonBelowDeckMm: finite(cylinder.pistonBelowDeckMm, 'piston below deck'),
    dishCm3: finite(cylinder.dishCm3 ?? 0, 'dish'),
  };
}

/** @typedef {ReturnType<typeof plain>} Plain */
/** @typedef {ReturnType<typeof columns>} Columns */

/** @param {Plain} given */
function columns(given) {
  const bore = QUARTER * given.boreMm ** 2;
  return {
    swept: bore * given.strokeMm,
    gasket: QUARTER * given.gasketBoreMm ** 2 * given.gasketThicknessMm,
    deck: bore * given.pistonBelowDeckMm,
  };
}

/**
 * @param {Plain} given
 * @param {Columns} volumes
 */
const clearance = (given, { gasket, deck }) =>
  room(given.chamberCm3 + gasket + deck + given.dishCm3 + given.ringLandCm3);

/**
 * What each known uncertainty adds to that of the ratio.
 * @param {Plain} given
 * @param {Partial<Cylinder>} unsure
 * @param {Columns} volumes
 * @param {number} volume
 */
function parts(given, unsure, { swept, gasket, deck }, volume) {
  const area = QUARTER * given.boreMm ** 2;
  const ofRoom = -swept / volume ** 2;
  /** @type {[string, number, number | null | undefined][]} */
  const slopes = [
    ['bore', ((swept / volume + ofRoom * deck) * 2) / given.boreMm, unsure.boreMm],
    ['stroke', area / volume, unsure.strokeMm],
    ['chamber', ofRoom, unsure.chamberCm3],
    ['gasket_thickness', ofRoom * QUARTER * given.gasketBoreMm ** 2, unsure.gasketThicknessMm],
    ['piston_below_deck', ofRoom * area, unsure.pistonBelowDeckMm],
    ['gasket_bore', (ofRoom * gasket * 2) / given.gasketBoreMm, unsure.gasketBoreMm],
    ['dish', ofRoom, unsure.dishCm3],
    ['ring_land', ofRoom, unsure.ringLandCm3],
  ];
  return slopes.flatMap(([name, slope, u]) =>
    isGiven(u)
      ? [
          /** @type {[string, number]} */ ([
            name,
            Math.abs(slope) * notBelowZero(u, name.replaceAll('_', ' ')),
          ]),
        ]
      : [],
  );
}
