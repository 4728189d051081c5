/** Photos on this device: kept under their digest, fetched when looked at, bounded when pulled ahead. */

import { put, read, write } from './transaction.js';
import { getFile } from './wire.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./types.js').PhotoRow} PhotoRow
 */

/** @param {ArrayBuffer} bytes */
async function digestOf(bytes) {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Keeps a photo that was just taken, on the disk before this resolves. It is sent after the entries.
 * @param {Core} core @param {Blob} blob @returns {Promise<string>} its digest, to be named in an entry
 */
export async function keepPhoto(core, blob) {
  const sha = await digestOf(await blob.arrayBuffer());
  await write(core, ['photo', 'blob'], 'strict', async (tx) => {
    const had = await tx.objectStore('photo').get(sha);
    if (had?.state === 'held') return;
    put(tx, 'blob', blob, sha);
    put(tx, 'photo', { sha, stamp: '', ...had, state: 'waiting', size: blob.size });
  });
  core.changed([]);
  return sha;
}

/** @param {Core} core @param {string} sha @returns {Promise<Blob|null>} */
const held = (core, sha) =>
  read(core, ['blob'], async (tx) => (await tx.objectStore('blob').get(sha)) ?? null);

/** @param {Core} core @param {string} sha @returns {Promise<Blob|null>} null: it has not arrived here yet */
export async function photo(core, sha) {
  return (await held(core, sha)) ?? (core.pairing?.key ? fetchPhoto(core, sha) : null);
}

/**
 * @param {Core} core @param {string} sha
 * @returns {Promise<Blob|null>} null: no contact, or not there yet, or not what its name promises
 */
export async function fetchPhoto(core, sha) {
  const outcome = await getFile(core.line(), `/photos/${sha}`);
  if (outcome.kind !== 'ok') return null;
  const blob = /** @type {Blob} */ (outcome.body);
  if ((await digestOf(await blob.arrayBuffer())) !== sha) return null;
  await write(core, ['photo', 'blob'], 'relaxed', async (tx) => {
    const had = await tx.objectStore('photo').get(sha);
    put(tx, 'blob', blob, sha);
    put(tx, 'photo', { sha, stamp: '', ...had, state: 'held', size: blob.size });
  });
  return blob;
}
