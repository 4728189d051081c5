/** Bring: how many used ones to bring home so that enough turn out good, and what it costs. */
import { minorDigits, parse, text } from '../money.js';
import { bring, bringLearned, shareRejected, usedAgainstNew } from '../yields.js';
import { caution } from './cautions.js';
import { AskMissing } from './errors.js';
import { count, line, share } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */
/** @typedef {import('../money.js').Money} Money */

/** Fewer inspected ones than this leave a band that says little (ours). */
const FEW = 10;

/** The number, the chance it gives, the share rejected with its band, and the cost. @param {Given} given */
function work(given) {
  const needed = given.count('needed');
  const { found, told, cautions } = brought(given, needed);
  const cost = costOf(given, found.bring, needed);
  return {
    lines: [
      count('bring', found.bring),
      share('chance-reached', found.chance_reached, { decimals: 1 }),
      ...told,
      ...cost.told,
    ],
    cautions: [...cost.cautions, ...cautions],
  };
}

/** @param {Given} given @param {number} needed */
function brought(given, needed) {
  const wanted = given.share('chance');
  if (given.has('share-good'))
    return { found: bring(needed, given.share('share-good'), wanted), told: [], cautions: [] };
  const [inspected, rejected] = [given.count('inspected'), given.count('rejected')];
  const found = bringLearned(needed, inspected, rejected, wanted);
  const known = shareRejected(inspected, rejected);
  return {
    found,
    told: [share('share-rejected', known.mean, { band: [known.low, known.high] })],
    cautions: inspected < FEW ? [caution('bring-few', { inspected: String(inspected) })] : [],
  };
}

/** What they cost used, and the needed ones new, where the prices are known. @param {Given} given @param {number} many @param {number} needed */
function costOf(given, many, needed) {
  if (!given.has('price-used') && !given.has('price-new')) return { told: [], cautions: [] };
  const used = price(given, 'price-used');
  const found = usedAgainstNew(many, used, needed, price(given, 'price-new'));
  return {
    told: [sum('used-total', found.used_total), sum('new-total', found.new_total)],
    cautions: found.used_is_cheaper ? [] : [caution('bring-new-cheaper')],
  };
}

/** @param {Given} given @param {string} name */
function price(given, name) {
  if (!given.has(name)) throw new AskMissing({ ask: name.replaceAll('-', ' '), about: name });
  return parse(given.word(name), given.word('currency'));
}

/** @param {string} name @param {Money} amount */
const sum = (name, amount) =>
  line(name, {
    value: Number(amount.minor) / 10 ** minorDigits(amount.currency),
    unit: amount.currency,
    shown: text(amount),
  });

/** @type {import('./working.js').Working} */
export const BRING = {
  name: 'bring',
  formula:
    'least N with a chance of at least so many good ones; share rejected ~ Beta(1 + rejected, 1 + inspected − rejected)',
  source:
    'Beta-binomial distribution; before the first inspection every share counts as equally likely.',
  asks: [
    ask('needed', 'count'),
    ask('inspected', 'count', { default: '0' }),
    ask('rejected', 'count', { default: '0' }),
    ask('chance', 'share', { default: '95' }),
    ask('share-good', 'share', { optional: true }),
    ask('price-used', 'number', { optional: true }),
    ask('price-new', 'number', { optional: true }),
    ask('currency', 'currency', { default: 'EUR' }),
  ],
  work,
  blames: {
    'yields-rejected-above-inspected': 'rejected',
    'yields-none-good': 'share-good',
    'money-currency': 'currency',
    'money-decimals': 'price-used',
  },
};
