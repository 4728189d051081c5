/**
 * Closed lists of unit words, and numbers as people type them.
 * Factors are exact: every unit here is a finite decimal of the SI unit of its quantity.
 */
import {
  NumberMissing,
  NumberNegative,
  NumberTooLong,
  NumberTwoMeanings,
  NumberUnclear,
  UnitsDiffer,
  UnitUnknown,
} from './unit_errors.js';

/** @typedef {{value: string, unit: string}} Measured a number as it was typed, with its unit word */
/** @typedef {{up: bigint, down: bigint}} Ratio */

/** Quantity → word on the screen → its size in SI units, as exact decimal text. */
export const UNIT_WORDS = Object.freeze({
  torque: {
    N·m: '1',
    lbf·ft: '1.3558179483314004',
    lbf·in: '0.1129848290276167',
    kgf·m: '9.80665',
  },
  angle: { '°': '1' },
  force: { N: '1', lbf: '4.4482216152605' },
  length: { mm: '0.001', µm: '0.000001', in: '0.0254', thou: '0.0000254' },
  pressure: { kPa: '1000', bar: '100000', 'kgf/cm²': '98066.5' },
  volume: { 'cm³': '0.000001', 'in³': '0.000016387064', L: '0.001' },
  mass: { g: '0.001', kg: '1', oz: '0.028349523125', lb: '0.45359237' },
});

/** The units a torque is shown in. */
export const TORQUE_WORDS = Object.freeze(Object.keys(UNIT_WORDS.torque));

const LEAST_DECIMALS = /** @type {Record<string, number>} */ ({ torque: 1 });
const MOST_DIGITS = 15;
const PLAIN = /^[-−]?[0-9]*[.,]?[0-9]*$/;
const KEPT = /^-?[0-9]*\.?[0-9]*$/;
const THREES = /^[1-9][0-9]{0,2}[.,][0-9]{3}$/;
const GROUPED = /^[1-9][0-9]{0,2}([.,])[0-9]{3}((?!\1)[.,][0-9]+|(\1[0-9]{3})+)$/;
const BLANKS = /^[ \t\r\n\u00a0\u202f]+|[ \t\r\n\u00a0\u202f]+$/g;

/** Word → its quantity and its size as a ratio of whole numbers. */
const SIZES = new Map(
  Object.entries(UNIT_WORDS).flatMap(([quantity, words]) =>
    Object.entries(words).map(([word, size]) => [word, { quantity, ratio: ratioOf(size) }]),
  ),
);
// Pounds per square inch is the one unit without a finite decimal: lbf over 0.0254² m².
SIZES.set('psi', {
  quantity: 'pressure',
  ratio: { up: 44482216152605n, down: 64516n * 100000n },
});

/**
 * @param {string} text plain decimal
 * @returns {Ratio}
 */
function ratioOf(text) {
  const [whole = '', part = ''] = text.replace('-', '').split('.');
  const up = BigInt(whole + part || '0');
  return { up: text.startsWith('-') ? -up : up, down: 10n ** BigInt(part.length) };
}

/**
 * A measured value; if it is given back, number and unit can be read.
 * @param {string} value
 * @param {string} unit
 * @returns {Measured}
 */
export function measured(value, unit) {
  parseNumber(value, { oneDecimalKey: true, signed: true });
  if (!KEPT.test(value)) throw new NumberUnclear({ typed: value });
  quantityOf(unit);
  return Object.freeze({ value, unit });
}

/**
 * What a unit word measures.
 * @param {string} unit
 */
export function quantityOf(unit) {
  const found = SIZES.get(unit);
  if (!found) throw new UnitUnknown({ unit });
  return found.quantity;
}

/**
 * How many of the second unit are one of the first, exactly.
 * @param {string} unit
 * @param {string} to
 * @returns {Ratio}
 */
function factor(unit, to) {
  if (quantityOf(unit) !== quantityOf(to)) throw new UnitsDiffer({ unit, other: to });
  const from = /** @type {{ratio: Ratio}} */ (SIZES.get(unit)).ratio;
  const into = /** @type {{ratio: Ratio}} */ (SIZES.get(to)).ratio;
  return { up: from.up * into.down, down: from.down * into.up };
}

