/** One holder: what is in here, where does it stand, what left it? */
import { standing, value } from '../log/workshop.js';
import { countsOf, holderRow, partRow } from './holder_rows.js';
import { noteLines } from './joint_lines.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./holder_rows.js').Row} Row */

const LATELY = 10;

/**
 * The record of a holder.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function holder(workshop, id) {
  const subject = workshop.subject(id);
  const rows = rowsOf(workshop, id);
  return {
    id,
    heading: subject?.heading ?? null,
    ...things.described(subject),
    name: plain.text(value(subject, 'name')),
    form: plain.text(value(subject, 'form')),
    note: plain.text(value(subject, 'note')),
    ...things.labels(workshop, id),
    ...things.lies(workshop, subject),
    chain: things.chain(workshop, id),
    rows,
    counts: countsOf(rows),
    next: nextOf(rows),
    lately: lately(workshop, id),
    after: { place: standing(subject, 'place').map((fact) => fact.id) },
    strikes: things.strikes(subject),
    lost: things.lost(subject),
    notes: noteLines(subject, ['note', 'photo']),
    unread: subject?.unread ?? [],
  };
}

/**
 * The parts that lie in a holder, as people count them: by name, then by id.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function pieces(workshop, id) {
  return inside(workshop, id, 'part');
}

/**
 * @param {Workshop} workshop
 * @param {string} id
 * @param {string} heading
 */
function inside(workshop, id, heading) {
  const found = workshop
    .linked(id, 'lies-in')
    .filter((each) => each.heading === heading && !each.hidden);
  return plain.sorted(found, byName);
}

/** @param {Subject} subject */
function byName(subject) {
  return [plain.natural(plain.text(value(subject, 'name'))), subject.id];
}

/**
 * One row for each kind of part, then the holders inside.
 * @param {Workshop} workshop
 * @param {string} id
 */
function rowsOf(workshop, id) {
  /** @type {Map<string, Subject[]>} */
  const groups = new Map();
  for (const each of pieces(workshop, id)) {
    const kind = plain.text(value(each, 'kind'));
    const key = kind ? `kind ${kind}` : `part ${each.id}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  const rows = [...groups.values()].map((group) => partRow(workshop, id, group));
  return [
    ...plain.sorted(rows, (row) => [plain.natural(row.name), row.kind ?? '', row.id ?? '']),
    ...inside(workshop, id, 'holder').map(holderRow),
  ];
}

/**
 * Inspect the first kind that was not judged yet, or open the only thing in it.
 * @param {Row[]} rows
 */
function nextOf(rows) {
  for (const row of rows) {
    const left = row.parts.filter(({ mark, gone }) => mark === 'look' && !gone);
    const [first] = left;
    if (first) return doing('inspect', row, first.id, left.length);
  }
  const [only, second] = rows;
  return only?.id && !second ? doing('open', only, null, 0) : doing('none', null, null, 0);
}

/**
 * @param {string} what
 * @param {Row | null} row
 * @param {string | null} part
 * @param {number} left
 */
function doing(what, row, part, left) {
  const { id = null, heading = null, kind = null, name = null, parts = [] } = row ?? {};
  const of = what === 'open' ? 1 : parts.filter(({ mark }) => mark !== 'empty').length;
  return { do: what, id, heading, kind, name, part, left, of };
}

/**
 * What left it: the newest first, with where it went.
 * @param {Workshop} workshop
 * @param {string} id
 */
function lately(workshop, id) {
  const here = new Set(workshop.linked(id, 'lies-in').map((each) => each.id));
  const lines = workshop.linked(id, 'lay-in').flatMap((each) => {
    const now = standing(each, 'place').at(-1);
    if (!now || here.has(each.id) || each.hidden) return [];
    const to = plain.text(now.body.in);
    const line = {
      id: each.id,
      heading: each.heading,
      name: plain.text(value(each, 'name')),
      to,
      to_name: things.nameOf(workshop, to),
      where: plain.text(now.body.where),
      gone: plain.text(now.body.gone),
      made: now.made,
    };
    return [{ at: [now.order, each.id], line }];
  });
  const newest = plain.sorted(lines, ({ at }) => at).reverse();
  return newest.slice(0, LATELY).map(({ line }) => line);
}
