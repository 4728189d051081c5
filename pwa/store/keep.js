/** Turns what a form read into entries, and keeps them. The screen may say "kept" when this resolves. */

import { canonical } from '../log/clean.js';
import { take } from '../log/entry.js';
import { clockOf, idOf, keepClock, later, ticked } from './clock.js';
import { refold, rowsOf } from './fold.js';
import { notePhotos } from './photo_rows.js';
import { orphansOf, placeRows, rowOf, STRIKE_OUT } from './place.js';
import { KEEPING } from './schema.js';
import { put, write } from './transaction.js';

/**
 * @typedef {import('./types.js').Entry} Entry
 * @typedef {import('./types.js').Draft} Draft
 * @typedef {import('./types.js').Clock} Clock
 * @typedef {import('./types.js').Kept} Kept
 * @typedef {import('./types.js').Tx} Tx
 */

/**
 * @param {import('./core.js').Core} core @param {Draft} draft @param {Clock} clock
 * @returns {Entry}
 */
function made(core, draft, clock) {
  const fresh = () => idOf(clock.last, core.world.random(10));
  const { heading, body } = draft;
  const entry = {
    id: draft.id ?? fresh(),
    heading,
    about: draft.about ?? fresh(),
    device: clock.device,
    n: clock.n,
    stamp: clock.last,
    made: core.world.made(core.world.now()),
    v: 1,
    body,
  };
  const by = core.by();
  const optional = { by: by || undefined, after: draft.after, repairs: draft.repairs };
  const said = Object.entries(optional).filter(([, one]) => one?.length);
  return { ...entry, ...Object.fromEntries(said) };
}

/**
 * Entry, waiting mark, count, clock and what the screens read: one transaction, on the disk
 * before this resolves. What the log could not hold is thrown as its refusal, and nothing is written.
 * @param {import('./core.js').Core} core @param {Draft[]} drafts
 * @param {(tx: Tx, entries: Entry[]) => Promise<Iterable<string>>} [also] more of the same transaction, and what it touched
 * @returns {Promise<Entry[]>}
 */
export async function keep(core, drafts, also) {
  const kept = await write(core, KEEPING, 'strict', async (tx) => {
    const ahead = askAhead(tx, drafts);
    const entries = await numbered(core, tx, drafts);
    const rows = entries.map((entry) => rowOf(entry, take(entry).text));
    const touched = await add(tx, rows, ahead.orphans);
    for (const id of also ? await also(tx, entries) : []) touched.add(id);
    const known = also ? undefined : await atHand(ahead, rows);
    await refold(tx, touched, known);
    return { entries, touched };
  });
  core.changed(kept.touched);
  return kept.entries;
}

/**
 * Asks at once for all that the entries will need, so that the disk is waited for one time only.
 * @param {Tx} tx @param {Draft[]} drafts
 * @returns {{orphans: ReturnType<typeof orphansOf>, rows: Map<string, Promise<Kept[]>>}}
 */
function askAhead(tx, drafts) {
  const ids = drafts.map(({ heading, about }) => (heading === STRIKE_OUT ? undefined : about));
  const known = [...new Set(ids)].filter((id) => id !== undefined);
  const rows = new Map(known.map((id) => [id, rowsOf(tx, id)]));
  for (const one of rows.values()) one.catch(() => undefined);
  return { orphans: orphansOf(tx), rows };
}

/**
 * All entries of the things that drafts named: those read before, and the new ones. Empty while
 * strike-outs wait for their target, because then other rows change too.
 * @param {ReturnType<typeof askAhead>} ahead @param {Kept[]} fresh
 * @returns {Promise<Map<string, Kept[]>>}
 */
async function atHand(ahead, fresh) {
  const known = new Map();
  if ((await ahead.orphans).length) return known;
  for (const [id, asked] of ahead.rows) {
    const mine = fresh.filter(({ subject }) => subject === id);
    const ids = new Set(mine.map((row) => row.id));
    known.set(id, [...(await asked).filter((row) => !ids.has(row.id)), ...mine]);
  }
  return known;
}

/** @param {import('./core.js').Core} core @param {Tx} tx @param {Draft[]} drafts */
async function numbered(core, tx, drafts) {
  let clock = await clockOf(tx);
  const entries = [];
  for (const draft of drafts) {
    const next = ticked(clock, core.world.now());
    entries.push(made(core, draft, next));
    clock = next;
  }
  keepClock(tx, clock);
  return entries;
}

/** @param {Tx} tx @param {Kept[]} rows @param {ReturnType<typeof orphansOf>} [orphans] */
async function add(tx, rows, orphans) {
  for (const { id } of rows) put(tx, 'outbox', { id });
  await notePhotos(tx, rows);
  return placeRows(tx, rows, orphans);
}

/**
 * Takes in entries that were made elsewhere (the demo's, a file's), to be sent from here.
 * Those already on this device stay as they are.
 * @param {import('./core.js').Core} core @param {Entry[]} entries @returns {Promise<number>} how many were new
 */
export async function takeIn(core, entries) {
  const { count, touched } = await write(core, KEEPING, 'strict', async (tx) => {
    const had = await Promise.all(entries.map(({ id }) => tx.objectStore('entry').get(id)));
    const fresh = entries.filter((_, at) => !had[at]);
    const touched = await add(
      tx,
      fresh.map((entry) => rowOf(entry, canonical(entry))),
    );
    const clock = await clockOf(tx);
    const highest = fresh.reduce((high, { stamp }) => later(high, stamp), clock.last);
    keepClock(tx, { ...clock, last: highest });
    await refold(tx, touched);
    return { count: fresh.length, touched };
  });
  await core.changed(touched);
  return count;
}
