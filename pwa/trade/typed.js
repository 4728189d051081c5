/** An amount as people type it, number and unit in one text, read as the quantity that is wanted. */
import { ratioOf, roundedRatio } from './exact.js';
import { parseNumber } from './number.js';
import {
  NumberMissing,
  NumberNegative,
  NumberTwoMeanings,
  NumberUnclear,
  UnitMissing,
} from './unit_errors.js';
import { SAME, translated, unitWord, wordsOf } from './unit_spelled.js';
import { convert, measured, UNIT_WORDS } from './units.js';

/** @typedef {import('./units.js').Measured} Measured */
/** @typedef {{text: string, value: string, unit: string, number: string, measured: Measured}} Typed */
/** @typedef {{unit?: string | null, decimalSign?: string | null}} How */

/** Quantities that may lie below zero: a dome is a negative dish, a cam may stand early. */
const SIGNED = 'temperature temperature-difference length volume angle expansion'.split(' ');
const MOST_DIGITS = 15;
const INCHES_A_FOOT = 12n;
/** Words of people who write decimals behind a point. */
const POINT_WORDS =
  'in thou ft in² in³ in³/min lbf lbf·ft lbf·in lbf/in psi ksi oz lb °F Δ°F ft/min'.split(' ');
/** The number style of a keypad: point and comma both begin the decimals. */
export const EITHER = 'either';
const BLANKS = /^[ \t\r\n\u00a0\u202f]+|[ \t\r\n\u00a0\u202f]+$/g;
const FRACTION = '(?:[0-9]+(?:\\s+|\\s*-\\s*))?[0-9]+\\s*/\\s*[0-9]+(?![0-9])';
const NUMBER = new RegExp(
  `^((?:[-−+]\\s*)?(?:${FRACTION}|[0-9.,]+(?:\\s[0-9]{3}(?![0-9/]))*))\\s*(.*)$`,
  's',
);
const FEET_INCHES = new RegExp(
  `^([0-9]+)\\s*(?:'|ft|feet|foot)\\.?\\s*-?\\s*(${FRACTION}|[0-9]*[.,]?[0-9]+)\\s*(?:"|''|in|inch|inches)?\\.?$`,
);

/** @type {Record<string, string>} */
const VULGAR = {
  '½': ' 1/2 ',
  '¼': ' 1/4 ',
  '¾': ' 3/4 ',
  '⅛': ' 1/8 ',
  '⅜': ' 3/8 ',
  '⅝': ' 5/8 ',
  '⅞': ' 7/8 ',
  '\u2044': '/',
};

/**
 * What a person typed, as the quantity that is wanted: feet and inches (2'6), fractions (6 1/2 in)
 * and both decimal signs are read. The unit chosen beside the field counts where none was typed.
 * @param {string} typed
 * @param {string} wanted
 * @param {How} [how]
 * @returns {Typed}
 */
export function read(typed, wanted, { unit = null, decimalSign = null } = {}) {
  wordsOf(wanted);
  const text = typeof typed === 'string' ? typed.replace(BLANKS, '') : '';
  if (!text) throw new NumberMissing();
  const together = wanted === 'length' ? feetAndInches(text, decimalSign) : null;
  if (together) return made(text, together, 'in', together);
  return numberAndUnit(text, wanted, unit, decimalSign);
}

/** @type {(text: string, value: string, unit: string, number: string) => Typed} */
function made(text, value, unit, number) {
  return Object.freeze({ text, value, unit, number, measured: measured(number, unit) });
}

