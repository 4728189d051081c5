/** The course of a run: what was pulled before a pull, and what must be said about when it came. */
import { closer } from './moments.js';
import { wantsValue } from './programme.js';

/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */
/** @typedef {import('./programme.js').Fastener} Fastener */
/**
 * What lies before the pull being looked at; pulls are remembered in their order.
 * `left`: pass → the order it was left at with a reason. `until`: pass and fastener → the order
 * until which a pull of it was on the fastener. `last`: pass and device → its latest pull.
 * `reached`: fastener → the farthest pass it was pulled in.
 * @typedef {object} Course
 * @property {Programme} plan
 * @property {Map<unknown, string>} left
 * @property {Map<string, string>} until
 * @property {Map<string, Fact>} last
 * @property {Map<string, number>} reached
 */

const FASTEST = /** @type {Record<string, number>} */ ({ torque: 2500, angle: 2500 });
const FASTEST_BY_HAND = 1000;
/** Sorts after every order. */
export const NEVER = '~';

/**
 * @param {Programme} plan
 * @param {Map<unknown, string>} left
 * @returns {Course}
 */
export function course(plan, left) {
  return { plan, left, until: new Map(), last: new Map(), reached: new Map() };
}

/**
 * A key of two ids that no two other ids have.
 * @param {string} one
 * @param {string} other
 */
export function pair(one, other) {
  return `${one.length} ${one} ${other}`;
}

/**
 * Flags about when it was pulled: they are said, and the pass counts.
 * @param {Course} so
 * @param {Fact} fact
 * @param {Pass} pass
 * @param {Fastener} fastener
 */
export function courseFlags(so, fact, pass, fastener) {
  const flags = [];
  if (outOfOrder(so, fact, pass, fastener)) flags.push('out-of-order');
  if (passSkipped(so, fact, pass, fastener)) flags.push('pass-skipped');
  if (tooFast(so, fact, pass)) flags.push('too-fast');
  return flags;
}

/**
 * Take a pull in, struck or not: when it was made, it was on the fastener.
 * @param {Course} so
 * @param {Fact} fact
 * @param {Pass} pass
 * @param {Fastener} fastener
 * @param {string | null} void_
 */
export function remember(so, fact, pass, fastener, void_) {
  const key = pair(pass.id, fastener.id);
  const until = void_ ?? NEVER;
  if (until > (so.until.get(key) ?? '')) so.until.set(key, until);
  const reached = so.reached.get(fastener.id) ?? -1;
  if (pass.number > reached) so.reached.set(fastener.id, pass.number);
  so.last.set(pair(pass.id, fact.device), fact);
}

/**
 * @param {Course} so
 * @param {Pass} pass
 * @param {string} fastener
 * @param {string} order
 */
function there(so, pass, fastener, order) {
  return (so.until.get(pair(pass.id, fastener)) ?? '') > order;
}

/**
 * @param {Course} so
 * @param {Fact} fact
 * @param {Pass} pass
 * @param {Fastener} fastener
 */
function outOfOrder(so, fact, pass, fastener) {
  if (!wantsValue(pass) || there(so, pass, fastener.id, fact.order)) return false;
  const { sequence } = so.plan;
  const before = sequence.slice(0, sequence.indexOf(fastener.id));
  return before.some((each) => !there(so, pass, each, fact.order));
}

/**
 * Whether an earlier pass was not gone through, and not left with a reason.
 * @param {Course} so
 * @param {Fact} fact
 * @param {Pass} pass
 * @param {Fastener} fastener
 */
function passSkipped(so, { order }, pass, fastener) {
  const passes = [...so.plan.passes.values()].slice(0, pass.number);
  const owed = passes.findLast(({ id }) => (so.left.get(id) ?? NEVER) > order);
  if (!owed) return false;
  const since = passes.slice(owed.number);
  if (!since.some((each) => there(so, each, fastener.id, order))) return true;
  const others = [...so.plan.fasteners.keys()];
  return others.some((each) => (so.reached.get(each) ?? -1) < owed.number);
}

/**
 * @param {Course} so
 * @param {Fact} fact
 * @param {Pass} pass
 */
function tooFast(so, fact, pass) {
  const before = so.last.get(pair(pass.id, fact.device));
  if (!before || before.body.together === true || fact.body.together === true) return false;
  return closer(before, fact, FASTEST[pass.how] ?? FASTEST_BY_HAND);
}
