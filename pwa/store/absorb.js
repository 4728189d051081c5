/** Writes down what the computer answered: numbers, refusals, and the entries of other devices. */

import { Refusal } from '../errors.js';
import { canonical } from '../log/clean.js';
import { added, asHex, digest, fromHex } from '../log/digest.js';
import { clockOf, heardTime, keepClock } from './clock.js';
import { refold } from './fold.js';
import { notePhotos } from './photo_rows.js';
import { placeRows, rowOf } from './place.js';
import { KEEPING } from './schema.js';
import { put, remove, write } from './transaction.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {import('./types.js').Kept} Kept
 * @typedef {import('./types.js').SyncRow} SyncRow
 * @typedef {import('./types.js').Entry} Entry
 * @typedef {{code: string, says: string, next: string}} Refused
 * @typedef {{answers: (number|{seq: number, order: string}|Refused)[],
 *   entries: {seq: number, order?: string, entry: Entry}[], cursor: string|null, head: number,
 *   count: number, digest: string, now: string}} Answer
 * @typedef {Answer['entries'][number] & {text: string}} Pulled
 * @typedef {{tx: Tx, sync: SyncRow, sums: bigint[], refused: Set<string>, touched: Set<string>, now: number}} Round
 */

/** Up to so many pulled entries are folded in their own transaction; more are folded after it. */
const AT_ONCE = 200;
const MODULUS = 1n << 256n;

/** @param {string|null} cursor */
export const numberOf = (cursor) => (cursor ? Number(cursor.split('.')[0]) : 0);

/**
 * Counts a row as taken, once in an epoch; one counted before may only change its order.
 * @param {Round} round @param {Kept} row @param {number} seq @param {string} [order]
 * @returns {Kept}
 */
function numberedRow(round, row, seq, order) {
  const counted = row.epoch === round.sync.epoch && row.seq !== undefined;
  if (counted) round.sums.push(MODULUS - digest(row.text, row.order ?? null));
  else round.sync.count += 1;
  round.sums.push(digest(row.text, order ?? null));
  if (row.out || row.order !== order) round.touched.add(row.subject);
  const { order: _order, out: _out, ...rest } = row;
  const numbered = { ...rest, seq, epoch: round.sync.epoch };
  return order ? { ...numbered, order } : numbered;
}

/** @param {Round} round @param {string} id @param {string} text @param {Refused} why */
function refuse(round, id, text, { code, says, next }) {
  remove(round.tx, 'outbox', id);
  put(round.tx, 'refused', { id, text, code, says, next, at: round.now });
}

/** @param {Round} round @param {Kept} row */
function take(round, row) {
  put(round.tx, 'entry', row);
  remove(round.tx, 'outbox', row.id);
  if (round.refused.has(row.id)) remove(round.tx, 'refused', row.id);
}

/** @param {Round} round @param {{id: string, text: string}[]} batch @param {Answer['answers']} answers */
async function answerRows(round, batch, answers) {
  const rows = await Promise.all(batch.map(({ id }) => round.tx.objectStore('entry').get(id)));
  answers.forEach((answer, at) => {
    const { id, text } = /** @type {{id: string, text: string}} */ (batch[at]);
    if (typeof answer === 'object' && 'code' in answer) refuse(round, id, text, answer);
    else if (typeof answer === 'number') take(round, numberedRow(round, rows[at], answer));
    else take(round, numberedRow(round, rows[at], answer.seq, answer.order));
  });
}

/**
 * Ours and the log's entry carry one id but other text: the log's counts, ours is shown as refused.
 * @param {Round} round @param {Kept} ours @param {Kept} theirs @returns {Kept}
 */
function rival(round, ours, theirs) {
  round.touched.add(ours.subject);
  const says = 'Another entry with the same mark came first.';
  const next = 'Enter it again, or strike it out.';
  if (!round.refused.has(ours.id))
    refuse(round, ours.id, ours.text, { code: 'id-taken', says, next });
  return theirs;
}

