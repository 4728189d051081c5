/** "Ready for the garage": what must be on this phone before it leaves the house. */

import { refreshState } from './state.js';

/** Kept last in each cache of the page; see sw.js. */
const WHOLE = '/whole';
const SCREEN = '/app/screens/sync.js';
const DECODER = '/vendor/zxing-wasm/reader/zxing_reader.wasm';

/** @param {string} path @returns {Promise<boolean>} */
async function cached(path) {
  if (typeof caches === 'undefined') return false;
  for (const cacheName of await caches.keys()) {
    const whole = await caches.match(WHOLE, { cacheName });
    if (whole && (await caches.match(path, { cacheName }))) return true;
  }
  return false;
}

/**
 * @param {import('./core.js').Core} core
 * @returns {Promise<{page: boolean, decoder: boolean, entries: boolean, specPhotos: boolean}>}
 */
export async function ready(core) {
  await refreshState(core);
  const { state } = core;
  const [shell, screens, decoder] = await Promise.all(['/', SCREEN, DECODER].map(cached));
  const entries = state.lastContact.value !== null && state.progress.value === null;
  const page = Boolean(shell && screens);
  return { page, decoder: Boolean(decoder), entries, specPhotos: state.specPhotosAway.value === 0 };
}

/** @param {import('./core.js').Core} core */
export async function measureStorage(core) {
  core.state.storage.value = await core.world.storage();
}
