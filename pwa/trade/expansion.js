/** Lengths at 20 °C, the temperature every size is stated at, and at any other. */
import { TradeError } from '../errors.js';
import { aboveZero, finite, notBelowZero } from './amounts.js';
import { convert } from './units.js';

export const REFERENCE_C = 20;
/** Material → µm per metre and kelvin; typical figures from memory, no authority. */
export const TYPICAL = Object.freeze({
  steel: 11.5,
  'stainless steel': 16,
  'grey iron': 10.5,
  aluminium: 23,
  'piston alloy': 20,
  bronze: 18,
  brass: 19,
  magnesium: 26,
  titanium: 8.6,
  'ceramic gauge': 9.3,
});

/** No figure for it in the list. */
export class MaterialUnknown extends TradeError {
  static code = 'expansion-material';
  static says = 'There is no typical expansion for {material} here.';
  static nextStep = 'Choose another material, or type its expansion.';
}

/** Outside what the straight line of expansion holds for. */
export class TemperatureBeyond extends TradeError {
  static code = 'expansion-temperature';
  static says = '{temperature} °C is beyond what this reckons with, -100 to 400 °C.';
  static nextStep = 'Look at the thermometer and its unit.';
}

/** More than any material of an engine. */
export class ExpansionBeyond extends TradeError {
  static code = 'expansion-beyond';
  static says = 'No material of an engine expands by {expansion} µm in each metre and kelvin.';
  static nextStep = 'Look at the unit: steel has 11.5.';
}

/**
 * Typical expansion of a material, per kelvin; a table value from memory, no authority.
 * @param {string} material
 */
export function typical(material) {
  if (!Object.hasOwn(TYPICAL, material)) throw new MaterialUnknown({ material });
  return TYPICAL[/** @type {keyof typeof TYPICAL} */ (material)] / 1e6;
}

/**
 * The length a thing has at 20 °C, from the length it has at a temperature.
 * @param {number} lengthMm
 * @param {number} temperatureC
 * @param {number} expansionPerK
 */
export function lengthAt20(lengthMm, temperatureC, expansionPerK) {
  return aboveZero(lengthMm, 'length') / growth(temperatureC, expansionPerK);
}

/**
 * The length a thing has at a temperature, from its length at 20 °C.
 * @param {number} length20Mm
 * @param {number} temperatureC
 * @param {number} expansionPerK
 */
export function lengthAt(length20Mm, temperatureC, expansionPerK) {
  return aboveZero(length20Mm, 'length') * growth(temperatureC, expansionPerK);
}

/**
 * The length at 20 °C from a reading of an instrument that was not at 20 °C either.
 * @param {number} readMm
 * @param {number} partTemperatureC
 * @param {number} partExpansionPerK
 * @param {number} instrumentTemperatureC
 * @param {number} instrumentExpansionPerK
 */
export function corrected(
  readMm,
  partTemperatureC,
  partExpansionPerK,
  instrumentTemperatureC,
  instrumentExpansionPerK,
) {
  aboveZero(readMm, 'reading');
  const scale = growth(instrumentTemperatureC, instrumentExpansionPerK);
  return readMm * (scale / growth(partTemperatureC, partExpansionPerK));
}

/**
 * Standard uncertainty of a length when the temperature itself is known only so well, in mm.
 * @param {number} lengthMm
 * @param {number} expansionPerK
 * @param {number} standardUncertaintyK
 */
export function fromTemperature(lengthMm, expansionPerK, standardUncertaintyK) {
  aboveZero(lengthMm, 'length');
  return (
    lengthMm * Math.abs(alpha(expansionPerK)) * notBelowZero(standardUncertaintyK, 'uncertainty')
  );
}

/**
 * A clearance at other temperatures than the one bore and inner part were measured at, in mm.
 * @param {number} clearanceMm
 * @param {number} boreMm
 * @param {number} boreExpansionPerK
 * @param {number} innerExpansionPerK
 * @param {{measuredAtC: number, boreAtC?: number | null, innerAtC?: number | null}} at
 */
export function clearanceAt(clearanceMm, boreMm, boreExpansionPerK, innerExpansionPerK, at) {
  aboveZero(boreMm, 'bore');
  const inner = aboveZero(boreMm - finite(clearanceMm, 'clearance'), 'inner part');
  const outerGrowth = growth(at.boreAtC ?? REFERENCE_C, boreExpansionPerK);
  const innerGrowth = growth(at.innerAtC ?? REFERENCE_C, innerExpansionPerK);
  return (
    (boreMm * outerGrowth) / growth(at.measuredAtC, boreExpansionPerK) -
    (inner * innerGrowth) / growth(at.measuredAtC, innerExpansionPerK)
  );
}

/**
 * @param {number} temperatureC
 * @param {number} expansionPerK
 */
function growth(temperatureC, expansionPerK) {
  convert(temperatureC, '°C', '°C');
  if (!(temperatureC >= -100 && temperatureC <= 400)) {
    throw new TemperatureBeyond({ temperature: temperatureC });
  }
  return 1 + alpha(expansionPerK) * (temperatureC - REFERENCE_C);
}

/** @param {number} expansionPerK */
function alpha(expansionPerK) {
  if (!(finite(expansionPerK, 'expansion') >= -1e-5 && expansionPerK <= 2e-4)) {
    throw new ExpansionBeyond({ expansion: expansionPerK * 1e6 });
  }
  return expansionPerK;
}
