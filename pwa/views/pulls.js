/** The pulls of a run, each with what must be said of it: flags are derived, never stored. */
import { course, courseFlags, remember } from './course.js';
import { againstTarget, isStale } from './judging.js';
import * as plain from './plain.js';
import { targetOf } from './programme.js';
import { covers, factsOf, fastenerOf, knewOf, passOf } from './runs.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */
/** @typedef {import('./programme.js').Fastener} Fastener */
/** @typedef {import('./runs.js').Run} Run */
/**
 * @typedef {object} Pull one pull and all that follows about it from the rest of the log
 * @property {Fact} fact
 * @property {Fastener | null} fastener
 * @property {Pass | null} pass
 * @property {string | null} void the order of the loosening that voided it
 * @property {string[]} flags
 * @property {string | null} accepted the reason
 * @property {boolean} live neither struck out nor loosened since
 * @property {string} mark done, flagged, doubt, out or void
 * @property {boolean} counts whether the pass is done for its fastener by this pull
 */

/** Flags that leave a pass open until pulled again or accepted; the others count. */
export const IN_DOUBT = Object.freeze([
  'short',
  'too-far',
  'wrong-range',
  'stale',
  'loosened-meanwhile',
]);

/**
 * The pulls of a run by order, with their flags.
 * @param {Subject} joint
 * @param {Run} run
 * @param {Programme} plan
 * @param {Workshop} workshop
 * @returns {Pull[]}
 */
export function pulls(joint, run, plan, workshop) {
  const accepted = acceptances(joint);
  const loosenings = factsOf(run, 'loosening');
  const onward = factsOf(run, 'onward').reverse();
  const left = new Map(onward.map((each) => [passOf(each), each.order]));
  const so = course(plan, left);
  const fits = new Map();
  return run.facts
    .filter(({ heading }) => heading === 'pull')
    .map((fact) => {
      const { pass, fastener } = placeOf(fact, plan);
      const voided = voidedAt(fact, loosenings);
      const flags = ownFlags(fact, pass, fastener, { so, joint, workshop, fits });
      if (pass && fastener) remember(so, fact, pass, fastener, voided);
      /** @type {{order: string}[]} */
      const since = voided ? [] : loosenings.filter((each) => ignores(fact, each));
      if (since.length) flags.push('loosened-meanwhile');
      if (flags.includes('stale')) since.push({ order: plan.since });
      const reason = reasonSince(accepted.get(fact.id), since);
      return marked(fact, { fastener, pass, void: voided, flags, accepted: reason });
    });
}

/**
 * The latest reason that was given knowing all there is to doubt.
 * @param {{order: string, says: string}[] | undefined} accepted
 * @param {{order: string}[]} since
 */
function reasonSince(accepted, since) {
  const given = accepted?.find(({ order }) => since.every((each) => order > each.order));
  return given?.says ?? null;
}

/**
 * @param {Fact} fact
 * @param {Programme} plan
 */
function placeOf(fact, plan) {
  return {
    pass: plan.passes.get(passOf(fact)) ?? null,
    fastener: plan.fasteners.get(fastenerOf(fact)) ?? null,
  };
}

/**
 * What must be said of a pull for itself; one of a fastener or pass that is no more is stale.
 * @param {Fact} fact
 * @param {Pass | null} pass
 * @param {Fastener | null} fastener
 * @param {{so: import('./course.js').Course, joint: Subject, workshop: Workshop,
 *   fits: Map<string, string | null>}} given
 */
function ownFlags(fact, pass, fastener, { so, joint, workshop, fits }) {
  if (!pass || !fastener) return ['stale'];
  const target = targetOf(pass, fastener);
  return [
    ...courseFlags(so, fact, pass, fastener),
    ...againstTarget(fact, target, joint, workshop, fits),
    ...(isStale(fact, target, pass, so.plan) ? ['stale'] : []),
  ];
}

/**
 * @param {Fact} fact
 * @param {Pick<Pull, 'fastener' | 'pass' | 'void' | 'flags' | 'accepted'>} rest
 * @returns {Pull}
 */
function marked(fact, rest) {
  const mark = markOf(fact, rest);
  return {
    fact,
    ...rest,
    live: fact.struck === null && rest.void === null,
    mark,
    counts: mark === 'done' || mark === 'flagged',
  };
}

/**
 * @param {Fact} fact
 * @param {Pick<Pull, 'void' | 'flags' | 'accepted'>} rest
 */
function markOf(fact, { void: voided, flags, accepted }) {
  if (fact.struck !== null) return 'out';
  if (voided !== null) return 'void';
  if (accepted === null && flags.some((flag) => IN_DOUBT.includes(flag))) return 'doubt';
  return flags.length ? 'flagged' : 'done';
}

/**
 * Pull → the reasons it was accepted for, latest first, each with its order.
 * @param {Subject} joint
 */
function acceptances(joint) {
  /** @type {Map<string, {order: string, says: string}[]>} */
  const found = new Map();
  for (const { heading, struck, order, body } of [...joint.facts].reverse()) {
    if (heading !== 'accept' || struck !== null) continue;
    const said = { order, says: plain.text(body.reason) ?? '' };
    found.set(plain.asId(body.pull), [...(found.get(plain.asId(body.pull)) ?? []), said]);
  }
  return found;
}

/**
 * A loosening voids the pulls it names, and those its own device made before it.
 * @param {Fact} fact
 * @param {Fact[]} loosenings
 */
function voidedAt(fact, loosenings) {
  const by = loosenings.find((each) => {
    const before = each.device === fact.device && each.n > fact.n;
    return (
      plain.listed(each.body.pulls).includes(fact.id) || (before && covers(each, fastenerOf(fact)))
    );
  });
  return by?.order ?? null;
}

/**
 * Whether whoever pulled did not know of a loosening.
 * @param {Fact} fact
 * @param {Fact} loosening
 */
function ignores(fact, loosening) {
  return covers(loosening, fastenerOf(fact)) && !knewOf(fact, loosening);
}
