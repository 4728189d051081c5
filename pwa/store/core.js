/** What every part of the store holds on to: the open database, who this device is, who listens. */

import { uuid7 } from '../log/ids.js';
import { NEW_CLOCK } from '../log/stamp.js';
import { ROWS } from './fold.js';
import { makeState, refreshState } from './state.js';
import { put, read, write } from './transaction.js';
import { makeWritten } from './written.js';

/**
 * @typedef {import('./types.js').World} World
 * @typedef {import('./types.js').Database} Database
 * @typedef {import('./types.js').SyncRow} SyncRow
 * @typedef {import('./types.js').Pairing} Pairing
 * @typedef {{world: World, name: string, state: ReturnType<typeof makeState>,
 *   open: () => Promise<Database>, closed: () => void, by: () => string,
 *   written: ReturnType<typeof makeWritten>, wrote: (touched: ReadonlySet<string> | null) => void,
 *   settings: Map<string, any>, pairing: Pairing|null,
 *   listeners: Set<(touched: Set<string>) => void>, poke: () => void, stirred: () => boolean,
 *   stirring: () => Promise<void>,
 *   say: (message: any) => void, line: () => import('./wire.js').Line,
 *   heard: (touched: Iterable<string>) => Promise<void>, changed: (touched: Iterable<string>) => void,
 *   lapsed: (state: 'unknown'|'revoked') => Promise<void>, pace: import('./sync.js').Pace|null,
 *   refresh: () => Promise<void>}} Core
 */

/** @returns {SyncRow} */
export const freshSync = () => ({
  cursor: null,
  epoch: 1,
  count: 0,
  digest: '0'.repeat(64),
  head: 0,
  agreed: null,
  contact: null,
  recovering: null,
  recovered: 0,
  photosAsked: 0,
  askPhotos: false,
});

/** @param {World} world */
function freshDevice(world) {
  return uuid7(world.now(), world.random(10));
}

/**
 * @param {World} world @param {string} name of the database
 * @returns {Core}
 */
export function makeCore(world, name) {
  /** @type {Promise<Database>|null} */
  let opening = null;
  /** @type {Core} */
  const core = {
    world,
    name,
    state: makeState(world.signal),
    settings: new Map(),
    pairing: null,
    listeners: new Set(),
    open: () => {
      opening ??= world
        .database(core.name)
        .then((db) => founded(core, db))
        .catch((error) => {
          opening = null;
          throw error;
        });
      return opening;
    },
    closed: () => {
      opening = null;
      core.wrote(null);
    },
    written: makeWritten(),
    wrote: (touched) => core.written.add(touched),
    by: () => core.settings.get('by') ?? '',
    line: () => ({
      fetch: world.fetch,
      url: core.pairing?.url ?? '',
      key: core.pairing?.key ?? null,
    }),
    poke: () => undefined,
    stirred: () => false,
    stirring: () => new Promise(() => undefined),
    say: () => undefined,
    refresh: () => refreshState(core),
    heard: (touched) => tell(core, touched, true),
    changed: (touched) => {
      tell(core, touched, true).catch(() => undefined);
      core.poke();
    },
    lapsed: (state) => lapse(core, state),
    pace: null,
  };
  return core;
}

/**
 * @param {Core} core @param {Iterable<string>} touched
 * @param {boolean} ours true: made in this tab, so the other tabs hear of it
 */
export async function tell(core, touched, ours) {
  const ids = new Set(touched);
  core.wrote(ids);
  if (ours) core.say({ changed: [...ids] });
  await core.refresh();
  core.state.changed.value += 1;
  for (const listener of core.listeners) listener(ids);
}

/**
 * The computer does not know this device any more. Everything stays waiting, under the same roof.
 * @param {Core} core @param {'unknown'|'revoked'} state
 */
async function lapse(core, state) {
  if (!core.pairing || core.pairing.state === state) return;
  core.pairing = { ...core.pairing, state };
  await write(core, ['meta'], 'strict', async (tx) => put(tx, 'meta', core.pairing, 'pairing'));
  core.say({ pairing: true });
  await core.refresh();
}

/**
 * Makes the rows that must be there. They are missing in a new database, and in one that the
 * browser threw away under an open page; that page still knows its key and goes on with it.
 * @param {Core} core @param {Database} db
 */
async function founded(core, db) {
  const tx = db.transaction(['meta', 'subject', 'dirty'], 'readwrite', { durability: 'strict' });
  const meta = tx.objectStore('meta');
  const [clock, sync, rows] = await Promise.all(
    ['clock', 'sync', 'rows'].map((key) => meta.get(key)),
  );
  const device = core.pairing?.device ?? freshDevice(core.world);
  if (!clock) put(tx, 'meta', { ...NEW_CLOCK, device, n: 0 }, 'clock');
  if (!sync) put(tx, 'meta', freshSync(), 'sync');
  if (!clock && core.pairing) put(tx, 'meta', core.pairing, 'pairing');
  if (rows !== ROWS) await markRows(tx);
  await tx.done;
  return db;
}

/** Rows that an older page made are marked, to be folded anew. @param {import('./types.js').Tx} tx */
async function markRows(tx) {
  for (const id of await tx.objectStore('subject').getAllKeys()) put(tx, 'dirty', { id });
  put(tx, 'meta', ROWS, 'rows');
}

/**
 * Reads what is kept in memory.
 * @param {Core} core
 */
export async function wake(core) {
  await read(core, ['meta', 'setting'], async (tx) => {
    const setting = tx.objectStore('setting');
    const [pairing, names, values] = await Promise.all([
      tx.objectStore('meta').get('pairing'),
      setting.getAllKeys(),
      setting.getAll(),
    ]);
    core.pairing = pairing ?? null;
    core.settings = new Map(names.map((name, at) => [name, values[at]]));
  });
  await core.refresh();
}