/** @type {(text: string, wanted: string, unit: string | null, decimalSign: string | null) => Typed} */
function numberAndUnit(text, wanted, unit, decimalSign) {
  const found = NUMBER.exec(translated(text, VULGAR).replace(BLANKS, ''));
  if (!found) throw new NumberUnclear({ typed: text });
  const value = (found[1] ?? '').replace(BLANKS, '');
  const behind = (found[2] ?? '').replace(BLANKS, '');
  const units = Object.keys(/** @type {Record<string, object>} */ (UNIT_WORDS)[wanted] ?? {});
  if (!behind && unit === null) throw new UnitMissing({ typed: text, words: units.join(', ') });
  const word = unitWord(behind || String(unit), wanted);
  const number = withUnit(text, word, () => plain(value, style(value, word, decimalSign)));
  if (number.startsWith('-') && !SIGNED.includes(wanted)) throw new NumberNegative({ typed: text });
  convert(Number(number), word, word);
  return made(text, value, word, number);
}

/**
 * Who measures in inches and pounds writes decimals behind a point: 1.250 in is no thousand.
 * @type {(value: string, word: string, decimalSign: string | null) => string | null}
 */
function style(value, word, decimalSign) {
  const point = decimalSign === null && POINT_WORDS.includes(word) && !value.includes(',');
  return point ? '.' : decimalSign;
}

/**
 * The two meanings of a number are named with their unit.
 * @param {string} text
 * @param {string} word
 * @param {() => string} reading
 */
function withUnit(text, word, reading) {
  try {
    return reading();
  } catch (two) {
    if (!(two instanceof NumberTwoMeanings)) throw two;
    const { one, other } = two.facts;
    throw new NumberTwoMeanings({ typed: text, one: `${one} ${word}`, other: `${other} ${word}` });
  }
}

/**
 * @param {string} text
 * @param {string | null} decimalSign
 */
function feetAndInches(text, decimalSign) {
  const found = FEET_INCHES.exec(translated(translated(text.toLowerCase(), SAME), VULGAR));
  if (!found) return null;
  const [, feet = '', typed = ''] = found;
  const { up, down } = ratioOf(plain(typed, style(typed, 'in', decimalSign)));
  if (up >= INCHES_A_FOOT * down) throw new NumberUnclear({ typed: text });
  return inDigits(BigInt(feet) * INCHES_A_FOOT * down + up, down, text);
}

/**
 * The plain decimal of a number as typed; in the style "either" both signs begin the decimals.
 * @param {string} value
 * @param {string | null} decimalSign
 */
function plain(value, decimalSign) {
  const sign = /^[-−]/.test(value) ? '-' : '';
  const digits = value.replace(/^[-−+ \u00a0\u202f]+/, '');
  if (digits.includes('/')) return fraction(digits, value, sign);
  if (decimalSign === null) return parseNumber(sign + digits, { signed: true });
  const one = decimalSign === ',' ? ',' : '\\.';
  const other = decimalSign === ',' ? '\\.' : ',';
  const threes = new RegExp(`^[1-9][0-9]{0,2}(?:${other}[0-9]{3})+(?:${one}[0-9]+)?$`);
  const grouped = decimalSign !== EITHER && threes.test(digits);
  const whole = grouped ? digits.replaceAll(other.at(-1) ?? '', '') : digits;
  return parseNumber(sign + whole, { signed: true, oneDecimalKey: true });
}

/**
 * @param {string} digits
 * @param {string} typed
 * @param {string} sign
 */
function fraction(digits, typed, sign) {
  const numbers = (digits.match(/[0-9]+/g) ?? []).map(BigInt);
  const [whole, above, below] = numbers.length === 2 ? [0n, ...numbers] : numbers;
  if (!below) throw new NumberUnclear({ typed: digits });
  return inDigits((whole ?? 0n) * below + (above ?? 0n), below, typed, sign);
}

/**
 * Every digit of a fraction that has so few; a third of an inch is on no scale.
 * @param {bigint} up
 * @param {bigint} down
 * @param {string} typed
 * @param {string} [sign]
 */
function inDigits(up, down, typed, sign = '') {
  for (let decimals = 0; decimals < MOST_DIGITS; decimals += 1) {
    const above = up * 10n ** BigInt(decimals);
    if (above % down !== 0n) continue;
    return (up ? sign : '') + roundedRatio({ up, down }, decimals);
  }
  throw new NumberUnclear({ typed });
}
