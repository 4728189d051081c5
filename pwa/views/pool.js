/** Which pieces of a kind may be used, what they measure, and which are held off and why. */
import { value } from '../log/workshop.js';
import { placeOf } from './own_place.js';
import * as plain from './plain.js';
import { measuresOf, sizeOf } from './sizes.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/**
 * The pool of a kind over all donors and the shelf.
 * @param {Workshop} workshop
 * @param {string} kind
 * @param {string | null} [own] the set that is being chosen; its own pieces are not held off
 */
export function pool(workshop, kind, own = null) {
  const found = workshop.subject(kind);
  const measures = measuresOf(found);
  const taken = inSets(workshop, own);
  const parts = workshop
    .all('part')
    .filter((part) => value(part, 'kind') === kind && !things.emptied(part));
  const lines = parts.map((part) => line(workshop, part, measures, taken));
  const all = plain.sorted(lines, ({ name, id }) => [plain.natural(name), id]);
  return {
    kind,
    name: plain.text(value(found, 'name')),
    plural: plain.text(value(found, 'plural')),
    measures,
    pieces: all.filter(({ why }) => why === null),
    off: all.filter(({ why }) => why !== null),
  };
}

/**
 * Which standing set a piece is in, by piece.
 * @param {Workshop} workshop
 * @param {string | null} [own] a set that is left out
 */
export function inSets(workshop, own = null) {
  /** @type {Map<string, string>} */
  const taken = new Map();
  for (const set of workshop.all('set').filter(({ id }) => id !== own)) {
    for (const { part } of plain.mappings(value(set, 'pieces'))) taken.set(part, set.id);
  }
  return taken;
}

/**
 * How many of each part the standing sets use; a counted part is named as often as it is used.
 * @param {Workshop} workshop
 * @returns {Map<string, number>}
 */
export function usedInSets(workshop) {
  const used = new Map();
  for (const set of workshop.all('set')) {
    for (const { part } of plain.mappings(value(set, 'pieces')))
      used.set(part, (used.get(part) ?? 0) + 1);
  }
  return used;
}

/**
 * @param {Workshop} workshop
 * @param {Subject} part
 * @param {import('./sizes.js').Measure[]} measures
 * @param {Map<string, string>} taken
 */
function line(workshop, part, measures, taken) {
  const sizes = measures.map((measure) => {
    const found = sizeOf(part, measure);
    return found && { size: found.size, decimals: found.decimals };
  });
  const donor = plain.text(value(part, 'donor'));
  const set = taken.get(part.id) ?? null;
  const mark = things.mark(part);
  return {
    id: part.id,
    name: plain.text(value(part, 'name')),
    donor: donor && { id: donor, name: things.nameOf(workshop, donor) },
    verdict: mark,
    own_place: placeOf(workshop, part.id),
    sizes,
    set: set && { id: set, name: things.nameOf(workshop, set) },
    why: whyNot(part, mark, set, sizes),
  };
}

/**
 * @param {Subject} part
 * @param {string} mark
 * @param {string | null} set
 * @param {unknown[]} sizes
 * @returns {string | null}
 */
function whyNot(part, mark, set, sizes) {
  if (mark !== 'use' && mark !== 'spare') return WHY[mark] ?? 'not-inspected';
  if (things.quantity(part) !== 1) return 'counted';
  if (things.isFitted(part)) return 'fitted';
  if (set !== null) return 'in-set';
  if (things.isGone(part)) return 'away';
  return sizes.some(Boolean) ? null : 'no-reading';
}

/** @type {Readonly<Record<string, string>>} */
const WHY = Object.freeze({ scrap: 'scrap', machine: 'machine', ask: 'two-verdicts' });
