// Published values of sets: best n of m on one and two measures, equal assembly weights.
import { balance } from '../../../pwa/trade/assemblies.js';
import { best } from '../../../pwa/trade/sets.js';
import { ending, named, told } from '../reference_amounts.mjs';
import { convert, quantityOf } from '../../../pwa/trade/units.js';

const WORDS = { _mm: 'mm', _in: 'in', _g: 'g', _oz: 'oz', _N: 'N', _lbf: 'lbf', _cm3: 'cm³' };
const BASE = { length: 'mm', volume: 'cm³', mass: 'g', force: 'N' };

function limits(made, name, alone) {
  const start = alone ? '' : `${name}_`;
  return { lower: made[`${start}lower`], upper: made[`${start}upper`] };
}

function chosen(given, made) {
  const keys = Object.keys(given).filter((key) => Array.isArray(given[key]) && ending(key));
  const names = keys.map((key) => key.slice(0, -ending(key).length));
  const word = (key) => WORDS[ending(key)];
  const measures = names.map((name, at) => ({
    name,
    weight: given.weights?.[at],
    scale: given.scales && convert(given.scales[at], word(keys[at]), BASE[quantityOf(word(keys[at]))]),
    ...limits(made, name, names.length === 1),
  }));
  const pieces = made[names[0]].map((_, at) => ({
    name: String(at + 1),
    sizes: names.map((name) => made[name][at]),
  }));
  const found = best(pieces, measures, given.choose);
  const gives = { cost: found.cost, chosen: found.chosen.map(Number) };
  keys.forEach((key, at) => {
    Object.assign(gives, told('spread', quantityOf(word(key)), found.spreads[at]));
  });
  return gives;
}

function weighed(made) {
  const columns = Object.values(made).filter(Array.isArray);
  return told('spread', 'mass', balance(columns).spread_g);
}

export function byShape(given) {
  const made = named(given);
  return 'choose' in given ? chosen(given, made) : weighed(made);
}

export const topics = {};
