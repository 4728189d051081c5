/** Lines of a result: numbers with the digits they are worth, their band, and another unit. */
import { convert, rounded } from '../units.js';

/** @typedef {import('./working.js').Line} Line */

/** The unit that is shown beside another one. @type {Record<string, string>} */
export const OTHER = {
  N·m: 'lbf·ft',
  lbf·ft: 'N·m',
  lbf·in: 'N·m',
  kgf·m: 'N·m',
  N: 'lbf',
  kN: 'lbf',
  lbf: 'kN',
  kgf: 'N',
  mm: 'in',
  in: 'mm',
  µm: 'thou',
  thou: 'µm',
  cm: 'in',
  m: 'ft',
  ft: 'm',
  'cm³': 'in³',
  'in³': 'cm³',
  L: 'in³',
  'mm³': 'in³',
  kPa: 'psi',
  bar: 'psi',
  psi: 'kPa',
  'kgf/cm²': 'psi',
  MPa: 'ksi',
  ksi: 'MPa',
  g: 'oz',
  kg: 'lb',
  oz: 'g',
  lb: 'kg',
  '°C': '°F',
  '°F': '°C',
};

/** A hair of the last float never tips a number over a half. @param {number} value */
const steady = (value) => Number(value.toPrecision(12));

/** The number with so many decimals. @param {number} value @param {number} decimals */
export const shownWith = (value, decimals) => rounded(steady(value), decimals);

/**
 * How many decimals show a number with so many significant figures.
 * @param {number} value
 * @param {number} figures
 */
export function decimalsFor(value, figures) {
  const size = Math.abs(steady(value));
  if (size === 0) return figures - 1;
  let whole = 1;
  for (let power = 10; size >= power; power *= 10) whole += 1;
  for (let power = 1; size < power; power /= 10) whole -= 1;
  return Math.max(0, figures - whole);
}

/**
 * A line with nothing but a name and what is given.
 * @param {string} name
 * @param {Partial<Line>} facts
 * @returns {Line}
 */
export function line(name, facts) {
  return Object.freeze({
    name,
    value: 0,
    unit: null,
    low: null,
    high: null,
    shown: '',
    between: null,
    other: null,
    mark: null,
    ...facts,
  });
}

/**
 * A number of a unit, with its band from least to most.
 * @param {string} name
 * @param {number} value
 * @param {string | null} [unit]
 * @param {{figures?: number, decimals?: number, band?: [number, number] | null, mark?: string | null}} [how]
 */
export function amount(name, value, unit = null, how = {}) {
  const { figures = 3, band = null, mark = null } = how;
  const places = how.decimals ?? decimalsFor(value, figures);
  return line(name, {
    value,
    unit,
    low: band ? band[0] : null,
    high: band ? band[1] : null,
    shown: shownWith(value, places),
    between: band && [shownWith(band[0], places), shownWith(band[1], places)],
    other: otherOf(value, unit, figures),
    mark,
  });
}

/**
 * An amount inside a sentence.
 * @param {number} value
 * @param {string} unit
 * @param {number} [figures]
 */
export const text = (value, unit, figures = 3) =>
  `${shownWith(value, decimalsFor(value, figures))} ${unit}`;

/**
 * A share, told in per cent.
 * @param {string} name
 * @param {number} value
 * @param {{decimals?: number, band?: [number, number] | null, mark?: string | null}} [how]
 */
export function share(name, value, { decimals = 0, band = null, mark = null } = {}) {
  /** @type {[number, number] | null} */
  const hundred = band && [band[0] * 100, band[1] * 100];
  return amount(name, value * 100, '%', { decimals, band: hundred, mark });
}

/**
 * From so much to so much, with no value that stands out; its value is the lower end.
 * @param {string} name
 * @param {[number, number]} ends
 * @param {string | null} unit
 * @param {number} [figures]
 * @param {string | null} [mark]
 */
export function span(name, ends, unit, figures = 3, mark = null) {
  const [low, high] = ends;
  const places = decimalsFor(high, figures);
  const shown = ends.map((end) => shownWith(end, places)).join(' to ');
  return line(name, { value: low, unit, low, high, shown, mark });
}

/**
 * What is usual, by a rule of thumb; both ends of its band are known.
 * @param {{low: number | null, high: number | null}} band in millimetres
 * @param {string} unit
 */
export function usual({ low, high }, unit) {
  const [least, most] = [low, high].map((end) => convert(end ?? 0, 'mm', unit));
  return span('usual', [least ?? 0, most ?? 0], unit, 2, 'rule-of-thumb');
}

/** A word, such as a verdict. @param {string} name @param {string} value @param {string | null} [mark] */
export const word = (name, value, mark = null) =>
  line(name, { value, shown: value.replaceAll('-', ' '), mark });

/**
 * A whole number.
 * @param {string} name
 * @param {number} value
 * @param {[number, number] | null} [band]
 */
export const count = (name, value, band = null) =>
  line(name, {
    value,
    low: band ? band[0] : null,
    high: band ? band[1] : null,
    shown: String(value),
    between: band && [String(band[0]), String(band[1])],
  });

/** Numbers that name pieces of a list, counted from 1. @param {string} name @param {number[]} value */
export const numbers = (name, value) => line(name, { value, shown: value.join(', ') });

/** @param {number} value @param {string | null} unit @param {number} figures */
function otherOf(value, unit, figures) {
  const to = unit && OTHER[unit];
  if (!unit || !to) return null;
  const other = convert(value, unit, to);
  return `${shownWith(other, decimalsFor(other, figures))} ${to}`;
}
