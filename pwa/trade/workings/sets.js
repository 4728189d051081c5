/** Set: the best n of typed numbers, by one measure or two, with the next best spare. */
import { best } from '../sets.js';
import { caution } from './cautions.js';
import { amount, numbers } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */

const QUANTITIES = [
  'length',
  'mass',
  'force',
  'volume',
  'flow',
  'pressure',
  'spring-rate',
  'angle',
];
const MOST_SPARES = 10;

/** Which pieces, what they span, who comes next, and who was turned away. @param {Given} given */
function work(given) {
  const names = ['size', 'second'].filter((name) => given.has(name));
  const measures = names.map((name) => measure(given, name, names.length === 1));
  const columns = names.map((name) => given.allIn(name, given.unit(name)));
  const pieces = (columns[0] ?? []).map((_, at) => ({
    name: String(at + 1),
    sizes: columns.map((column) => column[at] ?? 0),
  }));
  const found = best(pieces, measures, given.count('choose'));
  return {
    lines: [
      numbers('chosen', found.chosen.map(Number)),
      ...spreads(given, 'spread', names, found.spreads),
      ...next(given, names, found.spares),
    ],
    cautions:
      found.outside.length > 0
        ? [caution('set-outside', { pieces: found.outside.map(({ name }) => name).join(', ') })]
        : [],
  };
}

/** Two measures are held against each other by what a spread of each is worth. @param {Given} given @param {string} name @param {boolean} alone */
function measure(given, name, alone) {
  const unit = given.unit(name);
  if (name !== 'size') return { name, scale: given.inside('second-worth', unit) };
  return {
    name,
    scale: alone ? null : given.inside('worth', unit),
    lower: given.insideOrNull('least', unit),
    upper: given.insideOrNull('most', unit),
  };
}

/** @param {Given} given @param {string} kind @param {string[]} names @param {readonly number[]} sizes */
const spreads = (given, kind, names, sizes) =>
  names.map((name, at) =>
    amount(name === 'size' ? kind : `second-${kind}`, sizes[at] ?? 0, given.unit(name), {
      figures: 2,
      decimals: given.decimals(name),
    }),
  );

/** @param {Given} given @param {string[]} names @param {readonly {name: string, spreads: readonly number[]}[]} spares */
function next(given, names, spares) {
  const [first] = spares;
  if (!first) return [];
  const ranked = spares.slice(0, MOST_SPARES).map(({ name }) => Number(name));
  return [...spreads(given, 'spread-with-next', names, first.spreads), numbers('spares', ranked)];
}

/** @type {import('./working.js').Working} */
export const SET = {
  name: 'set',
  formula:
    'least of: spread = largest − smallest; with two measures spread ÷ its worth + second spread ÷ its worth',
  source: 'Exact search, proved against trying every choice.',
  asks: [
    ask('choose', 'count'),
    ask('quantity', 'choice', { choices: QUANTITIES, default: 'length' }),
    ask('size', 'any', { follows: 'quantity', many: true, row: 'piece', signed: true }),
    ask('least', 'any', { follows: 'quantity', optional: true, signed: true }),
    ask('most', 'any', { follows: 'quantity', optional: true, signed: true }),
    ask('second-quantity', 'choice', { choices: QUANTITIES, optional: true }),
    ask('second', 'any', {
      follows: 'second-quantity',
      many: true,
      row: 'piece',
      optional: true,
      signed: true,
    }),
    ask('worth', 'any', { follows: 'quantity', optional: true }),
    ask('second-worth', 'any', { follows: 'second-quantity', optional: true }),
  ],
  work,
  blames: {
    'sets-too-few': 'choose',
    'sets-too-few-inside': 'choose',
    'sets-limits-crossed': 'most',
  },
};
