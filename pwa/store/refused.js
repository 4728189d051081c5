/** Entries the computer would not take. They stay, with the reason, until a person has dealt with them. */

import { FieldShape } from '../errors.js';
import { localTime } from './clock.js';
import { refold } from './fold.js';
import { keep } from './keep.js';
import { KEEPING } from './schema.js';
import { put, read, remove, write } from './transaction.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./types.js').Refusal} Refusal
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {{id: string, entry: any, photo?: string, code: string, says: string, next: string,
 *   at: number, given: {reason: string, made: string}|null}} Shown
 */

/** @param {Refusal} row @returns {Shown} */
const shown = ({ id, text, code, says, next, at, given }) => ({
  id,
  entry: JSON.parse(text),
  code,
  says,
  next,
  at,
  given: given ?? null,
});

/** @param {import('./types.js').PhotoRow} row @returns {Shown} */
const shownPhoto = ({ sha, code = '', says = '', next = '' }) => ({
  id: sha,
  entry: null,
  photo: sha,
  code,
  says,
  next,
  at: 0,
  given: null,
});

/**
 * @param {Core} core @param {{given?: boolean}} [which] given: those given up, kept for reading
 * @returns {Promise<Shown[]>}
 */
export function refused(core, { given = false } = {}) {
  return read(core, ['refused', 'photo'], async (tx) => {
    /** @type {Refusal[]} */
    const rows = await tx.objectStore('refused').getAll();
    if (given) return rows.filter((row) => row.given).map(shown);
    const photos = await tx.objectStore('photo').index('state').getAll('refused');
    const open = rows.filter((row) => !row.given && !row.repaired);
    return [...open.map(shown), ...photos.map(shownPhoto)];
  });
}

/**
 * @param {Core} core @param {{id: string, text: string}} row
 * @param {{code: string, says: string, next: string}} why
 */
export async function refuseHere(core, { id, text }, why) {
  await write(core, ['outbox', 'refused'], 'strict', async (tx) => {
    if (!(await tx.objectStore('outbox').get(id))) return;
    remove(tx, 'outbox', id);
    put(tx, 'refused', { id, text, ...why, at: core.world.now() });
  });
  await core.heard([]);
}

/**
 * Takes a refused entry out of what the screens read, unless the log has its own of that id.
 * @param {Tx} tx @param {Refusal} row @returns {Promise<string[]>} the subject touched
 */
async function takeOut(tx, row) {
  const kept = await tx.objectStore('entry').get(row.id);
  if (!kept || kept.text !== row.text) return [];
  put(tx, 'entry', { ...kept, out: true });
  return [kept.subject];
}

/**
 * A new entry in the place of a refused one; both in one transaction.
 * @param {Core} core @param {string} id @param {import('./types.js').Draft} draft
 */
export function repair(core, id, draft) {
  return keep(core, [{ ...draft, repairs: id }], async (tx, [made]) => {
    const row = await tx.objectStore('refused').get(id);
    if (!row) return [];
    put(tx, 'refused', { ...row, repaired: made?.id });
    return takeOut(tx, row);
  });
}

/** @param {Core} core @param {string} id */
export async function sendAgain(core, id) {
  const touched = await write(core, KEEPING, 'strict', async (tx) => {
    const photo = await tx.objectStore('photo').get(id);
    if (photo) put(tx, 'photo', { ...photo, state: 'waiting' });
    const row = await tx.objectStore('refused').get(id);
    const kept = await tx.objectStore('entry').get(id);
    if (!row || kept?.text !== row.text) return [];
    remove(tx, 'refused', id);
    put(tx, 'outbox', { id });
    const { out: _out, ...back } = kept;
    put(tx, 'entry', back);
    await refold(tx, [kept.subject]);
    return [kept.subject];
  });
  core.changed(touched);
}

/**
 * Strikes out a refused entry: it counts for nothing, and stays in the list of those given up.
 * @param {Core} core @param {string} id @param {string} reason
 */
export async function giveUp(core, id, reason) {
  if (reason.trim() === '') throw new FieldShape({ what: 'The reason', trouble: 'is blank' });
  const made = localTime(core.world.now());
  const touched = await write(core, KEEPING, 'strict', async (tx) => {
    const photo = await tx.objectStore('photo').get(id);
    if (photo) put(tx, 'photo', { ...photo, state: 'given' });
    const row = await tx.objectStore('refused').get(id);
    if (!row) return [];
    put(tx, 'refused', { ...row, given: { reason, made } });
    const subjects = await takeOut(tx, row);
    await refold(tx, subjects);
    return subjects;
  });
  core.changed(touched);
}
