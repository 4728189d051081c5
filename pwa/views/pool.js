/** Which pieces of a kind may be used, what they measure, and which are held off and why. */
import { value } from '../log/workshop.js';
import { isAway } from './away.js';
import { measured, READ } from './measured.js';
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
 * Which standing sets a piece is in, by piece; several where two devices chose the same piece, and
 * a person must say which of them keeps it.
 * @param {Workshop} workshop
 * @param {string | null} [own] a set that is left out
 * @returns {Map<string, string[]>}
 */
export function inSets(workshop, own = null) {
  const taken = new Map();
  for (const set of workshop.all('set').filter(({ id }) => id !== own)) {
    const parts = new Set(plain.mappings(value(set, 'pieces')).map(({ part }) => plain.asId(part)));
    for (const part of parts) taken.set(part, [...(taken.get(part) ?? []), set.id]);
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
 * @param {Map<string, string[]>} taken
 */
function line(workshop, part, measures, taken) {
  const sizes = measures.map((measure) => {
    const found = sizeOf(part, measure);
    return found && { size: found.size, decimals: found.decimals };
  });
  const donor = plain.text(value(part, 'donor'));
  const sets = taken.get(part.id) ?? [];
  const mark = things.mark(part);
  return {
    id: part.id,
    name: plain.text(value(part, 'name')),
    donor: donor && { id: donor, name: things.nameOf(workshop, donor) },
    verdict: mark,
    own_place: placeOf(workshop, part.id),
    sizes,
    outside: outsideOf(workshop, part, measures),
    sets: sets.map((id) => ({ id, name: things.nameOf(workshop, id) })),
    why: whyNot(part, mark, sets, sizes),
  };
}

/**
 * The measures on which its worst spot lies outside, as its record says.
 * @param {Workshop} workshop
 * @param {Subject} part
 * @param {import('./sizes.js').Measure[]} measures
 */
function outsideOf(workshop, part, measures) {
  if (!someBeyond(part, measures)) return [];
  const lines = measured(workshop, part.id);
  return lines.filter(({ verdict }) => verdict === 'outside').map(({ id, name }) => ({ id, name }));
}

/**
 * Whether any reading may lie beyond a limit: where none does, no spot can, and what all of them
 * tell need not be worked out for every piece of a large pool.
 * @param {Subject} part
 * @param {import('./sizes.js').Measure[]} measures
 */
function someBeyond(part, measures) {
  const limited = new Map(
    measures.filter(({ least, most }) => least || most).map((each) => [each.id, each]),
  );
  if (!limited.size) return false;
  const read = part.facts.filter(({ heading }) => READ.includes(heading));
  return read
    .flatMap(({ body }) => plain.mappings(body.readings))
    .some(({ measure, value: kept }) => {
      const known = limited.get(measure);
      return known !== undefined && !within(plain.measured(kept), known);
    });
}

/** @param {plain.Measured | null} read @param {import('./sizes.js').Measure} measure */
function within(read, { unit, least, most }) {
  if (!read || read.unit !== unit) return false;
  const size = Number(read.value);
  return size >= Number(least ?? -Infinity) && size <= Number(most ?? Infinity);
}

/**
 * @param {Subject} part
 * @param {string} mark
 * @param {string[]} sets
 * @param {unknown[]} sizes
 * @returns {string | null}
 */
function whyNot(part, mark, sets, sizes) {
  if (mark !== 'use' && mark !== 'spare') return WHY[mark] ?? 'not-inspected';
  if (things.quantity(part) !== 1) return 'counted';
  if (things.isFitted(part)) return 'fitted';
  if (sets.length) return 'in-set';
  if (isAway(part)) return 'away';
  return sizes.some(Boolean) ? null : 'no-reading';
}

/** @type {Readonly<Record<string, string>>} */
const WHY = Object.freeze({ scrap: 'scrap', machine: 'machine', ask: 'two-verdicts' });
