/** The photos of a thing: what names them, what was pointed at on them, what its kind shows. */
import { value } from '../log/workshop.js';
import { madeBy, photos as named } from './joint_lines.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */

/**
 * Every photo that a fact about it names, newest first, and the examples of its kind. A photo named
 * twice stands once, with the newest fact that names it and is not struck out.
 * @param {Workshop} workshop
 * @param {string} about
 */
export function pictures(workshop, about) {
  const subject = workshop.subject(about);
  const ofKind = plain.text(value(subject, 'kind')) ?? '';
  const kind = subject?.heading === 'kind' ? subject : workshop.subject(ofKind);
  return {
    id: about,
    heading: subject?.heading ?? null,
    name: plain.text(value(subject, 'name')),
    photos: photosOf(subject),
    examples: examples(kind),
  };
}

/**
 * The owner's photos of what is good and what is not, in the order of the criteria.
 * @param {Subject | null} kind
 */
export function examples(kind) {
  if (!kind) return [];
  return plain.mappings(value(kind, 'criteria')).flatMap((each) =>
    ['good', 'bad'].flatMap((side) => {
      const photo = plain.text(each[`${side}_photo`]);
      if (!photo) return [];
      const criterion = plain.text(each.id);
      const asks = plain.text(each.asks);
      return [{ photo, about: kind.id, criterion, asks, side, says: plain.text(each[side]) }];
    }),
  );
}

/**
 * What was pointed at on a photo, oldest first; those that stand are numbered.
 * @param {Workshop} workshop
 * @param {string} about
 * @param {string} photo
 */
export function pointed(workshop, about, photo) {
  const facts = factsOf(workshop.subject(about)).filter(
    ({ heading, body }) => heading === 'pointed' && body.photo === photo,
  );
  const standing = facts.filter(({ struck }) => !struck);
  return facts.map((fact) => ({
    id: fact.id,
    number: standing.indexOf(fact) + 1 || null,
    from: plain.texts(fact.body.from),
    to: plain.texts(fact.body.to),
    note: plain.text(fact.body.note),
    ...madeBy(fact),
  }));
}

/** @param {Subject | null} subject */
function photosOf(subject) {
  /** @type {Map<string, ReturnType<typeof lineOf>>} */
  const lines = new Map();
  const facts = factsOf(subject).filter(({ heading }) => heading !== 'pointed');
  for (const fact of facts.reverse()) {
    for (const one of named(fact.body)) {
      const had = lines.get(one.photo);
      if (!had || (had.struck && !fact.struck)) lines.set(one.photo, lineOf(fact, one));
    }
  }
  return [...lines.values()];
}

/**
 * @param {Fact} fact
 * @param {{photo: string, says: string | null}} one
 */
function lineOf(fact, { photo, says }) {
  return {
    photo,
    says: says ?? plain.text(fact.body.text),
    heading: fact.heading,
    verdict: plain.text(fact.body.verdict),
    ...madeBy(fact),
  };
}

/** @param {Subject | null} subject */
const factsOf = (subject) => subject?.facts ?? [];
