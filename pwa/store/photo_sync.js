/** Sends photos after the entries, one at a time, and fetches those of others up to a limit. */

import { fetchPhoto } from './photos.js';
import { put, read, write } from './transaction.js';
import { post, putFile } from './wire.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./types.js').PhotoRow} PhotoRow
 * @typedef {import('./wire.js').Outcome} Outcome
 */

const DAY_MS = 86_400_000;
const ASKED_AT_ONCE = 1000;
export const LIMIT = 200 * 2 ** 20;

/** @param {Core} core @param {PhotoRow['state']} state @returns {Promise<PhotoRow[]>} */
const inState = (core, state) =>
  read(core, ['photo'], (tx) => tx.objectStore('photo').index('state').getAll(state));

/** @param {Core} core @param {string} sha @param {Partial<PhotoRow>} now */
const mark = (core, sha, now) =>
  write(core, ['photo'], 'relaxed', async (tx) => {
    const row = await tx.objectStore('photo').get(sha);
    if (row) put(tx, 'photo', { ...row, ...now });
  });

/**
 * @param {Core} core @param {PhotoRow} row
 * @returns {Promise<boolean>} whether the next one may be tried
 */
async function push(core, row) {
  const blob = await read(core, ['blob'], (tx) => tx.objectStore('blob').get(row.sha));
  if (!blob) {
    await mark(core, row.sha, { state: 'away' });
    return true;
  }
  const outcome = await putFile(core.line(), `/photos/${row.sha}`, blob);
  if (outcome.kind === 'ok') await mark(core, row.sha, { state: 'held' });
  if (outcome.kind !== 'problem') return outcome.kind === 'ok';
  const { status, code, says, next } = outcome;
  if (status === 401 || status === 409 || status === 429 || code === '') return false;
  await mark(core, row.sha, { state: 'refused', code, says, next });
  return true;
}

/**
 * After a fork and once a day: which of the photos here does the computer not have?
 * @param {Core} core
 */
async function askMissing(core) {
  const sync = await read(core, ['meta'], (tx) => tx.objectStore('meta').get('sync'));
  const now = core.world.now();
  if (!sync.askPhotos && Math.abs(now - sync.photosAsked) < DAY_MS) return;
  const rows = await inState(core, 'held');
  for (let at = 0; at < rows.length; at += ASKED_AT_ONCE) {
    const photos = rows.slice(at, at + ASKED_AT_ONCE).map(({ sha }) => sha);
    const outcome = await post(core.line(), '/photos/missing', JSON.stringify({ photos }));
    if (outcome.kind !== 'ok' || !Array.isArray(outcome.body.missing)) return;
    for (const sha of outcome.body.missing) await mark(core, sha, { state: 'waiting' });
  }
  await write(core, ['meta'], 'relaxed', async (tx) => {
    const row = await tx.objectStore('meta').get('sync');
    put(tx, 'meta', { ...row, askPhotos: false, photosAsked: now }, 'sync');
  });
}

/**
 * A photo may take minutes on a slow line. Entries that come meanwhile go beside it.
 * @template T
 * @param {Core} core @param {() => Promise<boolean>} goOn entries first; whether they are home
 * @param {Promise<T>} moving @returns {Promise<T>}
 */
async function beside(core, goOn, moving) {
  const moved = moving.then(
    () => true,
    () => true,
  );
  const stirred = () => core.stirring().then(() => false);
  while (!(await Promise.race([moved, stirred()]))) if (!(await goOn())) break;
  return moving;
}

/** Those a torque is read from first, then the newest. @param {PhotoRow} one @param {PhotoRow} other */
function byNeed(one, other) {
  if (one.spec !== other.spec) return one.spec ? -1 : 1;
  return one.stamp < other.stamp ? 1 : -1;
}

/** @param {Core} core @param {() => Promise<boolean>} goOn @returns {Promise<boolean>} whether the line holds */
async function pushAll(core, goOn) {
  for (;;) {
    // Asked anew each time: one may have been taken while another was on its way.
    const [row] = await inState(core, 'waiting');
    if (!row) return true;
    const on = await beside(core, goOn, push(core, row));
    await core.refresh();
    if (!on || core.stirred()) return false;
  }
}

/** @param {Core} core @param {() => Promise<boolean>} goOn @returns {Promise<boolean>} whether own ones wait again */
async function pull(core, goOn) {
  const held = await inState(core, 'held');
  const limit = core.settings.get('photo-limit') ?? LIMIT;
  let size = held.reduce((sum, row) => sum + row.size, 0);
  const wanted = (/** @type {PhotoRow} */ row) => size < limit || row.spec === true;
  for (const row of (await inState(core, 'away')).sort(byNeed)) {
    if (!wanted(row) || core.stirred()) return false;
    const blob = await beside(core, goOn, fetchPhoto(core, row.sha));
    size += blob?.size ?? 0;
    if (blob) await core.heard([]);
    if ((await inState(core, 'waiting')).length) return true;
  }
  return false;
}

/**
 * One at a time, and never in the way of entries: the caller runs this when those are home.
 * @param {Core} core @param {() => Promise<boolean>} goOn sees to entries that come meanwhile
 */
export async function syncPhotos(core, goOn) {
  await askMissing(core);
  do if (!(await pushAll(core, goOn))) return;
  while (await pull(core, goOn));
  await core.refresh();
}
