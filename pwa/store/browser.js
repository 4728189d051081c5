/** What a browser tab gives to the store: database, clock, locks, network, the other tabs. */

import { signal } from '@preact/signals-core';
import { localTime } from './clock.js';
import { openDatabase } from './database.js';

/** @param {string} name @param {() => Promise<void>} work @returns {Promise<boolean>} whether it was free */
async function lock(name, work) {
  if (!navigator.locks) {
    await work();
    return true;
  }
  return navigator.locks.request(name, { ifAvailable: true }, async (held) => {
    if (held) await work();
    return held !== null;
  });
}

/** @param {string} name @param {(message: any) => void} hear */
function channel(name, hear) {
  const line = new BroadcastChannel(name);
  line.onmessage = ({ data }) => hear(data);
  return {
    post: (/** @type {any} */ message) => line.postMessage(message),
    close: () => line.close(),
  };
}

async function storage() {
  const [persisted, { usage = 0, quota = 0 }] = await Promise.all([
    navigator.storage.persisted(),
    navigator.storage.estimate(),
  ]);
  return { persisted, usage, quota };
}

/**
 * @param {{onClosed: () => void, onBlocked: () => void}} hear
 * @returns {import('./types.js').World}
 */
export const browserWorld = (hear) => ({
  database: (name) => openDatabase(name, hear),
  now: () => Date.now(),
  random: (count) => crypto.getRandomValues(new Uint8Array(count)),
  fetch: (...request) => fetch(...request),
  made: localTime,
  signal: /** @type {any} */ (signal),
  lock,
  channel,
  storage,
  persist: () => navigator.storage.persist(),
  report: (error) => reportError(error),
});

/** @param {number} ms @param {() => void} fire @returns {() => void} to disarm it */
export function arm(ms, fire) {
  const timer = setTimeout(fire, ms);
  return () => clearTimeout(timer);
}

/**
 * Calls `fire` whenever the world outside may have changed for the better.
 * @param {() => void} fire @returns {() => void} to stop
 */
export function whenBetter(fire) {
  const seen = () => {
    if (document.visibilityState === 'visible') fire();
  };
  const told = (/** @type {MessageEvent} */ { data }) => {
    if (data === 'sync') fire();
  };
  addEventListener('online', fire);
  document.addEventListener('visibilitychange', seen);
  navigator.serviceWorker?.addEventListener('message', told);
  return () => {
    removeEventListener('online', fire);
    document.removeEventListener('visibilitychange', seen);
    navigator.serviceWorker?.removeEventListener('message', told);
  };
}

/** Asks the browser to wake the page when there is a network again, where it can. */
export async function wakeLater() {
  const worker = await navigator.serviceWorker?.getRegistration();
  const sync = /** @type {any} */ (worker)?.sync;
  try {
    await sync?.register('outbox');
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}
