/** The clock row: this device's count, its last stamp, and how far its clock is from the computer's. */

import { uuid7 } from '../log/ids.js';
import { answered, seen, stampMs, tick } from '../log/stamp.js';
import { put } from './transaction.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {import('./types.js').Clock} Clock
 */

/** @param {Tx} tx @returns {Promise<Clock>} */
export const clockOf = (tx) => tx.objectStore('meta').get('clock');

/** @param {Tx} tx @param {Clock} clock */
export const keepClock = (tx, clock) => put(tx, 'meta', clock, 'clock');

/** @param {string} stamp */
const counter = (stamp) => Number.parseInt(stamp.slice(13), 16);

/**
 * The clock after one more entry: count and stamp go up together, in the entry's transaction.
 * @param {Clock} clock @param {number} now @returns {Clock}
 */
export const ticked = (clock, now) => ({ ...clock, ...tick(clock, now).clock, n: clock.n + 1 });

/** The later of two stamps, which sort as text. @param {string} one @param {string} other */
export function later(one, other) {
  return [one, other].sort()[1] ?? one;
}

/**
 * The clock after an answer of the computer: corrected by its time, above every order it saw,
 * and begun again from there if it had run far ahead.
 * @param {Clock} clock @param {number} now @param {number} theirs @param {string[]} orders
 * @returns {Clock}
 */
export function heardTime(clock, now, theirs, orders) {
  const highest = orders.reduce(later, clock.last);
  return { ...clock, ...answered(seen(clock, highest), theirs, now) };
}

/**
 * An id that sorts as it was made: the stamp's counter stands where RFC 9562 (6.2, method 1)
 * lets a counter stand.
 * @param {string} stamp @param {Uint8Array} random ten bytes
 */
export function idOf(stamp, random) {
  const bytes = Uint8Array.from(random);
  bytes[0] = (counter(stamp) >> 8) & 0x0f;
  bytes[1] = counter(stamp) & 0xff;
  return uuid7(stampMs(stamp), bytes);
}

const two = (/** @type {number} */ n) => String(n).padStart(2, '0');

/**
 * What the device's own clock and time zone say, for people to read.
 * @param {number} ms @returns {string} such as 2031-03-07T19:42:10+01:00
 */
export function localTime(ms) {
  const at = new Date(ms);
  const ahead = -at.getTimezoneOffset();
  const wall = new Date(ms + ahead * 60_000).toISOString().slice(0, 19);
  const sign = ahead < 0 ? '-' : '+';
  const hours = two(Math.floor(Math.abs(ahead) / 60));
  return `${wall}${sign}${hours}:${two(Math.abs(ahead) % 60)}`;
}
