/** The runs of a joint: who began each, what it names, and which one is looked at. */
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/**
 * One going at a joint. Every fact that names it is here, struck ones too, by order.
 * @typedef {object} Run
 * @property {string} id
 * @property {Fact[]} facts
 * @property {Fact | null} begun the entry that began it, unless it is struck or has not arrived
 * @property {string} since the order it began at
 * @property {string | null} overruled the latest reason for going on with a part that is held
 * @property {string | null} lubricant what was used
 * @property {boolean} stands whether it counts: begun and not struck, or pulls without a begin
 */

const NAMING = ['begin', 'pull', 'touch', 'onward', 'unsourced', 'loosening'];

/**
 * The facts of a run under a heading that are not struck out.
 * @param {{facts: Fact[]}} run
 * @param {string} heading
 */
export function factsOf(run, heading) {
  return run.facts.filter((each) => each.heading === heading && each.struck === null);
}

/**
 * All runs of a joint, by the order they began at.
 * @param {Subject | null} joint
 * @returns {Run[]}
 */
export function runs(joint) {
  /** @type {Map<string, Fact[]>} */
  const named = new Map();
  for (const fact of joint?.facts ?? []) {
    const id = plain.text(fact.body.run);
    if (id && NAMING.includes(fact.heading)) named.set(id, [...(named.get(id) ?? []), fact]);
  }
  const found = [...named].map(([id, facts]) => makeRun(id, facts));
  return plain.sorted(found, (run) => [run.since, run.id]);
}

/**
 * @param {string} id
 * @param {Fact[]} facts
 * @returns {Run}
 */
function makeRun(id, facts) {
  const begins = factsOf({ facts }, 'begin');
  const begun = begins[0] ?? null;
  const began = facts.some(({ heading }) => heading === 'begin');
  return {
    id,
    facts,
    begun,
    since: /** @type {Fact} */ (begun ?? facts[0]).order,
    overruled: latestText(begins, 'overruled'),
    lubricant: latestText(begins, 'lubricant'),
    stands: begun !== null || (!began && factsOf({ facts }, 'pull').length > 0),
  };
}

/**
 * The run asked for, else the latest that stands.
 * @param {Run[]} found
 * @param {string | null} wanted
 */
export function chosen(found, wanted) {
  const asked = found.find(({ id }) => id === wanted);
  return asked ?? found.filter(({ stands }) => stands).at(-1) ?? null;
}

/**
 * The fastener a fact names.
 * @param {{body: plain.Facts}} fact
 */
export function fastenerOf({ body }) {
  return plain.asId(body.fastener);
}

/**
 * The pass a fact names.
 * @param {{body: plain.Facts}} fact
 */
export function passOf({ body }) {
  return plain.asId(body.pass);
}

/**
 * Whether a loosening is about this fastener; without a list it is about all.
 * @param {Fact} loosening
 * @param {unknown} fastener
 */
export function covers(loosening, fastener) {
  const fasteners = loosening.body.fasteners ?? null;
  return fasteners === null || plain.listed(fasteners).includes(fastener);
}

/**
 * Whether the maker of a fact knew of another one: it names it, or the device made both.
 * @param {Fact} fact
 * @param {Fact} other
 */
export function knewOf(fact, other) {
  return fact.after.includes(other.id) || (fact.device === other.device && fact.n > other.n);
}

/**
 * @param {Fact[]} facts
 * @param {string} name
 */
function latestText(facts, name) {
  return facts.map(({ body }) => plain.text(body[name])).findLast((said) => said) ?? null;
}
