/** The history of a part, of all parts of a kind, and of all that came from a donor. */
import { value } from '../log/workshop.js';
import { countsOf, reasonsOf } from './history_counts.js';
import { linesOf } from './history_lines.js';
import { plotsInSlices, plotsOf } from './history_points.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/** So many lines are told at first; older ones when they are asked for. */
export const MOST = 40;

/**
 * Every inspection, verdict and reading of a part, newest first, and its sizes over time.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function ofPart(workshop, id) {
  const subject = workshop.subject(id);
  const kind = workshop.subject(plain.asId(value(subject, 'kind')));
  const parts = subject ? [subject] : [];
  return {
    ...head(subject, id),
    kind: named(kind),
    donor: named(workshop.subject(plain.asId(value(subject, 'donor')))),
    from: plain.text(value(subject, 'from')),
    mark: things.mark(subject),
    measures: plotsOf(workshop, kind, parts),
    ...linesOf(workshop, parts),
  };
}

/**
 * All pieces of a kind: by verdict, by donor, why not, their sizes over time, the last lines.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {number | null} [most] how many lines are wanted
 */
export function ofKind(workshop, id, most) {
  return {
    ...ofKindWithoutSizes(workshop, id, most),
    measures: plotsOf(workshop, workshop.subject(id), partsOfKind(workshop, id)),
  };
}

/**
 * The same without its sizes over time, which are the long part.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {number | null} [most]
 */
export function ofKindWithoutSizes(workshop, id, most) {
  const subject = workshop.subject(id);
  const parts = partsOfKind(workshop, id);
  return {
    ...head(subject, id),
    plural: plain.text(value(subject, 'plural')),
    ...summed(workshop, parts, most),
    donors: grouped(workshop, parts, 'donor'),
  };
}

/**
 * Its sizes over time alone, told in slices.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {() => Promise<unknown>} breathe
 */
export const sizesOfKind = (workshop, id, breathe) =>
  plotsInSlices(workshop, workshop.subject(id), partsOfKind(workshop, id), breathe);

/** @param {Workshop} workshop @param {string} id */
const partsOfKind = (workshop, id) => whole(workshop.linked(id, 'of-kind'));

/**
 * Its lines alone, where more of them are wanted than were told at first.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {number} most
 */
export const linesOfKind = (workshop, id, most) =>
  linesOf(workshop, partsOfKind(workshop, id), most);

/**
 * All that came from a donor: by verdict, by kind, why not, the last lines.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {number | null} [most] how many lines are wanted
 */
export function ofDonor(workshop, id, most) {
  const parts = whole(workshop.linked(id, 'from-donor'));
  return {
    ...head(workshop.subject(id), id),
    ...summed(workshop, parts, most),
    kinds: grouped(workshop, parts, 'kind'),
  };
}

/** @param {Subject | null} subject @param {string} id */
function head(subject, id) {
  return {
    id,
    heading: subject?.heading ?? null,
    ...things.described(subject),
    name: plain.text(value(subject, 'name')),
    invented: value(subject, 'invented') === true,
  };
}

/** @param {Subject | null} subject */
const named = (subject) => subject && { id: subject.id, name: plain.text(value(subject, 'name')) };

/** Parts as people count them: one whose pieces are all single is told by those. @param {Subject[]} found */
const whole = (found) =>
  found.filter((each) => each.heading === 'part' && !each.hidden && !things.emptied(each));

/** @param {Workshop} workshop @param {Subject[]} parts @param {number | null | undefined} most */
const summed = (workshop, parts, most) => ({
  ...countsOf(parts),
  reasons: reasonsOf(parts),
  ...linesOf(workshop, parts, most ?? MOST),
});

/**
 * The same counts for each donor or kind; what names none comes last.
 * @param {Workshop} workshop
 * @param {Subject[]} parts
 * @param {string} field
 */
function grouped(workshop, parts, field) {
  /** @type {Map<string | null, Subject[]>} */
  const groups = new Map();
  for (const part of parts) {
    const id = plain.text(value(part, field));
    const group = groups.get(id);
    if (group) group.push(part);
    else groups.set(id, [part]);
  }
  const rows = [...groups].map(([id, group]) => ({
    id,
    name: things.nameOf(workshop, id),
    plural: id && plain.text(value(workshop.subject(id), 'plural')),
    ...countsOf(group),
  }));
  return plain.sorted(rows, (row) => [
    row.id === null ? 1 : 0,
    plain.natural(row.name),
    row.id ?? '',
  ]);
}
