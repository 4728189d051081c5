/** Tax on an amount of money, or within it, rounded in whole numbers. */
import { decimal } from './exact.js';
import { checked, money } from './money.js';
import { PercentUnclear, RoundingUnknown } from './money_errors.js';

/** @typedef {import('./money.js').Money} Money */

const PERCENT = /^[0-9]{1,6}([.,][0-9]{1,6})?$/;
export const ROUNDINGS = Object.freeze(['half up', 'half even']);

/**
 * Tax put on an amount without tax.
 * @param {Money} net
 * @param {string} percent plain decimal text
 * @param {string} [rounding] "half up" (away from zero) or "half even"
 */
export function taxOn(net, percent, rounding = 'half up') {
  const { up, down } = rate(percent);
  const tax = rounded(checked(net, 'net').minor * up, down, rounding);
  return taxed(net.currency, net.minor, tax);
}

/**
 * The tax that an amount holds already.
 * @param {Money} gross
 * @param {string} percent
 * @param {string} [rounding]
 */
export function taxWithin(gross, percent, rounding = 'half up') {
  const { up, down } = rate(percent);
  const tax = rounded(checked(gross, 'gross').minor * up, up + down, rounding);
  return taxed(gross.currency, gross.minor - tax, tax);
}

/**
 * @param {string} currency
 * @param {bigint} net
 * @param {bigint} tax
 */
function taxed(currency, net, tax) {
  const made = { net: money(currency, net), tax: money(currency, tax) };
  return Object.freeze({ ...made, gross: money(currency, net + tax) });
}

/** @param {string} percent */
function rate(percent) {
  if (typeof percent !== 'string' || !PERCENT.test(percent)) {
    throw new PercentUnclear({ typed: percent });
  }
  const { up, down } = decimal(percent.replace(',', '.'));
  return { up, down: down * 100n };
}

/**
 * @param {bigint} up
 * @param {bigint} down above zero
 * @param {string} rounding
 */
function rounded(up, down, rounding) {
  if (!ROUNDINGS.includes(rounding)) throw new RoundingUnknown({ rounding });
  const size = up < 0n ? -up : up;
  const halves = (2n * size + down) / (2n * down);
  const tie = (2n * size + down) % (2n * down) === 0n;
  const odd = rounding === 'half even' && tie && halves % 2n === 1n;
  return (up < 0n ? -1n : 1n) * (odd ? halves - 1n : halves);
}
