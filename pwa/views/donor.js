/** A donor: what came from it, what is known of that, and what was paid. */
import { value } from '../log/workshop.js';
import { countsOf, partRow } from './holder_rows.js';
import { noteLines } from './joint_lines.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/**
 * The record of a donor.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function donor(workshop, id) {
  const subject = workshop.subject(id);
  const parts = partsOf(workshop, id);
  const rows = rowsOf(workshop, id, parts);
  return {
    id,
    heading: subject?.heading ?? null,
    ...things.described(subject),
    name: plain.text(value(subject, 'name')),
    engine: plain.text(value(subject, 'engine')),
    note: plain.text(value(subject, 'note')),
    bought: plain.text(value(subject, 'bought')),
    rows,
    counts: countsOf(rows),
    paid: [subject, ...parts].flatMap(paid),
    notes: noteLines(subject, ['note', 'photo']),
    lost: things.lost(subject),
  };
}

/**
 * The parts that came from it, as people count them; a counted part whose pieces are all single
 * is told by those.
 * @param {Workshop} workshop
 * @param {string} id
 */
function partsOf(workshop, id) {
  const found = workshop
    .linked(id, 'from-donor')
    .filter((each) => each.heading === 'part' && !each.hidden && !things.emptied(each));
  return plain.sorted(found, (each) => [plain.natural(plain.text(value(each, 'name'))), each.id]);
}

/**
 * One row for each kind, with where each part of it was.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {Subject[]} parts
 */
function rowsOf(workshop, id, parts) {
  /** @type {Map<string, Subject[]>} */
  const groups = new Map();
  for (const each of parts) {
    const kind = plain.text(value(each, 'kind'));
    const key = kind ? `kind ${kind}` : `part ${each.id}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  const rows = [...groups.values()].map((group) => ({
    ...partRow(workshop, id, group),
    from: group.map((each) => plain.text(value(each, 'from'))),
  }));
  return plain.sorted(rows, (row) => [plain.natural(row.name), row.kind ?? '', row.id ?? '']);
}

/** What was paid for it or for a part of it. @param {Subject | null} subject */
function paid(subject) {
  const facts = subject?.facts.filter(({ heading, struck }) => heading === 'purchase' && !struck);
  return (facts ?? []).map(({ id, body }) => ({
    id,
    name: plain.text(value(subject, 'name')),
    price: plain.measured(body.price),
    seller: plain.text(body.seller),
  }));
}
