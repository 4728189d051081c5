/** Which waiting entries go into the next request, and as what text. */

import { read } from './transaction.js';

/**
 * @typedef {import('./types.js').Kept} Kept
 * @typedef {{batch: {id: string, text: string}[], cursor: string|null, epoch: number, text: string}} Request
 */

/** Of what the computer allows (2 000 and 5 000), so much that a phone's screen does not stutter. */
export const MOST = 1000;
export const ROOM = 1000;

/** Below what the computer takes, with room for a text that packs badly. */
const PACKED_BYTES = 6 * 2 ** 20;
const PLAIN_BYTES = 1.5 * 2 ** 20;

/** @param {Kept} row */
const sent = ({ text, order }) => (order ? `{"order":"${order}","entry":${text}}` : text);

/** A cheap upper bound: a UTF-16 unit takes at most three bytes of UTF-8. @param {string} text */
function bytes(text) {
  let size = text.length;
  for (let at = 0; at < text.length; at += 1) if (text.charCodeAt(at) > 127) size += 2;
  return size;
}

/** @param {Kept[]} rows @param {number} most bytes @returns {Kept[]} at least one, if there is one */
function fitting(rows, most) {
  let size = 0;
  const end = rows.findIndex((row, at) => {
    size += bytes(row.text) + 40;
    return at > 0 && size > most;
  });
  return end < 0 ? rows : rows.slice(0, end);
}

/**
 * @param {import('./core.js').Core} core
 * @param {{most: number, room: number, packs: boolean, send: boolean}} how send false: nothing of
 *   this device's, as in the first half of a recovery
 * @returns {Promise<Request>}
 */
export function nextRequest(core, { most, room, packs, send }) {
  return read(core, ['meta', 'outbox', 'entry'], async (tx) => {
    const sync = await tx.objectStore('meta').get('sync');
    const ids = send ? await tx.objectStore('outbox').getAllKeys(undefined, most) : [];
    const found = await Promise.all(ids.map((id) => tx.objectStore('entry').get(id)));
    const batch = fitting(found.filter(Boolean), packs ? PACKED_BYTES : PLAIN_BYTES);
    const entries = batch.map(sent).join(',');
    const text = `{"cursor":${JSON.stringify(sync.cursor)},"entries":[${entries}],"room":${room}}`;
    return { batch, cursor: sync.cursor, epoch: sync.epoch, text };
  });
}
