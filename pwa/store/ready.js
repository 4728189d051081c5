/** "Ready for the garage": what must be on this phone before it leaves the house. */

import { refreshState } from './state.js';

/** The page's own file list lies in the cache whose name begins so; see sw.js. */
const PAGE = 'page ';
const DECODER = '/vendor/zxing-wasm/reader/zxing_reader.wasm';

/** @param {string} path @returns {Promise<boolean>} */
async function cached(path) {
  if (typeof caches === 'undefined') return false;
  for (const name of await caches.keys())
    if (name.startsWith(PAGE) && (await (await caches.open(name)).match(path))) return true;
  return false;
}

/**
 * @param {import('./core.js').Core} core
 * @returns {Promise<{page: boolean, decoder: boolean, entries: boolean, specPhotos: boolean}>}
 */
export async function ready(core) {
  await refreshState(core);
  const { state } = core;
  const [page, decoder] = await Promise.all([cached('/'), cached(DECODER)]);
  const entries = state.lastContact.value !== null && state.progress.value === null;
  return { page, decoder, entries, specPhotos: state.specPhotosAway.value === 0 };
}

/** @param {import('./core.js').Core} core */
export async function measureStorage(core) {
  core.state.storage.value = await core.world.storage();
}
