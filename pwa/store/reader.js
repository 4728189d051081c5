/** Reads the subjects of one question, each once, within one transaction. */

import { folded, rowsOf } from './fold.js';
import { read } from './transaction.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {import('./types.js').SubjectRow} SubjectRow
 * @typedef {import('../log/values.js').Subject} Subject
 * @typedef {ReturnType<typeof makeReader>} Reader
 */

const TABLES = ['subject', 'entry', 'dirty'];

/** @param {Tx} tx @param {string} id @param {Set<string>} dirty @returns {Promise<Subject|null>} */
async function load(tx, id, dirty) {
  if (dirty.has(id)) return folded(id, await rowsOf(tx, id));
  /** @type {SubjectRow|undefined} */
  const row = await tx.objectStore('subject').get(id);
  return row?.value ?? null;
}

/** @param {Tx} tx @param {Set<string>} dirty what waits to be folded; it is folded for this question alone */
export function makeReader(tx, dirty) {
  /** @type {Map<string, Promise<Subject|null>>} */
  const asked = new Map();

  /** @param {string} id */
  function get(id) {
    const had = asked.get(id) ?? load(tx, id, dirty);
    asked.set(id, had);
    return had;
  }

  /** @param {SubjectRow} row */
  function add({ id, value }) {
    if (!dirty.has(id) && !asked.has(id)) asked.set(id, Promise.resolve(value));
    return get(id);
  }

  /** @param {string} index @param {string} key @param {number} [most] @returns {Promise<Subject[]>} */
  async function rows(index, key, most) {
    const found = await tx.objectStore('subject').index(index).getAll(key, most);
    return present(await Promise.all(found.map(add)));
  }

  return {
    get,
    /** @param {Iterable<string>} ids */
    all: async (ids) => present(await Promise.all([...new Set(ids)].map(get))),
    /** @param {string} id @param {string[]} roles */
    linked: async (id, ...roles) =>
      (await Promise.all(roles.map((role) => rows('links', `${role} ${id}`)))).flat(),
    /** @param {string} word */
    heading: (word) => rows('heading', word),
    /** @param {string} word */
    wanting: (word) => rows('wants', word),
    /** Everything read so far. */
    found: async () => present(await Promise.all(asked.values())),
  };
}

/** @param {(Subject|null)[]} subjects @returns {Subject[]} */
const present = (subjects) => subjects.flatMap((one) => (one ? [one] : []));

/**
 * @template T
 * @param {import('./core.js').Core} core @param {(reader: Reader) => Promise<T>} work
 */
export function reading(core, work) {
  return read(core, TABLES, async (tx) => {
    const dirty = await tx.objectStore('dirty').getAllKeys();
    return work(makeReader(tx, new Set(dirty)));
  });
}
