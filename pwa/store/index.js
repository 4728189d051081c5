/**
 * The store of this device: the log, what waits to be sent, photos, settings. Everything the
 * screens read or write goes through the object that openStore gives.
 */

import { arm, browserWorld, wakeLater, whenBetter } from './browser.js';
import { makeCore } from './core.js';
import { openDirectory } from './database.js';
import { makeStore } from './store.js';

const FIRST = 'witnessmark';

/**
 * @param {string} [name] a database by name, for tests; without it the one this device uses
 * @returns {Promise<import('./store.js').Store>}
 */
export async function openStore(name) {
  const directory = name ? null : await openDirectory();
  /** @type {import('./core.js').Core|null} */
  let core = null;
  const world = browserWorld({
    onClosed: () => core?.closed(),
    onBlocked: () => {
      if (core) core.state.blocked.value = true;
    },
  });
  core = makeCore(world, name ?? (await directory?.current()) ?? FIRST);
  const store = await makeStore(core, { directory, arm, chance: Math.random, wakeLater });
  whenBetter(() => void store.syncNow());
  return store;
}