/** @param {Round} round @param {Pulled[]} entries */
async function pulledRows(round, entries) {
  const held = await heldAlready(round, entries);
  const fresh = [];
  for (const { seq, order, entry, text } of entries) {
    const row = rowOf(entry, text);
    const ours = held.get(entry.id);
    if (ours && ours.text === row.text) take(round, numberedRow(round, ours, seq, order));
    else {
      const base = ours ? rival(round, ours, row) : row;
      fresh.push(numberedRow(round, base, seq, order));
    }
  }
  return fresh;
}

/**
 * Which of these entries lie here already. Outside a recovery only a waiting or refused one can:
 * what was taken before lies before the cursor, so the usual pull asks for nothing.
 * @param {Round} round @param {Pulled[]} entries
 * @returns {Promise<Map<string, Kept>>}
 */
async function heldAlready(round, entries) {
  const { tx, sync } = round;
  let ids = entries.map(({ entry }) => entry.id);
  if (!sync.recovering) {
    const mine = new Set([...(await tx.objectStore('outbox').getAllKeys()), ...round.refused]);
    ids = ids.filter((id) => mine.has(id));
  }
  const rows = await Promise.all(ids.map((id) => tx.objectStore('entry').get(id)));
  return new Map(rows.filter((row) => row).map((row) => [row.id, row]));
}

/** @param {Round} round @param {Kept[]} fresh */
async function addFresh(round, fresh) {
  await notePhotos(round.tx, fresh);
  for (const id of await placeRows(round.tx, fresh)) round.touched.add(id);
}

/** @param {Answer} answer */
function ordersIn(answer) {
  const pulled = answer.entries.map(({ order, entry }) => order ?? entry.stamp);
  const ours = answer.answers.map((one) =>
    typeof one === 'object' && 'seq' in one ? one.order : '',
  );
  return [...pulled, ...ours];
}

/** @param {SyncRow} sync @param {Answer} answer */
const agrees = (sync, answer) =>
  numberOf(answer.cursor) === answer.head &&
  sync.count === answer.count &&
  sync.digest === answer.digest;

/** @param {Round} round @param {Answer} answer */
async function finish(round, answer) {
  const { tx, sync, now } = round;
  keepClock(tx, heardTime(await clockOf(tx), now, Date.parse(answer.now), ordersIn(answer)));
  sync.digest = asHex(added(fromHex(sync.digest), round.sums));
  Object.assign(sync, { cursor: answer.cursor, head: answer.head, contact: now });
  sync.agreed = agrees(sync, answer) ? sync.count : null;
  put(tx, 'meta', sync, 'sync');
  if (round.touched.size <= AT_ONCE && answer.entries.length <= AT_ONCE)
    await refold(tx, round.touched);
  else for (const id of round.touched) if (id) put(tx, 'dirty', { id });
}

/**
 * The log only holds clean texts. Should a later computer hand out what this page can not write,
 * one odd entry must not stop the others; the digests then differ, and that is seen.
 * @param {Entry} entry
 */
function textOf(entry) {
  try {
    return canonical(entry);
  } catch (error) {
    if (error instanceof Refusal) return JSON.stringify(entry);
    throw error;
  }
}

/**
 * One answer of the computer, in one transaction with the cursor. If a battery dies before it
 * reaches the disk, the page is pulled again; hence relaxed.
 * @param {import('./core.js').Core} core
 * @param {{batch: {id: string, text: string}[], cursor: string|null, epoch: number}} request
 * @param {Answer} answer
 * @returns {Promise<{sync: SyncRow, touched: Set<string>}|null>} null: the answer is for another past
 */
export function absorb(core, request, answer) {
  const pulled = answer.entries.map((one) => ({ ...one, text: textOf(one.entry) }));
  return write(core, KEEPING, 'relaxed', async (tx) => {
    /** @type {SyncRow} */
    const sync = { ...(await tx.objectStore('meta').get('sync')) };
    if (sync.cursor !== request.cursor || sync.epoch !== request.epoch) return null;
    const refused = new Set(await tx.objectStore('refused').getAllKeys());
    /** @type {Round} */
    const round = { tx, sync, refused, sums: [], touched: new Set(), now: core.world.now() };
    await answerRows(round, request.batch, answer.answers);
    await addFresh(round, await pulledRows(round, pulled));
    await finish(round, answer);
    return { sync, touched: round.touched };
  });
}