/**
 * The same amount in another unit of the same quantity.
 * @param {number} value
 * @param {string} unit
 * @param {string} to
 */
export function convert(value, unit, to) {
  const { up, down } = factor(unit, to);
  // Both parts are shortened alike, so that neither leaves the range of a float's 53 bits by much.
  return unit === to ? value : (value * Number(up)) / Number(down);
}

/**
 * -1, 0 or 1 as the first amount is less than, as much as, or more than the second; exact.
 * @param {Measured} one
 * @param {Measured} other
 */
export function compare(one, other) {
  const { up, down } = factor(one.unit, other.unit);
  const left = ratioOf(one.value);
  const right = ratioOf(other.value);
  const difference = left.up * up * right.down - right.up * left.down * down;
  if (difference === 0n) return 0;
  return difference > 0n ? 1 : -1;
}

/**
 * The plain decimal text of a typed number; "2,5" gives "2.5", "61.0" keeps its nought.
 * Digits in threes are asked about, never guessed, unless the keypad has no other meaning for them.
 * @param {string} typed
 * @param {{oneDecimalKey?: boolean, signed?: boolean}} [how]
 */
export function parseNumber(typed, { oneDecimalKey = false, signed = false } = {}) {
  const text = typeof typed === 'string' ? typed.replace(BLANKS, '') : '';
  if (!text) throw new NumberMissing();
  refuseTwoMeanings(text, oneDecimalKey);
  if (!PLAIN.test(text) || !/[0-9]/.test(text)) throw new NumberUnclear({ typed: text });
  const negative = /^[-−]/.test(text);
  if (negative && !signed) throw new NumberNegative({ typed: text });
  const plain = plainOf(text.replace(/^[-−]/, ''));
  return negative && /[1-9]/.test(plain) ? `-${plain}` : plain;
}

/** @param {string} typed */
function plainOf(typed) {
  const [whole = '', part = ''] = typed.replace(',', '.').split('.');
  if (whole.length + part.length > MOST_DIGITS) throw new NumberTooLong({ typed });
  return (whole.replace(/^0+/, '') || '0') + (part ? `.${part}` : '');
}

/**
 * @param {string} text
 * @param {boolean} oneDecimalKey
 */
function refuseTwoMeanings(text, oneDecimalKey) {
  const three = THREES.test(text);
  if ((three && oneDecimalKey) || !(three || GROUPED.test(text))) return;
  const [first = '', ...rest] = text.split(/[.,]/);
  const last = rest[rest.length - 1];
  const whole = first + rest.slice(0, -1).join('');
  const mixed = text.includes('.') && text.includes(',');
  const meanings = mixed
    ? [`${whole}.${last}`, `${first}.${rest.join('')}`]
    : [`${whole}.${last}`, whole + last];
  throw new NumberTwoMeanings({ typed: text, one: meanings[0], other: meanings[1] });
}

/**
 * The amount in another unit, with the digits its resolution is worth, rounded half up.
 * One step of the last digit shown is no more than one step of the last digit typed; torque has
 * one decimal at least. In its own unit a number stays as it was typed.
 * @param {Measured} amount
 * @param {string} to
 */
export function shown(amount, to) {
  if (amount.unit === to) return amount.value;
  const { up, down } = factor(amount.unit, to);
  const typed = ratioOf(amount.value);
  let decimals = LEAST_DECIMALS[quantityOf(to)] ?? 0;
  while (down * typed.down > up * 10n ** BigInt(decimals)) decimals += 1;
  const below = down * typed.down;
  const above = (typed.up < 0n ? -typed.up : typed.up) * up * 10n ** BigInt(decimals);
  const steps = (2n * above + below) / (2n * below);
  const digits = String(steps).padStart(decimals + 1, '0');
  const cut = digits.length - decimals;
  const text = decimals ? `${digits.slice(0, cut)}.${digits.slice(cut)}` : digits;
  return typed.up < 0n && steps > 0n ? `-${text}` : text;
}
