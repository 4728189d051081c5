/** What the screens show of the sync, as signals. */

import { read } from './transaction.js';

/** @typedef {import('./core.js').Core} Core */

/**
 * `agreed`: both hold the same so many entries, or null while that is not known.
 * `trouble`: code of what stopped the last attempt, or null.
 * @param {import('./types.js').World['signal']} signal
 */
export function makeState(signal) {
  return {
    waiting: signal(0),
    refused: signal(0),
    photosWaiting: signal(0),
    photosAway: signal(0),
    specPhotosAway: signal(0),
    lastContact: signal(/** @type {number|null} */ (null)),
    syncing: signal(false),
    progress: signal(/** @type {{done: number, of: number}|null} */ (null)),
    agreed: signal(/** @type {number|null} */ (null)),
    held: signal(0),
    paired: signal(/** @type {'no'|'yes'|'unknown'|'revoked'} */ ('no')),
    head: signal(0),
    storage: signal(/** @type {{persisted: boolean, usage: number, quota: number}|null} */ (null)),
    trouble: signal(/** @type {string|null} */ (null)),
    blocked: signal(false),
    update: signal(false),
    changed: signal(0),
  };
}

const READING = ['outbox', 'refused', 'photo', 'meta'];

/** @param {Core} core */
export async function refreshState(core) {
  const { state } = core;
  await read(core, READING, async (tx) => {
    const photo = tx.objectStore('photo').index('state');
    const [waiting, refused, photos, away, sync, badPhotos] = await Promise.all([
      tx.objectStore('outbox').count(),
      tx.objectStore('refused').getAll(),
      photo.count('waiting'),
      photo.getAll('away'),
      tx.objectStore('meta').get('sync'),
      photo.count('refused'),
    ]);
    const open = refused.filter(({ given, repaired }) => !given && !repaired).length;
    // All at once: nothing that is drawn from them is half of it for a moment.
    state.paired.value = core.pairing?.key ? core.pairing.state : lapsed(core.pairing);
    state.waiting.value = waiting;
    state.refused.value = open + badPhotos;
    state.photosWaiting.value = photos;
    state.photosAway.value = away.length;
    state.specPhotosAway.value = away.filter((row) => row.spec).length;
    state.held.value = (sync?.count ?? 0) + waiting;
    state.lastContact.value = sync?.contact ?? null;
    state.head.value = sync?.head ?? 0;
    state.agreed.value = sync?.agreed ?? null;
  });
}

/** @param {import('./types.js').Pairing|null} pairing */
const lapsed = (pairing) => (pairing && pairing.state !== 'yes' ? pairing.state : 'no');
