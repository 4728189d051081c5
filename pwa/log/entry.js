/** One entry: its fields, and the check that takes it or says why not. */
import { EntryTooLarge, FieldShape, NotAnObject, TextNotClean } from '../errors.js';
import { canonical, deepest, Flaw, parse } from './clean.js';
import { headings, spoken } from './headings/index.js';
import {
  count,
  entryId,
  facts,
  id,
  lines,
  may,
  mayBe,
  must,
  shape,
  stampText,
  text,
  words,
} from './shapes.js';
import { isStamp } from './stamp.js';
import { refusal } from './trouble.js';

export const MOST_BYTES = 64 * 1024;
export const DEEPEST = 16;
const MOST_AFTER = 8;
const utf8 = new TextEncoder();

const envelope = shape({
  id: must(entryId),
  heading: must(id),
  about: must(id),
  device: must(id),
  n: must(count),
  stamp: must(stampText),
  made: must(words),
  by: may(text),
  v: must(count),
  after: mayBe(lines(id, MOST_AFTER)),
  repairs: mayBe(id),
  body: must(facts),
});

/**
 * An entry that may be kept: its facts, and the canonical text that is stored.
 * @typedef {{facts: import('./values.js').Entry, text: string}} Taken
 */

/**
 * Check one entry.
 * @param {unknown} given
 * @returns {Taken}
 * @throws {import('../errors.js').Refusal} that says what to repair
 */
export function take(given) {
  if (given instanceof Flaw) throw given.refusal;
  if (typeof given !== 'object' || given === null || Array.isArray(given)) throw new NotAnObject();
  const entry = /** @type {import('./values.js').Entry} */ (given);
  const whole = canonical(entry);
  bounds(whole);
  const trouble = envelope(entry);
  if (trouble) throw refusal(trouble, 'this entry');
  const unwell = bodyRefusal(entry);
  if (unwell) throw unwell;
  return { facts: entry, text: whole };
}

/**
 * Why the body cannot be read; null for a heading or version not known here.
 * @param {import('./values.js').Entry} entry
 */
export function bodyRefusal(entry) {
  const heading = headings.get(entry.heading);
  if (!heading || entry.v > heading.v) return null;
  const trouble = heading.check(entry.body);
  return trouble ? refusal(trouble, spoken(heading, entry.body)) : null;
}

/**
 * Check the text of one entry.
 * @param {string} raw
 * @returns {Taken}
 */
export function read(raw) {
  return take(parse(raw));
}

/**
 * An element of `entries` on the wire: an entry, or one with the order it had.
 * @param {any} item
 * @returns {{facts: unknown, order: string | null}}
 */
export function unwrapped(item) {
  const names = typeof item === 'object' && item !== null ? Object.keys(item) : [];
  const wrapped = names.includes('entry') && names.every((name) => /^(order|entry)$/.test(name));
  if (!wrapped) return { facts: item, order: null };
  const order = item.order ?? null;
  if (order === null || (typeof order === 'string' && isStamp(order))) {
    return { facts: item.entry, order };
  }
  throw new FieldShape({ what: 'The order of this entry', trouble: 'is no stamp' });
}

/** @param {string} whole */
function bounds(whole) {
  const size = utf8.encode(whole).length;
  if (size > MOST_BYTES) throw new EntryTooLarge({ size });
  if (deepest(whole) > DEEPEST) {
    throw new TextNotClean({ trouble: `it is more than ${DEEPEST} levels deep` });
  }
}
