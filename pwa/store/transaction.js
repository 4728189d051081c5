/** One way to write: everything in one transaction, which holds or leaves no trace. */

import { NotKeptClosed, NotKeptFull } from '../errors.js';
import { touchedBy } from './written.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {{open(): Promise<import('./types.js').Database>, wrote?: (touched: ReadonlySet<string> | null) => void}} Base
 */

/**
 * Queues a write without waiting for it. A write that goes wrong aborts its transaction, and
 * that is where it is told; its own promise must not be told a second time as unhandled.
 * @param {Tx} tx @param {string} table @param {any} value @param {any} [key]
 */
export function put(tx, table, value, key) {
  tx.objectStore(table)
    .put(value, key)
    .catch(() => undefined);
}

/** @param {Tx} tx @param {string} table @param {any} key */
export function remove(tx, table, key) {
  tx.objectStore(table)
    .delete(key)
    .catch(() => undefined);
}

/** @param {unknown} error */
function named(error) {
  return error instanceof Error || error instanceof DOMException ? error.name : '';
}

const CLOSED = new Set([
  'AbortError',
  'InvalidStateError',
  'UnknownError',
  'TransactionInactiveError',
  'VersionError',
]);

/** @param {unknown} error */
function told(error) {
  const name = named(error);
  if (name === 'QuotaExceededError') return Object.assign(new NotKeptFull(), { cause: error });
  return CLOSED.has(name) ? Object.assign(new NotKeptClosed(), { cause: error }) : error;
}

/**
 * Runs `work` inside one write transaction and resolves only when it is complete: with strict
 * durability that is when the disk has it. `work` may wait for this transaction's own reads only.
 * @template T
 * @param {Base} base @param {string[]} tables @param {'strict'|'relaxed'} durability
 * @param {(tx: Tx) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function write(base, tables, durability, work) {
  const tx = await begin(base, tables, durability);
  try {
    const result = await work(tx);
    finished(tx);
    await tx.done;
    base.wrote?.(touchedBy(tables, result));
    return result;
  } catch (error) {
    const cause = await abandoned(tx, error);
    throw told(cause);
  }
}

/**
 * Says that nothing more comes, so that the disk need not wait until each write has been answered.
 * @param {Tx} tx
 */
function finished(tx) {
  try {
    tx.commit?.();
  } catch (error) {
    // One that asked nothing is over by itself; whatever else went wrong, `done` tells.
    if (named(error) !== 'InvalidStateError') throw error;
  }
}

/** @param {Base} base @param {string[]} tables @param {'strict'|'relaxed'} durability */
async function begin(base, tables, durability) {
  try {
    return (await base.open()).transaction(tables, 'readwrite', { durability });
  } catch (error) {
    throw told(error);
  }
}

/**
 * The transaction's own reason (a full disk) says more than the request that noticed it.
 * @param {Tx} tx @param {unknown} error
 */
async function abandoned(tx, error) {
  const reason = tx.done.then(
    () => error,
    (why) => why,
  );
  try {
    tx.abort();
  } catch {
    return reason;
  }
  await reason;
  return error;
}

/**
 * @template T
 * @param {Base} base @param {string[]} tables @param {(tx: Tx) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function read(base, tables, work) {
  try {
    const tx = (await base.open()).transaction(tables, 'readonly');
    tx.done.catch(() => undefined);
    return await work(tx);
  } catch (error) {
    throw told(error);
  }
}
