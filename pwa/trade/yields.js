/**
 * How many used parts turn out good: the share so far, how many to bring home, what it costs.
 * The share of rejected ones has a beta distribution: the prior plus what was inspected.
 */
import { TradeError } from '../errors.js';
import { aboveZero, count, notBelowZero, share } from './amounts.js';
import { quantile } from './beta.js';
import { checked, money, times, total } from './money.js';
import { at, known, learned, least, MOST, openChance, TooManyToBring } from './yield_series.js';

/** @typedef {import('./money.js').Money} Money */

const MOST_NEEDED = 10000;

/** More thrown out than looked at. */
export class RejectedAboveInspected extends TradeError {
  static code = 'yields-rejected-above-inspected';
  static says = '{rejected} rejected of {inspected} inspected cannot be.';
  static nextStep = 'Count both again.';
}

/** Where none is good no number is enough. */
export class NoneGood extends TradeError {
  static code = 'yields-none-good';
  static says = 'No number is enough when none is good.';
  static nextStep = 'Buy new, or look at another donor.';
}

/**
 * Share rejected among all of the kind, from those inspected, with a band of equal tails.
 * @param {number} inspected
 * @param {number} rejected
 * @param {number} [priorA] belongs to rejected
 * @param {number} [priorB]
 * @param {number} [credible]
 */
export function shareRejected(inspected, rejected, priorA = 1, priorB = 1, credible = 0.95) {
  const [a, b] = posterior(inspected, rejected, priorA, priorB);
  const tail = (1 - openChance(credible, 'credibility')) / 2;
  return Object.freeze({
    mean: a / (a + b),
    low: quantile(tail, a, b),
    high: quantile(1 - tail, a, b),
  });
}

/**
 * How many to bring so that with that chance enough are good; share known.
 * @param {number} needed
 * @param {number} shareGood
 * @param {number} wanted chance
 */
export function bring(needed, shareGood, wanted) {
  const few = enough(needed);
  if (share(shareGood, 'share good') === 0) throw new NoneGood();
  return least(known(few, shareGood), few, wanted);
}

/**
 * How many to bring where the share is only known from inspections.
 * @param {number} needed
 * @param {number} inspected
 * @param {number} rejected
 * @param {number} wanted chance
 * @param {number} [priorA]
 * @param {number} [priorB]
 */
export function bringLearned(needed, inspected, rejected, wanted, priorA = 1, priorB = 1) {
  const [a, b] = posterior(inspected, rejected, priorA, priorB);
  const few = enough(needed);
  return least(learned(few, b, a), few, wanted);
}

/**
 * The chance that so many brought hold enough good ones; share known.
 * @param {number} brought
 * @param {number} needed
 * @param {number} shareGood
 */
export function chance(brought, needed, shareGood) {
  const good = share(shareGood, 'share good');
  const many = carried(brought);
  const few = enough(needed);
  return good === 0 ? 0 : at(known(few, good), few, many);
}

/**
 * The same where the share is only known from inspections.
 * @param {number} brought
 * @param {number} needed
 * @param {number} inspected
 * @param {number} rejected
 * @param {number} [priorA]
 * @param {number} [priorB]
 */
export function chanceLearned(brought, needed, inspected, rejected, priorA = 1, priorB = 1) {
  const [a, b] = posterior(inspected, rejected, priorA, priorB);
  const many = carried(brought);
  const few = enough(needed);
  return at(learned(few, b, a), few, many);
}

/**
 * What bringing so many used ones costs against buying the needed ones new.
 * @param {number} brought
 * @param {Money} priceUsed
 * @param {number} needed
 * @param {Money} priceNew
 */
export function usedAgainstNew(brought, priceUsed, needed, priceNew) {
  const many = count(brought, 'brought', 1);
  for (const price of [priceUsed, priceNew]) {
    notBelowZero(Number(checked(price, 'price').minor), 'price');
  }
  const used = times(priceUsed, many);
  const fresh = times(priceNew, count(needed, 'needed', 1));
  const difference = total([fresh, money(used.currency, -used.minor)]);
  return Object.freeze({
    used_total: used,
    new_total: fresh,
    difference,
    used_is_cheaper: difference.minor > 0n,
    price_even: money(fresh.currency, fresh.minor / BigInt(many)),
  });
}

/**
 * @param {number} inspected
 * @param {number} rejected
 * @param {number} priorA
 * @param {number} priorB
 * @returns {[number, number]}
 */
function posterior(inspected, rejected, priorA, priorB) {
  const seen = count(inspected, 'inspected');
  const bad = count(rejected, 'rejected');
  if (bad > seen) throw new RejectedAboveInspected({ rejected: bad, inspected: seen });
  return [aboveZero(priorA, 'prior') + bad, aboveZero(priorB, 'prior') + seen - bad];
}

/** @param {number} needed */
function enough(needed) {
  if (count(needed, 'needed', 1) > MOST_NEEDED) throw new TooManyToBring({ most: MOST_NEEDED });
  return needed;
}

/** @param {number} brought */
function carried(brought) {
  if (count(brought, 'brought') > MOST) throw new TooManyToBring({ most: MOST });
  return brought;
}
