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

/** @param {Tx} tx @param {string} id @param {Promise<Set<string>>} marked @returns {Promise<Subject|null>} */
async function load(tx, id, marked) {
  /** @type {[Set<string>, SubjectRow|undefined]} */
  const [dirty, row] = await Promise.all([marked, tx.objectStore('subject').get(id)]);
  if (dirty.has(id)) return folded(id, await rowsOf(tx, id));
  return row?.value ?? null;
}

/** @param {Tx} tx @param {Promise<Set<string>>} marked what waits to be folded; it is folded for this question alone */
export function makeReader(tx, marked) {
  /** @type {Map<string, Promise<Subject|null>>} */
  const asked = new Map();

  /** @param {string} id */
  function get(id) {
    const had = asked.get(id) ?? load(tx, id, marked);
    asked.set(id, had);
    return had;
  }

  /** @param {SubjectRow} row @param {Set<string>} dirty */
  function add({ id, value }, dirty) {
    if (!dirty.has(id) && !asked.has(id)) asked.set(id, Promise.resolve(value));
    return get(id);
  }

  /** @param {string} index @param {string} key @param {number} [most] @returns {Promise<Subject[]>} */
  async function rows(index, key, most) {
    const [dirty, found] = await Promise.all([
      marked,
      tx.objectStore('subject').index(index).getAll(key, most),
    ]);
    return present(await Promise.all(found.map((row) => add(row, dirty))));
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
    /** How many point to it in this role, without reading them. @param {string} id @param {string} role @returns {Promise<number>} */
    count: (id, role) => tx.objectStore('subject').index('links').count(`${role} ${id}`),
    /** The ids of what an index holds under a key, without reading it. @param {string} index @param {string} key @returns {Promise<string[]>} */
    ids: (index, key) => tx.objectStore('subject').index(index).getAllKeys(key),
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
    const dirty = tx.objectStore('dirty').getAllKeys();
    return work(
      makeReader(
        tx,
        dirty.then((ids) => new Set(ids)),
      ),
    );
  });
}
