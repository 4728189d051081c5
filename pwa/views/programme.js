/** The programme of a joint as it stands, made whole: every fastener has a place in the sequence. */
import { value } from '../log/workshop.js';
import * as sequence from '../trade/sequence.js';
import { compare } from '../trade/units.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../trade/units.js').Measured} Measured */
/**
 * @typedef {{id: string, number: number, x: number, y: number, group: string | null,
 *   note: string | null, part: string | null}} Fastener
 * @typedef {{group: string | null, value: string, unit: string}} Target
 * @typedef {{id: string, number: number, how: string, values: Target[]}} Pass
 */
/**
 * @typedef {object} Programme what is to be done, and since when this is so
 * @property {Map<string, Fastener>} fasteners
 * @property {Map<string, Pass>} passes
 * @property {string[]} sequence
 * @property {string | null} lubricant
 * @property {string | null} source
 * @property {{word: string | null, says: string | null}[]} cautions
 * @property {string | null} retorque
 * @property {boolean} invented
 * @property {string} since
 */

/** Passes that want a value and are pulled in the sequence. */
export const TURNED = Object.freeze(['torque', 'angle']);

/** @param {Pass} pass */
export function wantsValue(pass) {
  return TURNED.includes(pass.how);
}

/**
 * The value of a pass for a fastener: its group's, else the one for all.
 * @param {Pass} pass
 * @param {Fastener} fastener
 * @returns {Measured | null}
 */
export function targetOf(pass, fastener) {
  if (!wantsValue(pass)) return null;
  const found =
    pass.values.find(({ group }) => group === fastener.group) ??
    pass.values.find(({ group }) => group === null);
  return found ? { value: found.value, unit: found.unit } : null;
}

/**
 * The fasteners in the order of this pass; backing off goes the other way.
 * @param {Programme} plan
 * @param {Pass} pass
 */
export function path(plan, pass) {
  return pass.how === 'back-off' ? sequence.loosening(plan.sequence) : plan.sequence;
}

/**
 * Whether there are fasteners, and each has a value in every pass that wants one.
 * @param {Programme} plan
 */
export function isWhole(plan) {
  const wanting = [...plan.passes.values()].filter(wantsValue);
  const fasteners = [...plan.fasteners.values()];
  return (
    fasteners.length > 0 &&
    wanting.length > 0 &&
    wanting.every((pass) => fasteners.every((fastener) => targetOf(pass, fastener)))
  );
}

/**
 * The programme of a joint, however little of it is known.
 * @param {Subject | null} joint
 * @returns {Programme}
 */
export function programme(joint) {
  const kept = plain.mapping(value(joint, 'programme'));
  const fasteners = readFasteners(joint);
  return {
    fasteners,
    passes: readPasses(kept),
    sequence: wholeSequence(fasteners, plain.texts(kept.sequence), value(joint, 'pattern')),
    lubricant: plain.text(kept.lubricant),
    source: plain.text(kept.source),
    cautions: plain
      .mappings(kept.cautions)
      .map((each) => ({ word: plain.text(each.word), says: plain.text(each.says) })),
    retorque: plain.text(kept.retorque),
    invented: kept.invented === true || value(joint, 'invented') === true,
    since: joint?.fields.programme?.order ?? '',
  };
}

/**
 * Whether two measured values say the same in the same unit; 45 and 45.0 do.
 * @param {unknown} one
 * @param {unknown} other
 */
export function same(one, other) {
  const left = plain.measured(one);
  const right = plain.measured(other);
  if (!left || !right || left.unit !== right.unit) return !left && !right;
  if (left.value === right.value) return true;
  const first = plain.quantity(left);
  const second = plain.quantity(right);
  return first !== null && second !== null && compare(first, second) === 0;
}

/** @param {Subject | null} joint */
function readFasteners(joint) {
  /** @type {Map<string, Fastener>} */
  const found = new Map();
  plain.mappings(value(joint, 'fasteners')).forEach((each, place) => {
    if (typeof each.id !== 'string' || found.has(each.id)) return;
    found.set(each.id, {
      id: each.id,
      number: plain.whole(each.number) ?? place + 1,
      x: plain.whole(each.x) ?? 0,
      y: plain.whole(each.y) ?? 0,
      group: plain.text(each.group),
      note: plain.text(each.note),
      part: plain.text(each.part),
    });
  });
  return found;
}

/** @param {plain.Facts} kept */
function readPasses(kept) {
  /** @type {Map<string, Pass>} */
  const found = new Map();
  for (const { id, how, values } of plain.mappings(kept.passes)) {
    if (typeof id !== 'string' || found.has(id)) continue;
    found.set(id, {
      id,
      number: found.size,
      how: typeof how === 'string' ? how : 'torque',
      values: plain.mappings(values).flatMap((each) => {
        const measured = plain.measured(each);
        return measured ? [{ group: plain.text(each.group), ...measured }] : [];
      }),
    });
  }
  return found;
}

/**
 * The kept sequence; what it leaves out follows in the pattern's own order.
 * @param {Map<string, Fastener>} fasteners
 * @param {string[]} kept
 * @param {unknown} pattern
 */
function wholeSequence(fasteners, kept, pattern) {
  const byNumber = plain.sorted(fasteners.values(), ({ number }) => number);
  const count = byNumber.length;
  let order = byNumber.map((_, i) => i + 1);
  if (typeof pattern === 'string' && sequence.PATTERNS.includes(pattern) && count > 0) {
    const rows = new Set(byNumber.map(({ y }) => y)).size;
    if (count <= sequence.MOST) order = sequence.order(pattern, count, rows);
  }
  const usual = order.map((place) => /** @type {Fastener} */ (byNumber[place - 1]).id);
  return plain.once([...kept.filter((each) => fasteners.has(each)), ...usual]);
}
