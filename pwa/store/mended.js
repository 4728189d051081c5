/** A slice that was read before, with the things touched since in the place of what they were. */

import { links, Workshop } from '../log/workshop.js';
import { reading } from './reader.js';

/**
 * @typedef {ReturnType<typeof Workshop>} Slice
 * @typedef {import('../log/values.js').Subject} Subject
 * @typedef {(subject: Subject) => boolean} Belongs
 */

/** More things than this are no quicker one by one. */
const FEW = 20;

/** What a slice was made of. @type {WeakMap<Slice, Subject[]>} */
const contents = new WeakMap();

/** @param {Subject[]} subjects */
export function sliceOf(subjects) {
  const workshop = Workshop(subjects);
  contents.set(workshop, subjects);
  return workshop;
}

/** How many things it holds. @param {Slice} workshop */
export const sizeOf = (workshop) => contents.get(workshop)?.length ?? 0;

/** @param {Subject} subject newest fact of its places */
export const lastMoved = (subject) =>
  subject.facts.reduce(
    (last, { heading, order }) => (heading === 'place' && order > last ? order : last),
    '',
  );

/** The instruments a part was read with. @param {Subject|null} found */
export const readWith = (found) =>
  (found?.facts ?? []).flatMap(({ body }) => {
    const readings = Array.isArray(body.readings) ? body.readings : [];
    return readings
      .map((each) => each?.instrument)
      .filter((id) => typeof id === 'string' && id !== '');
  });

/** All of a thing by which it brings others into a slice, or comes into one. @param {Subject} subject */
const ties = (subject) =>
  JSON.stringify([
    subject.heading,
    subject.hidden,
    links(subject).map(({ role, to }) => `${role} ${to}`),
    lastMoved(subject),
    [...new Set(readWith(subject))],
  ]);

/**
 * Touched things as they are now, null those that are gone; several questions about the same
 * write share one reading.
 * @param {import('./core.js').Core} core
 */
export function makeLatest(core) {
  let key = '';
  /** @type {Promise<Map<string, Subject | null>>} */
  let found = Promise.resolve(new Map());

  /** @param {Set<string>} touched @returns {typeof found} */
  return (touched) => {
    const asked = [core.written.count(), ...touched].join(' ');
    if (asked !== key) {
      key = asked;
      found = reading(core, async (reader) => {
        const each = [...touched].map(async (id) => [id, await reader.get(id)]);
        return new Map(/** @type {[string, Subject | null][]} */ (await Promise.all(each)));
      });
      found.catch(() => {
        key = '';
      });
    }
    return found;
  };
}

/** Whether its things may be changed one by one. @param {Slice} was @param {Set<string>} touched */
export const mendable = (was, touched) => contents.has(was) && touched.size <= FEW;

/**
 * The slice with the touched things as they are now; the very same where none of them belongs to
 * it; null where a thing came, went, or is tied otherwise than before: then all must be asked anew.
 * @param {Slice} was @param {Map<string, Subject | null>} now
 * @param {Belongs} belongs whether a thing that was not in it may be in it now
 * @returns {Slice | null}
 */
export function mended(was, now, belongs) {
  /** @type {Map<string, Subject>} */
  const fresh = new Map();
  for (const [id, subject] of now) {
    const before = was.subject(id);
    if (before && subject && ties(before) === ties(subject)) fresh.set(id, subject);
    else if (before || (subject && belongs(subject))) return null;
  }
  const had = contents.get(was) ?? [];
  return fresh.size ? sliceOf(had.map((one) => fresh.get(one.id) ?? one)) : was;
}
