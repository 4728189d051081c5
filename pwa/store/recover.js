/**
 * When the computer's log is no longer the one this device followed (an old backup was brought
 * back): forget the numbers, hear everything anew, then send what the log has not.
 */

import { put, write } from './transaction.js';

/** @typedef {import('./types.js').SyncRow} SyncRow */

const HOUR = 3_600_000;
const CHUNK = 1000;

/**
 * Begins again at nothing. A new epoch makes every number of the old one void without touching
 * the rows; those that are not numbered anew by the end are sent.
 * @param {import('./core.js').Core} core
 */
export function forget(core) {
  return write(core, ['meta'], 'relaxed', async (tx) => {
    /** @type {SyncRow} */
    const sync = await tx.objectStore('meta').get('sync');
    const fresh = { cursor: null, count: 0, digest: '0'.repeat(64), head: 0, agreed: null };
    const recovering = /** @type {const} */ ('pull');
    const marks = {
      epoch: sync.epoch + 1,
      recovering,
      recovered: core.world.now(),
      askPhotos: true,
    };
    put(tx, 'meta', { ...sync, ...fresh, ...marks }, 'sync');
  });
}

/** @param {SyncRow} sync @param {number} now whether an hour has passed, so that it may be done again */
export const mayRecover = (sync, now) => Math.abs(now - sync.recovered) >= HOUR;

/**
 * The second half: every entry the log did not hand out waits again, refused ones excepted.
 * @param {import('./core.js').Core} core
 */
export async function waitAgain(core) {
  /** @type {string|null} */
  let from = '';
  while (from !== null) from = await chunk(core, from);
  await write(core, ['meta'], 'relaxed', async (tx) => {
    const sync = await tx.objectStore('meta').get('sync');
    put(tx, 'meta', { ...sync, recovering: null }, 'sync');
  });
}

/**
 * @param {import('./core.js').Core} core @param {string} from
 * @returns {Promise<string|null>} the last id looked at, or null at the end
 */
function chunk(core, from) {
  return write(core, ['meta', 'entry', 'outbox', 'refused'], 'relaxed', async (tx) => {
    const { epoch } = await tx.objectStore('meta').get('sync');
    const refused = new Set(await tx.objectStore('refused').getAllKeys());
    const rows = await tx.objectStore('entry').getAll(IDBKeyRange.lowerBound(from, true), CHUNK);
    for (const row of rows)
      if (row.epoch !== epoch && !refused.has(row.id)) put(tx, 'outbox', { id: row.id });
    return rows.length < CHUNK ? null : rows[rows.length - 1].id;
  });
}
