/** Which photos the entries name, and where each of them is: waiting, here, or still away. */

import { later } from './clock.js';
import { put } from './transaction.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {import('./types.js').Kept} Kept
 * @typedef {import('./types.js').PhotoRow} PhotoRow
 */

const NAMED = /"(?:photo|drawing|good_photo|bad_photo)":"([0-9a-f]{64})"/g;

/** Headings whose pictures a torque or a fit is read from; these come to the phone first. */
const SPEC = /"heading":"(?:joint|kind|step)"/;

/**
 * @param {Kept[]} rows
 * @returns {Map<string, {stamp: string, spec: boolean}>} by digest, with the newest naming it
 */
export function photosNamed(rows) {
  const found = new Map();
  for (const { text } of rows.filter(
    (row) => row.text.includes('photo"') || row.text.includes('"drawing"'),
  )) {
    const stamp = /"stamp":"([0-9a-f-]{17})"/.exec(text)?.[1] ?? '';
    for (const [, sha] of text.matchAll(NAMED)) {
      const had = found.get(sha);
      found.set(sha, {
        stamp: later(had?.stamp ?? '', stamp),
        spec: had?.spec === true || SPEC.test(text),
      });
    }
  }
  return found;
}

/** @param {Tx} tx @param {Kept[]} rows */
export async function notePhotos(tx, rows) {
  for (const [sha, { stamp, spec }] of photosNamed(rows)) {
    /** @type {PhotoRow|undefined} */
    const had = await tx.objectStore('photo').get(sha);
    const row = had ?? { sha, state: 'away', stamp, size: 0 };
    put(tx, 'photo', { ...row, stamp: later(row.stamp, stamp), spec: spec || row.spec === true });
  }
}
