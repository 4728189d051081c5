/**
 * Money in minor units of its currency: read, summed and shared without a lost cent.
 * No floating number is taken or given; minor units are whole BigInts.
 */
import { many } from './alike.js';
import { count } from './amounts.js';
import { DIGITS } from './money_codes.js';
import {
  CurrenciesMixed,
  CurrencyUnknown,
  LineBelowZero,
  NoLines,
  NoMoney,
  NothingToSum,
  TooManyDecimals,
} from './money_errors.js';
import { parseNumber } from './number.js';

/** @typedef {{readonly currency: string, readonly minor: bigint}} Money */

/**
 * So many minor units of a currency; below zero is money given back.
 * @param {string} currency
 * @param {bigint} minor
 * @returns {Money}
 */
export function money(currency, minor) {
  minorDigits(currency);
  if (typeof minor !== 'bigint') throw new NoMoney({ what: 'amount' });
  return Object.freeze({ currency, minor });
}

/**
 * How many decimals amounts of a currency have.
 * @param {string} currency
 * @returns {number}
 */
export function minorDigits(currency) {
  const digits = DIGITS.get(currency);
  if (digits === undefined) throw new CurrencyUnknown({ currency });
  return digits;
}

/**
 * The exact amount that was typed; point or comma is its one decimal sign.
 * @param {string} typed
 * @param {string} currency
 */
export function parse(typed, currency) {
  const digits = minorDigits(currency);
  const plain = parseNumber(typed, { oneDecimalKey: true, signed: true });
  const [whole = '', part = ''] = plain.split('.');
  if (part.length > digits) {
    throw new TooManyDecimals({ typed: plain, decimals: part.length, currency, digits });
  }
  return money(currency, BigInt(whole + part.padEnd(digits, '0')));
}

/**
 * Plain decimal text with the digits of the currency.
 * @param {Money} amount
 */
export function text(amount) {
  const digits = minorDigits(checked(amount, 'amount').currency);
  const { minor } = amount;
  const plain = String(minor < 0n ? -minor : minor).padStart(digits + 1, '0');
  const cut = plain.length - digits;
  const sign = minor < 0n ? '-' : '';
  return sign + (digits ? `${plain.slice(0, cut)}.${plain.slice(cut)}` : plain);
}

/**
 * The sum of amounts of one currency.
 * @param {readonly Money[]} listed
 */
export function total(listed) {
  if (!many(listed, 'amounts').length) throw new NothingToSum();
  return money(oneCurrency(listed), whole(listed.map((each) => each.minor)));
}

/**
 * A sum for each currency; currencies are never added without a rate.
 * @param {readonly Money[]} listed
 * @returns {Readonly<Record<string, Money>>}
 */
export function sums(listed) {
  const codes = [...new Set(listed.map((each) => checked(each, 'amount').currency))].sort();
  return Object.freeze(
    Object.fromEntries(
      codes.map((code) => [code, total(listed.filter((each) => each.currency === code))]),
    ),
  );
}

/**
 * The price of so many.
 * @param {Money} price
 * @param {number} many
 */
export function times(price, many) {
  return money(checked(price, 'price').currency, price.minor * BigInt(count(many, 'count')));
}

/**
 * Shipping or tax shared over lines by their price; the shares add up to the whole. What is left
 * after rounding down goes coin by coin to the largest remainders, of equal ones to the earlier.
 * @param {Money} amount
 * @param {readonly Money[]} lines
 */
export function shared(amount, lines) {
  if (!many(lines, 'lines').length) throw new NoLines();
  const currency = oneCurrency([amount, ...lines]);
  const prices = lines.map((each, i) => weight(each, i + 1));
  const weights = prices.some((each) => each > 0n) ? prices : prices.map(() => 1n);
  const every = whole(weights);
  const size = amount.minor < 0n ? -amount.minor : amount.minor;
  const parts = weights.map((each) => (size * each) / every);
  const rests = weights.map((each) => (size * each) % every);
  const left = Number(size - whole(parts));
  const first = new Set(byRemainder(rests).slice(0, left));
  const sign = amount.minor < 0n ? -1n : 1n;
  return parts.map((each, i) => money(currency, sign * (each + (first.has(i) ? 1n : 0n))));
}

/** @param {readonly bigint[]} rests */
function byRemainder(rests) {
  const rest = (/** @type {number} */ i) => rests[i] ?? 0n;
  return rests
    .map((_, i) => i)
    .sort((a, b) => (rest(a) === rest(b) ? a - b : rest(a) > rest(b) ? -1 : 1));
}

/** @param {readonly bigint[]} listed */
const whole = (listed) => listed.reduce((sum, each) => sum + each, 0n);

/**
 * The amount, if it is money.
 * @param {Money} amount
 * @param {string} what
 */
export function checked(amount, what) {
  if (typeof amount?.minor !== 'bigint' || typeof amount.currency !== 'string')
    throw new NoMoney({ what });
  return amount;
}

/** @param {readonly Money[]} listed */
function oneCurrency(listed) {
  const one = checked(/** @type {Money} */ (listed[0]), 'amount').currency;
  for (const each of listed) {
    const other = checked(each, 'amount').currency;
    if (other !== one) throw new CurrenciesMixed({ one, other });
  }
  return one;
}

/**
 * @param {Money} line
 * @param {number} place
 */
function weight(line, place) {
  if (line.minor < 0n) throw new LineBelowZero({ line: place });
  return line.minor;
}
