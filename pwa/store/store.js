/** Puts the parts of the store together into the one object that screens are given. */

import { ask } from './ask.js';
import { tell, wake } from './core.js';
import { saveToFile } from './file.js';
import { keep, takeIn } from './keep.js';
import { makeNames } from './names.js';
import { forgetPairing } from './pairing.js';
import { keepPhoto, photo } from './photos.js';
import { measureStorage, ready } from './ready.js';
import { giveUp, refused, repair, sendAgain } from './refused.js';
import { makeSchedule } from './schedule.js';
import { draft, setDraft, setSetting } from './settings.js';
import { settle } from './settle.js';
import { slices } from './slices.js';
import { move } from './workshops.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./types.js').Draft} Draft
 * @typedef {Awaited<ReturnType<typeof makeStore>>} Store
 * @typedef {{directory: import('./workshops.js').Directory|null,
 *   arm: (ms: number, fire: () => void) => () => void, chance: () => number,
 *   wakeLater: () => Promise<void>}} Means
 */

/** @param {Core} core @param {() => void} sync @param {any} message from another tab */
function heard(core, sync, message) {
  if (message.please === 'sync') sync();
  else if ('setting' in message) core.settings.set(message.setting, message.value);
  else if (message.pairing) wake(core).catch(() => undefined);
  else tell(core, message.changed ?? [], false).catch(() => undefined);
}

/** @param {Core} core @param {() => void} sync */
function listen(core, sync) {
  const line = core.world.channel(`witnessmark ${core.name}`, (message) =>
    heard(core, sync, message),
  );
  core.say = line.post;
  return line;
}

/**
 * @param {Core} core @param {Means} means
 */
export async function makeStore(core, means) {
  const schedule = makeSchedule(core, means);
  const sync = () => void schedule.now();
  let line = listen(core, sync);
  core.poke = () => {
    sync();
    if (core.state.waiting.peek()) means.wakeLater().catch(() => undefined);
  };
  await wake(core);
  const findRows = makeNames(core);
  await settle(core);
  measureStorage(core).catch(() => undefined);
  sync();

  /** @param {{code: string, name: string, url?: string}} asked */
  async function pair(asked) {
    await move(core, means.directory, asked);
    line.close();
    line = listen(core, sync);
    core.say({ pairing: true });
    await wake(core);
    await core.heard([]);
    await core.world.persist();
    await measureStorage(core);
    sync();
    return { device: core.pairing?.device, workshop: core.pairing?.workshop };
  }

  return {
    ...slices(core),
    ...dealings(core),
    state: core.state,
    changes: core.state.changed,
    findRows,
    pair,
    syncNow: schedule.now,
    /** @param {(touched: Set<string>) => void} fn @returns {() => void} to stop hearing */
    onChange: (fn) => {
      core.listeners.add(fn);
      return () => void core.listeners.delete(fn);
    },
    close: async () => {
      schedule.stop();
      line.close();
      (await core.open()).close();
      core.closed();
    },
  };
}

/** @param {Core} core */
const dealings = (core) => ({
  /** @param {Draft[]} drafts */
  keep: (drafts) => keep(core, drafts),
  /** @param {any[]} entries made elsewhere, to wait here */
  takeIn: (entries) => takeIn(core, entries),
  /** @param {{given?: boolean}} [which] */
  refused: (which) => refused(core, which),
  /** @param {string} id @param {Draft} draft */
  repair: (id, draft) => repair(core, id, draft),
  /** @param {string} id */
  sendAgain: (id) => sendAgain(core, id),
  /** @param {string} id @param {string} reason */
  giveUp: (id, reason) => giveUp(core, id, reason),
  device: () => core.pairing ?? null,
  forgetPairing: () => forgetPairing(core),
  /** @param {Blob} blob */
  keepPhoto: (blob) => keepPhoto(core, blob),
  /** @param {string} sha */
  photo: (sha) => photo(core, sha),
  saveToFile: () => saveToFile(core),
  /** @param {string} name */
  setting: (name) => core.settings.get(name),
  /** @param {string} name @param {any} value */
  setSetting: (name, value) => setSetting(core, name, value),
  /** @param {string} name */
  draft: (name) => draft(core, name),
  /** @param {string} name @param {any} value */
  setDraft: (name, value) => setDraft(core, name, value),
  /** @param {string} method @param {string} path @param {any} [body] */
  ask: (method, path, body) => ask(core, method, path, body),
  ready: () => ready(core),
  measureStorage: () => measureStorage(core),
});
