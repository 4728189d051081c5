/** How many a part is: counted, added, taken, and made single piece by piece. */
import { value } from '../log/workshop.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */

/**
 * Whether nothing is left of a counted part, because its pieces are single.
 * @param {Subject | null} subject
 */
export function emptied(subject) {
  return single(subject).length > 0 && (quantity(subject) ?? 0) <= 0;
}

/**
 * The single pieces of a counted part: taken by name and not counted together again. Two devices
 * that take the same pieces take them once.
 * @param {Subject | null} subject
 * @returns {string[]}
 */
export function single(subject) {
  /** @type {string[]} */
  let out = [];
  const facts = subject?.facts.filter(({ struck }) => !struck) ?? [];
  for (const { heading, body } of facts) {
    const pieces = plain.texts(body.pieces);
    if (heading === 'take') out = [...out, ...pieces];
    if (heading === 'add') out = out.filter((id) => !pieces.includes(id));
  }
  return plain.once(out);
}

/**
 * How many: as described, one where nothing is said, plus what was added, less what was taken.
 * Below zero is shown as it is: somebody took more than was there.
 * @param {Subject | null} subject
 */
export function quantity(subject) {
  if (!subject) return null;
  const said = plain.whole(value(subject, 'quantity')) ?? 1;
  return said + counted(subject, 'add') - counted(subject, 'take') - single(subject).length;
}

/**
 * How many are left of it when so many are used in sets.
 * @param {Subject | null} subject
 * @param {number | undefined} used
 */
export function left(subject, used) {
  const all = quantity(subject);
  return all !== null && used ? Math.max(0, all - used) : all;
}

/**
 * @param {Subject} subject
 * @param {string} heading
 */
function counted({ facts }, heading) {
  const found = facts.filter((fact) => fact.heading === heading && fact.struck === null);
  const unnamed = found.filter(({ body }) => plain.texts(body.pieces).length === 0);
  return unnamed.reduce((sum, { body }) => sum + (plain.whole(body.count) ?? 0), 0);
}
