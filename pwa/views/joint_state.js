/** The state of a joint: may it begin, is it running, what keeps it open? */
import { pair } from './course.js';
import { isWhole, same, targetOf, wantsValue } from './programme.js';
import { cellOf, openIn } from './progress.js';
import { factsOf, passOf } from './runs.js';

/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */
/** @typedef {import('./programme.js').Fastener} Fastener */
/** @typedef {import('./progress.js').Progress} Progress */
/** @typedef {import('./held.js').JointPart} JointPart */

/**
 * no-value, not-begun, running, not-whole or done.
 * @param {Programme} plan
 * @param {Progress | null} now
 * @param {JointPart[]} parts
 */
export function stateOf(plan, now, parts) {
  if (!now || now.undone || !plan.fasteners.size) return isWhole(plan) ? 'not-begun' : 'no-value';
  if (now.current) return stateIn(now.current, now.coming[0]);
  if (!plan.passes.size) return 'no-value';
  return now.complete && !isHeld(now, parts) ? 'done' : 'not-whole';
}

/**
 * @param {Pass} current
 * @param {Fastener | undefined} next
 */
function stateIn(current, next) {
  if (!next) return 'not-whole';
  return wantsValue(current) && !targetOf(current, next) ? 'no-value' : 'running';
}

/**
 * Whether a part was held back when the last pull was made, and nobody overruled it.
 * @param {Progress} now
 * @param {JointPart[]} parts
 */
function isHeld(now, parts) {
  const last = now.last?.fact.order ?? '';
  return now.run.overruled === null && parts.some(({ held, since }) => held && since <= last);
}

/**
 * The pass whose marks the drawing wears.
 * @param {Programme} plan
 * @param {Progress | null} now
 * @param {string} state
 */
export function passShown(plan, now, state) {
  const passes = [...plan.passes.values()];
  if (!now || state === 'not-begun') return passes[0] ?? null;
  return now.current ?? passes.at(-1) ?? null;
}

/**
 * What keeps the pass open, which one comes back, and which must not be turned again.
 * @param {Progress | null} now
 * @param {Pass | null} shown
 * @param {Fastener[]} coming
 * @param {string} state
 */
export function openLines(now, shown, coming, state) {
  if (!now || !shown || state === 'not-begun' || state === 'done') {
    return { open: [], struck_note: null, struck_after: null, turned_ask: null, turned: [] };
  }
  const open = openIn(now, shown);
  const turned = open.filter(({ id }) => now.turned.has(pair(shown.id, id))).map(({ id }) => id);
  const back = coming.filter(({ id }) => cellOf(now, shown, id).mark === 'out');
  const todo = coming.slice(0, coming.length - back.length);
  const waits = back.length > 0 && todo.length > 0;
  return {
    open: open.map(({ number }) => number),
    struck_note: waits ? (back[0]?.number ?? null) : null,
    struck_after: waits ? (todo.at(-1)?.number ?? null) : null,
    turned_ask: turned[0] ?? null,
    turned,
  };
}

/**
 * Once for each pass and value of a run, and again when the value changes.
 * @param {Programme} plan
 * @param {Progress | null} now
 * @param {import('../trade/units.js').Measured | null} target
 */
export function unsourcedDue(plan, now, target) {
  const current = now?.current;
  if (plan.source || !now || !current || !target) return false;
  return !factsOf(now.run, 'unsourced').some(
    (each) => passOf(each) === current.id && same(each.body.target, target),
  );
}
