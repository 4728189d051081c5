/** Saves everything on this device to a file, in the form the computer exports and imports. */

import { read } from './transaction.js';
import { zip } from './zip.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./types.js').Kept} Kept
 */

const CHUNK = 2000;

/** @param {Kept} row @param {number} epoch one line of log.jsonl; a waiting entry has no number yet */
function line(row, epoch) {
  const seq = row.epoch === epoch && row.seq !== undefined ? `"seq":${row.seq},` : '';
  const order = row.order ? `"order":"${row.order}",` : '';
  return `{${seq}${order}"entry":${row.text}}\n`;
}

/** @param {Core} core @param {string} from @returns {Promise<{rows: Kept[], epoch: number}>} */
const chunk = (core, from) =>
  read(core, ['entry', 'meta'], async (tx) => {
    const range = IDBKeyRange.lowerBound(from, true);
    const [rows, sync] = await Promise.all([
      tx.objectStore('entry').getAll(range, CHUNK),
      tx.objectStore('meta').get('sync'),
    ]);
    return { rows, epoch: sync.epoch };
  });

/** @param {Core} core */
async function log(core) {
  const parts = [];
  let from = '';
  for (;;) {
    const { rows, epoch } = await chunk(core, from);
    parts.push(new Blob(rows.map((row) => line(row, epoch))));
    if (rows.length < CHUNK) break;
    from = /** @type {Kept} */ (rows[rows.length - 1]).id;
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

/** @param {Core} core */
async function* files(core) {
  yield { name: 'log.jsonl', bytes: await log(core) };
  const names = await read(core, ['blob'], (tx) => tx.objectStore('blob').getAllKeys());
  for (const sha of names) {
    /** @type {Blob|undefined} */
    const blob = await read(core, ['blob'], (tx) => tx.objectStore('blob').get(sha));
    if (blob) yield { name: `photos/${sha}`, bytes: new Uint8Array(await blob.arrayBuffer()) };
  }
}

/**
 * Waiting, taken and refused entries alike, and every photo here. Struck-out refused ones stay
 * on this device only: the log would not take them.
 * @param {Core} core @returns {Promise<Blob>}
 */
export const saveToFile = (core) => zip(files(core), new Date(core.world.now()));
