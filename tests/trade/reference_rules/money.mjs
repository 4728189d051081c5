// Published values of money: minor units, sums, sharing, tax.
import * as money from '../../../pwa/trade/money.js';
import * as tax from '../../../pwa/trade/tax.js';

const texts = (made) =>
  Object.fromEntries(Object.entries(made).map(([key, each]) => [key, money.text(each)]));

function taxed(given) {
  const { currency, net, gross, tax_percent: percent, rounding } = given;
  const found =
    gross === undefined
      ? tax.taxOn(money.parse(net, currency), String(percent), rounding)
      : tax.taxWithin(money.parse(gross, currency), String(percent), rounding);
  return texts(found);
}

function shared({ currency, lines, ...given }) {
  const whole = money.parse(given.shipping ?? given.tax ?? given.whole, currency);
  const prices = lines.map((each) => money.parse(each, currency));
  return { shares: money.shared(whole, prices).map(money.text) };
}

function summed(given) {
  const listed = given.amounts.map((each) =>
    typeof each === 'string'
      ? money.parse(each, given.currency)
      : money.parse(each.value, each.currency),
  );
  if (!listed.length) money.total(listed);
  const sums = texts(money.sums(listed));
  return Object.keys(sums).length === 1 ? { sums, sum: money.text(money.total(listed)) } : { sums };
}

export function byShape(given) {
  if ('tax_percent' in given) return taxed(given);
  if ('lines' in given) return shared(given);
  if ('amounts' in given) return summed(given);
  return { minor_digits: money.minorDigits(given.currency) };
}

export const topics = {};
