/**
 * Whether a typed torque can be meant as it stands: out by ten, another unit, another lubricant?
 * Plausibility only. A share of proof load by nut factor judges a slip of the keypad, never a manual.
 */
import { aboveZero, facts, word } from './amounts.js';
import { ANY, BANDS, find } from './lubricant.js';
import { classOf, proofStressMpa } from './strength.js';
import { stressAreaMm2 } from './thread.js';
import { nutFactor as possibleNutFactor } from './torque_form.js';
import { UnitsDiffer } from './unit_errors.js';
import { convert, TORQUE_WORDS } from './units.js';

/** @typedef {import('./units.js').Measured} Measured */
/** @typedef {import('./thread.js').Thread} Thread */
/** @typedef {import('./lubricant.js').NutFactors} NutFactors */
/** @typedef {{code: string, says: string, value: number, unit: string, share: number}} Meaning */
/** @typedef {{word: string, code: string, facts: Record<string, number | string>}} Caution */
/** @typedef {{unit: string, number: number, share: number, factors: NutFactors, thenAngle: boolean}} Case */

/** Shares of proof load between which a torque may be meant as it stands (rule of thumb, ours). */
const LEAST = 0.2;
const MOST = 1;
/** Another meaning is named if it comes to a likely share; nearest to the usual one first. */
const LIKELY_LEAST = 0.35;
const LIKELY_MOST = 0.95;
const USUAL = 0.65;
/** So much nearer another unit must lie than a slipped decimal sign: kgf·m is nearly ten N·m. */
const SLIP_FIRST = 0.02;
const SLIPPERY = 0.2;
const NEWTON_METRES = new Map(TORQUE_WORDS.map((word) => [word, convert(1, word, 'N·m')]));

/**
 * What a typed torque would do to its bolt, and what else it may mean. The state is the lubricant on
 * the thread, valueFor the one the manual gives the value for; without state and nut factor the band
 * of all states counts. If an angle follows, a small torque is no surprise.
 * @param {Measured} torque
 * @param {Thread} thread
 * @param {string} propertyClass
 * @param {{state?: string | null, nutFactor?: number | null, valueFor?: string | null,
 *   thenAngle?: boolean}} [how]
 */
export function plausibility(torque, thread, propertyClass, how = {}) {
  const { state = null, nutFactor = null, valueFor = null, thenAngle = false } = how;
  facts(thread, 'thread');
  word(facts(torque, 'torque').value, 'torque');
  const size = NEWTON_METRES.get(torque.unit);
  if (!size) throw new UnitsDiffer({ unit: torque.unit, other: 'N·m' });
  const number = aboveZero(Number(torque.value), 'torque');
  const factors = factorsOf(state, nutFactor);
  const name = classOf(propertyClass, thread.standard);
  const proof = proofStressMpa(name, thread.diameter_mm) * stressAreaMm2(thread);
  const over = (number * size * 1000) / thread.diameter_mm / proof;
  const one = { unit: torque.unit, number, share: over / factors.mid, factors, thenAngle };
  const meanings = meaningsOf(one);
  const { code, verdict } = verdictOf(one, meanings);
  const high = over / factors.low;
  return Object.freeze({
    verdict,
    code,
    share_of_proof: one.share,
    share_low: over / factors.high,
    share_high: high,
    preload_N: one.share * proof,
    proof_load_N: proof,
    meanings,
    cautions: [...cautionsOf(one, code, meanings, high), ...states(one, state, valueFor)],
  });
}

/** @type {(state: string | null, nutFactor: number | null) => NutFactors} */
function factorsOf(state, nutFactor) {
  if (nutFactor === null) return (state === null ? null : find(state)) ?? ANY;
  const known = possibleNutFactor(nutFactor);
  return { state: 'given', low: known, mid: known, high: known, mark: 'given' };
}

/**
 * Nearest to the usual share first; none where the torque can be meant as it stands.
 * @param {Case} one
 * @returns {Meaning[]}
 */
function meaningsOf(one) {
  const low = one.share < LEAST && !one.thenAngle;
  if (!low && one.share <= MOST) return [];
  return [...tenfold(one), ...otherUnits(one), ...dryValue(one)]
    .filter(({ share }) => share >= LIKELY_LEAST && share <= LIKELY_MOST)
    .sort((a, b) => farness(a) - farness(b));
}

/** @param {Meaning} meaning */
const farness = ({ code, share }) =>
  Math.abs(share - USUAL) + (code === 'wrong-unit' ? SLIP_FIRST : 0);

/** @param {Case} one */
const tenfold = ({ number, unit, share }) =>
  [10, 0.1].map((times) => ({
    code: 'out-by-ten',
    says: 'out by ten?',
    value: number * times,
    unit,
    share: share * times,
  }));

/** @param {Case} one */
function otherUnits({ number, unit, share }) {
  const own = NEWTON_METRES.get(unit) ?? 1;
  const others = [...NEWTON_METRES].filter(([word]) => word !== unit);
  return others.map(([word, size]) => ({
    code: 'wrong-unit',
    says: `${word} taken for ${unit}?`,
    value: number,
    unit: word,
    share: share * (size / own),
  }));
}

/** @param {Case} one */
function dryValue({ number, unit, share, factors }) {
  const dry = BANDS.get('dry');
  if (!dry || factors.high > SLIPPERY || factors.state === 'given') return [];
  const says = 'dry value on an oiled thread?';
  const ofDry = share * (factors.mid / dry.mid);
  return [{ code: 'dry-on-oiled', says, value: number, unit, share: ofDry }];
}

/** @type {(one: Case, meanings: Meaning[]) => {code: string, verdict: string}} */
function verdictOf({ share, thenAngle }, [first]) {
  if (first) return { code: first.code, verdict: first.says };
  if (share > MOST) return { code: 'above-proof', verdict: 'above proof load' };
  const low = share < LEAST && !thenAngle;
  if (low) return { code: 'far-below', verdict: 'far below the usual' };
  return { code: 'plausible', verdict: 'plausible' };
}

/** @type {(one: Case, code: string, meanings: Meaning[], high: number) => Caution[]} */
function cautionsOf({ share, factors }, code, [first], high) {
  /** @type {Caution[]} */
  const found = [];
  if (first) {
    const meant = { value: first.value, unit: first.unit, share: first.share };
    found.push({ word: 'caution', code, facts: { ...meant, share_as_typed: share } });
  }
  if (share > MOST) found.push({ word: 'warning', code: 'above-proof', facts: { share } });
  else if (code === 'far-below') found.push({ word: 'caution', code, facts: { share } });
  else if (high > MOST) {
    const facts = { share, share_high: high, state: factors.state };
    found.push({ word: 'notice', code: 'may-pass-proof', facts });
  }
  return found;
}

/**
 * A caution where the value was given for another state, or nothing is known of the state.
 * @type {(one: Case, state: string | null, valueFor: string | null) => Caution[]}
 */
function states({ share, factors }, state, valueFor) {
  if (factors === ANY) {
    const facts = /** @type {Caution['facts']} */ (state === null ? {} : { state });
    return [{ word: 'notice', code: 'no-nut-factor', facts }];
  }
  const assumed = valueFor === null ? null : find(valueFor);
  if (factors.state === 'given' || !assumed || assumed.state === factors.state) return [];
  const change = assumed.mid / factors.mid - 1;
  const word = change > 0 && share > MOST ? 'warning' : 'caution';
  const facts = { value_for: assumed.state, state: factors.state, change };
  return [{ word, code: 'lubricant-differs', facts }];
}
