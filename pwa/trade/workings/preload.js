/** Preload: what a torque does to its bolt, and whether it can be meant as it stands. */
import { ANY, find, stateOf } from '../lubricant.js';
import { plausibility } from '../plausibility.js';
import { band } from '../preload.js';
import { loads } from '../strength.js';
import { convert } from '../units.js';
import { BLAMES, CLASS, forceUnit, STATES, threaded } from './bolts.js';
import { caution } from './cautions.js';
import { amount, share, shownWith, span, text } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */
/** @typedef {import('../thread.js').Thread} Thread */

const SHARES = ['share', 'share_as_typed', 'share_high', 'change'];

/** Band of the preload, its share of proof where the class is known, and cautions. @param {Given} given */
function work(given) {
  const thread = threaded(given);
  const factors = factorsOf(given);
  const ends = band({
    torqueNm: given.inside('torque', 'N·m'),
    wrenchDeviation: given.share('deviation'),
    nutFactorLow: factors.low,
    nutFactorHigh: factors.high,
    diameterMm: thread.diameter_mm,
  });
  const forces = [ends.low_N, ends.mid_N, ends.high_N];
  const mark = given.has('nut-factor') ? null : 'rule-of-thumb';
  const unit = forceUnit(given, 'torque');
  const [low = 0, mid = 0, high = 0] = forces.map((each) => convert(each, 'N', unit));
  return {
    lines: [
      amount('preload', mid, unit, { band: [low, high], mark }),
      ...ofProof(given, thread, forces, mark),
      ...(given.has('nut-factor')
        ? []
        : [span('nut-factor', [factors.low, factors.high], null, 2, 'rule-of-thumb')]),
    ],
    cautions: [...cautionsOf(given, thread), caution('preload-thumb')],
  };
}

/** The lubricant state as the rules name it, or null. @param {Given} given @param {string} name */
const stateIn = (given, name) => (given.has(name) ? stateOf(given.word(name)) : null);

/** @param {Given} given */
function factorsOf(given) {
  if (given.has('nut-factor')) {
    const own = given.number('nut-factor');
    return { low: own, high: own };
  }
  const state = stateIn(given, 'lubricant');
  return (state && find(state)) || ANY;
}

/** @param {Given} given @param {Thread} thread @param {number[]} forces @param {string | null} mark */
function ofProof(given, thread, forces, mark) {
  if (!given.has('class')) return [];
  const load = loads(thread, given.word('class')).proof_load_N;
  const [low = 0, mid = 0, high = 0] = forces.map((each) => each / load);
  const unit = forceUnit(given, 'torque');
  return [
    share('share-of-proof', mid, { band: [low, high], mark }),
    amount('proof-load', convert(load, 'N', unit), unit, { mark: 'table-value' }),
  ];
}

/** @param {Given} given @param {Thread} thread */
function cautionsOf(given, thread) {
  if (!given.has('class')) return [caution('preload-no-class')];
  const known = given.has('nut-factor');
  const judged = plausibility(given.measured('torque'), thread, given.word('class'), {
    state: known ? null : stateIn(given, 'lubricant'),
    nutFactor: known ? given.number('nut-factor') : null,
    valueFor: stateIn(given, 'value-for'),
    thenAngle: given.word('then-angle') === 'yes',
  });
  return judged.cautions.map((each) => said(given, each));
}

/**
 * A caution of the rule in the words of the workings.
 * @param {Given} given
 * @param {{word: string, code: string, facts: Record<string, any>}} found
 */
function said(given, found) {
  /** @type {Record<string, string>} */
  const facts = {};
  for (const [name, fact] of Object.entries(found.facts))
    if (name !== 'unit') facts[name] = factText(name, fact);
  const typed = given.typed('torque');
  facts.typed = `${typed.value} ${typed.unit}`;
  if ('unit' in found.facts) facts.value = text(found.facts.value, found.facts.unit);
  return caution(`preload-${found.code}`, facts, found.word);
}

/** @param {string} name @param {number | string} fact */
function factText(name, fact) {
  if (typeof fact === 'string') return fact;
  const sign = name === 'change' && fact > 0 ? '+' : '';
  return SHARES.includes(name) ? `${sign}${shownWith(fact * 100, 0)} %` : '';
}

/** @type {import('./working.js').Working} */
export const PRELOAD = {
  name: 'preload',
  formula:
    'preload = torque ÷ (nut factor × diameter); band: wrench and friction at their worst together',
  source:
    'T = K F d. Proof loads: tables of ISO 898-1:2013 and SAE J429; pitches: ISO 261 and ASME B1.1, quoted from memory. Nut factors: common practice, no source.',
  asks: [
    ask('thread', 'designation'),
    CLASS,
    ask('torque', 'torque', { unit: 'N·m' }),
    ask('lubricant', 'choice', { choices: STATES, default: 'unknown' }),
    ask('deviation', 'share', { default: '4' }),
    ask('value-for', 'choice', { choices: STATES, default: 'unknown' }),
    ask('then-angle', 'choice', { choices: ['no', 'yes'], default: 'no' }),
    ask('nut-factor', 'number', { optional: true }),
  ],
  work,
  blames: BLAMES,
};
