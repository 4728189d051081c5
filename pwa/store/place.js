/** Finds out which thing each entry belongs to; a strike-out belongs to what its target is about. */

import { put, remove } from './transaction.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {import('./types.js').Kept} Kept
 * @typedef {{id: string, target: string}} Orphan
 */

export const STRIKE_OUT = 'strike-out';

/** The tables that placing reads and writes. */
export const PLACING = ['entry', 'orphan'];

/**
 * @param {import('./types.js').Entry} entry @param {string} text @param {string} [order]
 * @returns {Kept}
 */
export function rowOf(entry, text, order) {
  const subject = entry.heading === STRIKE_OUT ? '' : entry.about;
  const row = { id: entry.id, subject, about: entry.about, text };
  return order ? { ...row, order } : row;
}

/**
 * Follows a strike-out to its target, through strikes of strikes, within what is here.
 * @param {Tx} tx @param {Kept} row @param {Map<string, Kept>} batch @param {Set<string>} seen
 * @returns {Promise<string>}
 */
async function subjectOf(tx, row, batch, seen) {
  if (row.subject || seen.has(row.id)) return row.subject;
  seen.add(row.id);
  const target = batch.get(row.about) ?? (await tx.objectStore('entry').get(row.about));
  return target ? subjectOf(tx, target, batch, seen) : '';
}

/**
 * Strike-outs that waited for one of these rows find their subject now.
 * @param {Tx} tx @param {Kept[]} rows @param {Promise<Orphan[]>} asked @returns {Promise<string[]>} the subjects touched
 */
async function settleOrphans(tx, rows, asked) {
  const orphans = await asked;
  if (!orphans.length) return [];
  /** @type {Map<string, string[]>} */
  const waiting = new Map();
  for (const { id, target } of orphans) waiting.set(target, [...(waiting.get(target) ?? []), id]);
  const touched = [];
  const found = rows.filter((row) => row.subject);
  for (const row of found) {
    for (const id of waiting.get(row.id) ?? []) {
      const strike = { ...(await tx.objectStore('entry').get(id)), subject: row.subject };
      put(tx, 'entry', strike);
      remove(tx, 'orphan', id);
      touched.push(row.subject);
      found.push(strike);
    }
  }
  return touched;
}

/** Strike-outs whose target has not come yet. @param {Tx} tx @returns {Promise<Orphan[]>} */
export const orphansOf = (tx) => tx.objectStore('orphan').getAll();

/**
 * Gives every row its subject and writes it.
 * @param {Tx} tx @param {Kept[]} rows
 * @param {Promise<Orphan[]>} [orphans] where they have been asked for already
 * @returns {Promise<Set<string>>} the subjects touched
 */
export async function placeRows(tx, rows, orphans = orphansOf(tx)) {
  const batch = new Map(rows.map((row) => [row.id, row]));
  for (const row of rows)
    if (!row.subject) row.subject = await subjectOf(tx, row, batch, new Set());
  for (const row of rows) {
    put(tx, 'entry', row);
    if (!row.subject) put(tx, 'orphan', { id: row.id, target: row.about });
  }
  const touched = new Set(rows.map((row) => row.subject));
  for (const subject of await settleOrphans(tx, rows, orphans)) touched.add(subject);
  touched.delete('');
  return touched;
}
