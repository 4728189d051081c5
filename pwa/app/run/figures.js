/** How targets and readings are written on the screen: in the wrench's unit, then in the person's. */

import { shown } from '../../trade/units.js';
import { t, unitWords } from '../texts/index.js';
import { capital } from '../words.js';

export { capital };

/**
 * @typedef {{value: string, unit: string}} Measured
 */

const separator = new Intl.NumberFormat(navigator.languages[0]).formatToParts(1.5)[1]?.value ?? '.';

/** The device's decimal sign. */
export const decimalSign = separator === ',' ? ',' : '.';

/** @param {string} value a plain decimal, as kept @returns {string} as this device writes it */
export const local = (value) => value.replace('.', decimalSign);

/** @param {string} unit */
const isTurn = (unit) => unit === '°';

/**
 * The value in a unit, as text. As typed when the unit is its own.
 * @param {Measured} measured
 * @param {string | null | undefined} unit
 * @returns {Measured}
 */
export function inUnit(measured, unit) {
  if (!unit || unit === measured.unit || isTurn(measured.unit) || isTurn(unit)) return measured;
  return { value: shown(measured, unit), unit };
}

/** @param {Measured} measured "45 lbf·ft", "90°" */
export function written(measured) {
  const gap = isTurn(measured.unit) ? '' : ' ';
  return `${local(measured.value)}${gap}${measured.unit}`;
}

/** @param {Measured} measured for the ear */
export const spokenValue = (measured) => `${local(measured.value)} ${unitWords(measured.unit)}`;

/**
 * The large figure and the smaller one beneath it.
 * @param {Measured} target
 * @param {string | null | undefined} wrenchUnit
 * @param {string} ownUnit
 * @returns {{figure: Measured, other: Measured | null}}
 */
export function figures(target, wrenchUnit, ownUnit) {
  const figure = inUnit(target, wrenchUnit);
  if (isTurn(target.unit)) return { figure, other: null };
  const units = [ownUnit, target.unit, 'N·m', 'lbf·ft'];
  const unit = units.find((u) => u && u !== figure.unit);
  return { figure, other: unit ? inUnit(target, unit) : null };
}

/** @param {string} text its sort for the length rule of the figure */
export function lengthOf(text) {
  if (text.length <= 3) return '3';
  return text.length === 4 ? '4' : text.length === 5 ? '5' : '6';
}

/** @param {{count: number, noun: string | null, plural: string | null}} joint "14 head bolts", "1 head bolt" */
export const countSays = ({ count, noun, plural }) =>
  t('noun.count', { n: count, noun: noun ?? t('noun.one'), plural: plural ?? t('noun.more') });

/** @param {{noun: string | null}} joint @param {number} number "bolt 9" */
export const named = (joint, number) => `${joint.noun ?? t('noun.one')} ${number}`;

/** @param {{noun: string | null}} joint @param {number} number "Bolt 9" */
export const namedFirst = (joint, number) => capital(named(joint, number));

/** @param {number[]} numbers "6, 9" */
export const listed = (numbers) => numbers.join(', ');

/**
 * How a pass is counted: a first pass by hand stands before the counting, as in manuals.
 * @param {any} view
 * @param {any} pass
 * @returns {number}
 */
export function passNumber(view, pass) {
  const before = view.passes[0]?.how === 'hand' ? 0 : 1;
  return pass.number + before;
}

/** @param {any} view */
export const passTotal = (view) =>
  Math.max(0, ...view.passes.map((/** @type {any} */ pass) => passNumber(view, pass)));

/** @param {any} view @param {string | null} id "Pass 2 of 3", or how it goes where it is not counted */
export function passSays(view, id) {
  const pass = view.passes.find((/** @type {any} */ p) => p.id === id);
  if (!pass) return '';
  const n = passNumber(view, pass);
  return n === 0 ? t(`run.pass.${pass.how}`) : t('run.pass', { n, of: passTotal(view) });
}
