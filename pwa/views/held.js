/** Why a joint should not be tightened with the parts it has. */
import { standing, value } from '../log/workshop.js';
import * as plain from './plain.js';
import { TURNED } from './programme.js';
import { covers, factsOf, fastenerOf, passOf } from './runs.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./runs.js').Run} Run */
/**
 * A part a joint clamps or is held with, and why it should not be tightened. `since`: the order
 * from which it is held; "" when from the beginning.
 * @typedef {{id: string, role: string, name: string | null, verdicts: string[],
 *   held: string | null, since: string}} JointPart
 */

const WORST_FIRST = ['scrap', 'machine'];

/**
 * The clamped parts, then the fasteners' own, each once.
 * @param {Subject} joint
 * @param {Run | null} run
 * @param {Workshop} workshop
 * @returns {JointPart[]}
 */
export function jointParts(joint, run, workshop) {
  const clamped = plain.texts(value(joint, 'parts'));
  const own = plain.mappings(value(joint, 'fasteners')).map(({ part }) => part);
  const fastening = [value(joint, 'fastener_part'), ...own].filter((each) => plain.text(each));
  /** @type {Map<string, string>} */
  const roles = new Map(clamped.map((each) => [each, 'clamps']));
  for (const each of fastening) roles.set(each, 'holds-with');
  return [...roles].map(([id, role]) => jointPart(id, role, joint, run, workshop));
}

/**
 * @param {string} id
 * @param {string} role
 * @param {Subject} joint
 * @param {Run | null} run
 * @param {Workshop} workshop
 * @returns {JointPart}
 */
function jointPart(id, role, joint, run, workshop) {
  const part = workshop.subject(id);
  const said = standing(part, 'verdict').map(({ body, order }) => ({
    word: plain.text(body.verdict) ?? '',
    order,
  }));
  let { held, since } = judgedBy(said);
  if (held === null && isSingleUse(part, workshop) && usedBefore(id, joint, run, workshop)) {
    held = 'used-already';
    since = '';
  }
  const name = plain.text(value(part, 'name'));
  return { id, role, name, verdicts: plain.once(said.map(({ word }) => word)), held, since };
}

/**
 * The worst verdict decides, so that two that differ hold back too.
 * @param {{word: string, order: string}[]} said
 * @returns {{held: string | null, since: string}}
 */
function judgedBy(said) {
  if (!said.length) return { held: 'not-inspected', since: '' };
  const worst = WORST_FIRST.map((word) => said.find((each) => each.word === word)).find(Boolean);
  return worst ? { held: worst.word, since: worst.order } : { held: null, since: '' };
}

/**
 * What the part itself says goes before what its kind says.
 * @param {Subject | null} part
 * @param {Workshop} workshop
 */
export function isSingleUse(part, workshop) {
  const own = value(part, 'single_use');
  const kind = workshop.subject(plain.asId(value(part, 'kind')));
  return own === true || (own !== false && value(kind, 'single_use') === true);
}

/**
 * Whether a torque or angle was pulled on it before: in another run, or before loosening.
 * @param {string} part
 * @param {Subject} joint
 * @param {Run | null} run
 * @param {Workshop} workshop
 */
function usedBefore(part, joint, run, workshop) {
  const others = ['holds-with', 'clamps'].flatMap((role) => workshop.linked(part, role));
  const joints = new Map([joint, ...others].map((each) => [each.id, each]));
  return [...joints.values()].some((each) => usedIn(part, each, run));
}

/**
 * @param {string} part
 * @param {Subject} joint
 * @param {Run | null} run
 */
function usedIn(part, joint, run) {
  const passes = plain.mappings(plain.mapping(value(joint, 'programme')).passes);
  const hows = new Map(passes.map(({ id, how }) => [plain.asId(id), how]));
  return joint.facts.some((fact) => {
    const { body, heading, struck, order } = fact;
    if (heading !== 'pull' || struck !== null) return false;
    const pass = passOf(fact);
    const how = hows.has(pass) ? hows.get(pass) : 'torque';
    const now = run !== null && body.run === run.id && !isLoosened(fact, run);
    return TURNED.includes(how) && !now && partsAt(joint, fastenerOf(fact), order).includes(part);
  });
}

/**
 * @param {Fact} pull
 * @param {Run} run
 */
function isLoosened(pull, run) {
  return factsOf(run, 'loosening').some(
    (each) =>
      plain.listed(each.body.pulls).includes(pull.id) ||
      (covers(each, fastenerOf(pull)) && each.order > pull.order),
  );
}

/**
 * The parts that were in this fastener's place at an order.
 * @param {Subject} joint
 * @param {unknown} fastener
 * @param {string} order
 */
function partsAt(joint, fastener, order) {
  const own = plain
    .mappings(valueAt(joint, 'fasteners', order))
    .find(({ id }) => plain.asId(id) === fastener)?.part;
  const bolt = plain.text(own) ?? plain.text(valueAt(joint, 'fastener_part', order));
  return [...plain.texts(valueAt(joint, 'parts', order)), ...(bolt ? [bolt] : [])];
}

/**
 * What a description said at an order; before the first one, what that said.
 * @param {Subject} joint
 * @param {string} name
 * @param {string} order
 */
function valueAt(joint, name, order) {
  const now = joint.fields[name];
  if (!now) return null;
  const claims = [now, ...now.lost];
  return (claims.find((each) => each.order <= order) ?? claims.at(-1))?.value;
}
