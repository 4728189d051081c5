/**
 * Label codes: seven signs and a check sign that catches every wrong sign and every swap.
 * A sign's value is its place in the alphabet, taken as an element of the field of 32 with
 * x⁵ + x² + 1. The sum of sign i times αⁱ, i = 0…7 from the left, is zero in a good code.
 */
import { TradeError } from '../errors.js';

export const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 8;
const LOOK_ALIKES = /** @type {Record<string, string>} */ ({ I: '1', L: '1', O: '0' });
const PATH = /\/[lL]\/([0-9A-Za-z]{8})(?![0-9A-Za-z])/g;
const LEFT_OUT = /[ \t\r\n\u00a0\u202f\-–]/g;
const OVERFLOW = 0b100000;
const FIELD = 0b100101;

/** More or fewer than eight signs. */
export class LabelLength extends TradeError {
  static code = 'label-length';
  static says = 'A code has eight signs; {count} were typed.';
  static nextStep = 'Type the two groups of four below the symbol.';
}

/** A sign that stands in no code. */
export class LabelSign extends TradeError {
  static code = 'label-sign';
  static says = '{sign}, sign {place}, stands in no code.';
  static nextStep = 'Look at it again: U is V, and a dash is left out.';
}

/** The eight signs do not belong together. */
export class LabelCheck extends TradeError {
  static code = 'label-check';
  static says = 'The last sign does not fit: {code} ends in {last}.';
  static nextStep = 'Look at 0 and D, 8 and B again.';
}

/** A text that is no label of ours. */
export class LabelNone extends TradeError {
  static code = 'label-none';
  static says = 'This is not one of our labels.';
  static nextStep = 'Scan the square on one of our labels, or type its eight signs.';
}

/**
 * The value of a sign, 0 to 31; small letters count, and I, L, O are read as 1, 1, 0.
 * @param {string} sign
 */
export function value(sign) {
  return valueAt(sign, 1);
}

/**
 * @param {string} sign
 * @param {number} place
 */
function valueAt(sign, place) {
  const upper = typeof sign === 'string' && /^[!-~]$/.test(sign) ? sign.toUpperCase() : '';
  const found = upper ? ALPHABET.indexOf(LOOK_ALIKES[upper] ?? upper) : -1;
  if (found < 0) throw new LabelSign({ sign, place });
  return found;
}

/** What is no text has no signs. @param {unknown} typed */
const textOf = (typed) => (typeof typed === 'string' ? typed : '');

/** @param {number[]} values */
function remainder(values) {
  let total = 0;
  for (const number of [...values].reverse()) {
    total <<= 1;
    if (total & OVERFLOW) total ^= FIELD;
    total ^= number;
  }
  return total;
}

/** @param {string} text */
function values(text) {
  return [...text].map((sign, i) => valueAt(sign, i + 1));
}

/** @param {number} count */
function sevenSigns(count) {
  if (count !== LENGTH - 1) throw new LabelLength({ count });
}

/**
 * The sign that makes seven signs a code: "7K3MQ2R" gives "J".
 * @param {string} seven
 */
export function check(seven) {
  const signs = textOf(seven);
  sevenSigns([...signs].length);
  const known = values(signs);
  return /** @type {string} */ ([...ALPHABET].find((_, last) => remainder([...known, last]) === 0));
}

/**
 * The code a person typed: capitals, look-alikes read, spaces and dashes left out.
 * @param {string} typed
 */
export function parse(typed) {
  const known = values(textOf(typed).replace(LEFT_OUT, ''));
  if (known.length !== LENGTH) throw new LabelLength({ count: known.length });
  const code = known.map((number) => ALPHABET[number]).join('');
  if (remainder(known)) throw new LabelCheck({ code: grouped(code), last: code.slice(-1) });
  return code;
}

/**
 * The code in what a scanner read: the last /L/ and eight signs, or the eight signs alone.
 * The computer named before it is ignored, so labels outlive a change of computer.
 * @param {string} text
 */
export function codeFromText(text) {
  const found = [...textOf(text).matchAll(PATH)].at(-1)?.[1];
  if (found) return parse(found);
  const bare = textOf(text).replace(LEFT_OUT, '');
  if (/^[0-9A-Za-z]{8}$/.test(bare)) return parse(bare);
  throw new LabelNone();
}

/**
 * The code as people read it, in two groups of four: "7K3M Q2RJ".
 * @param {string} code
 */
export function grouped(code) {
  const signs = textOf(code);
  return `${signs.slice(0, 4)} ${signs.slice(4)}`;
}
