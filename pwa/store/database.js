/** Opens the database of one workshop. No other file in the page says indexedDB. */

import { deleteDB, openDB } from 'idb';
import { TABLES, VERSION } from './schema.js';

/** @typedef {import('./types.js').Database} Database */

/** @param {import('idb').IDBPDatabase<any>} db */
function build(db) {
  for (const [name, table] of Object.entries(TABLES)) {
    const made = db.createObjectStore(name, table.key ? { keyPath: table.key } : {});
    for (const [index, { path, many }] of Object.entries(table.indexes ?? {}))
      made.createIndex(index, path, { multiEntry: many === true });
  }
}

/**
 * @param {string} name
 * @param {{onClosed?: () => void, onBlocked?: () => void}} [hear] closed: another tab wants a newer
 *   shape, or the browser threw the storage away; blocked: another tab keeps the old shape open
 * @returns {Promise<Database>}
 */
export async function openDatabase(name, hear = {}) {
  const db = await openDB(name, VERSION, {
    upgrade: (made) => build(made),
    blocked: () => hear.onBlocked?.(),
    blocking: () => {
      db.close();
      hear.onClosed?.();
    },
    terminated: () => hear.onClosed?.(),
  });
  return /** @type {any} */ (db);
}

/**
 * Which workshop's database this device uses now. A second, tiny database, because it must be
 * readable before the first is opened.
 * @returns {Promise<{current(): Promise<string|undefined>, of(workshop: string): Promise<string|undefined>,
 *   choose(workshop: string, name: string): Promise<void>}>}
 */
export async function openDirectory() {
  const db = await openDB('witnessmark-directory', 1, {
    upgrade: (made) => void made.createObjectStore('name'),
    blocking: () => db.close(),
  });
  return {
    current: () => db.get('name', 'current'),
    of: (workshop) => db.get('name', `workshop ${workshop}`),
    choose: async (workshop, name) => {
      const tx = db.transaction('name', 'readwrite', { durability: 'strict' });
      void tx.store.put(name, 'current');
      void tx.store.put(name, `workshop ${workshop}`);
      await tx.done;
    },
  };
}

/** @param {string} name */
export const removeDatabase = (name) => deleteDB(name);
