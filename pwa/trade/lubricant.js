/** Lubricant states and the nut factors that go with them: good for plausibility, never a value. */
import { TradeError } from '../errors.js';

/** @typedef {{state: string, low: number, mid: number, high: number, mark: string}} NutFactors */

/** A surface or lubricant that no nut factor is known for. */
export class LubricantUnknown extends TradeError {
  static code = 'lubricant-unknown';
  static says = 'No nut factor is known for {typed}.';
  static nextStep = 'Choose one of the states listed, or type the nut factor itself.';
}

/** @type {(state: string, low: number, high: number) => NutFactors} */
const ruleOfThumb = (state, low, high) =>
  Object.freeze({ state, low, mid: (low + high) / 2, high, mark: 'rule of thumb' });

/** What may be on a thread, as the record names it; the last two have no band of nut factors. */
export const STATES = Object.freeze([
  'dry',
  'zinc plated',
  'oiled',
  'moly',
  'anti-seize',
  'sealant',
  'locking compound',
]);

/**
 * State → band. Rule of thumb (common practice, no source); lots scatter ±10 % to ±30 % about it.
 * Sealant and locking compound have none that everybody would sign.
 */
export const BANDS = new Map(
  [
    ruleOfThumb('dry', 0.25, 0.35),
    ruleOfThumb('zinc plated', 0.18, 0.24),
    ruleOfThumb('oiled', 0.15, 0.2),
    ruleOfThumb('moly', 0.1, 0.15),
    ruleOfThumb('anti-seize', 0.1, 0.15),
  ].map((each) => [each.state, each]),
);

/** From the slipperiest of the states to the roughest: all that can be said of an unknown one. */
export const ANY = ruleOfThumb('unknown', 0.1, 0.35);

/** Surface → nut factor, table value: Shigley's Mechanical Engineering Design, table 8–15 (anti-seize from memory). */
export const SURFACES = new Map([
  ['not plated, black finish', 0.3],
  ['zinc plated', 0.2],
  ['lubricated', 0.18],
  ['cadmium plated', 0.16],
  ['anti-seize', 0.12],
]);

/** @type {[string, RegExp][]} */
const NAMED = [
  ['zinc plated', /\bzinc\b/],
  ['oiled', /\boil(?:ed|y)?\b/],
  ['moly', /\bmoly|\bmos2\b/],
  ['anti-seize', /\banti[ -]?seize\b/],
  ['sealant', /\bseal(?:ant|er|ing)\b/],
  ['locking compound', /\blocking\b|\bthread[ -]?lock/],
];
const DRY = /\bdry\b|\bblack\b/;
const DENIED = /\b(?:no|not|non|without|never|free|or)\b/;

/** @type {Record<string, string>} */
const OTHER_SURFACES = {
  'nonplated, black finish': 'not plated, black finish',
  nonplated: 'not plated, black finish',
  'not plated': 'not plated, black finish',
  'black finish': 'not plated, black finish',
  black: 'not plated, black finish',
  'with anti-seize': 'anti-seize',
  antiseize: 'anti-seize',
  'zinc-plated': 'zinc plated',
  'cadmium-plated': 'cadmium plated',
};

/** @param {unknown} typed */
const keyOf = (typed) =>
  typeof typed === 'string' ? typed.toLowerCase().trim().split(/\s+/).join(' ') : '';

/** @param {unknown} typed */
const unknown = (typed) => new LubricantUnknown({ typed: String(typed).slice(0, 40) || 'nothing' });

/**
 * The one state that somebody's words name; null where they name none, several, or deny one.
 * Dry beside another one adds nothing to it: "zinc plated, dry" is zinc plated.
 * @param {string} words
 */
export function stateOf(words) {
  const key = keyOf(words);
  if (DENIED.test(key)) return null;
  const named = NAMED.filter(([, word]) => word.test(key)).map(([state]) => state);
  if (named.length === 0 && DRY.test(key)) return 'dry';
  return named.length === 1 ? (named[0] ?? null) : null;
}

/**
 * The band of nut factors of a lubricant state, or null where nobody has one.
 * @param {string} state
 * @returns {NutFactors | null}
 */
export const find = (state) => BANDS.get(stateOf(state) ?? '') ?? null;

/**
 * The band of nut factors of a lubricant state, as people and the record name it.
 * @param {string} state
 */
export function nutFactors(state) {
  const found = find(state);
  if (!found) throw unknown(state);
  return found;
}

/**
 * The published single nut factor of a surface.
 * @param {string} surface
 */
export function surfaceNutFactor(surface) {
  const key = keyOf(surface);
  const found = SURFACES.get(OTHER_SURFACES[key] ?? key);
  if (found === undefined) throw unknown(surface);
  return found;
}
