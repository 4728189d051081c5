/**
 * Stamps of a hybrid clock: 12 hex digits of milliseconds, a dash, 4 of a counter.
 *
 * As text they sort as in time. The device's own clock is never trusted further than ten minutes:
 * its stamps run on a clock corrected by the server's last answer, and the server gives an order
 * of its own to a stamp that is further ahead.
 */
import { TimeBeyond } from '../errors.js';
import { MOST_MS } from './ids.js';

/**
 * What a device remembers: the greatest stamp made or order seen, and its clock's error.
 * @typedef {{last: string, correctionMs: number}} Clock
 */

export const AHEAD_MS = 10 * 60 * 1000;
export const FIRST = '000000000000-0000';
const STAMP = /^[0-9a-f]{12}-[0-9a-f]{4}$/;
const COUNTER = 0x10000;

/** @type {Clock} */
export const NEW_CLOCK = Object.freeze({ last: FIRST, correctionMs: 0 });

/**
 * The stamp of a moment.
 * @param {number} unixMs
 * @param {number} [counter]
 * @returns {string} source: definition
 */
export function writeStamp(unixMs, counter = 0) {
  if (unixMs < 0 || unixMs > MOST_MS) throw new TimeBeyond({ ms: unixMs });
  return `${unixMs.toString(16).padStart(12, '0')}-${counter.toString(16).padStart(4, '0')}`;
}

/**
 * Milliseconds of a stamp since 1970.
 * @param {string} stamp
 * @returns {number} source: definition
 */
export function stampMs(stamp) {
  return Number.parseInt(stamp.slice(0, 12), 16);
}

/**
 * Whether this is a stamp as written here.
 * @param {string} text
 * @returns {boolean} source: definition
 */
export function isStamp(text) {
  return STAMP.test(text);
}

/**
 * The least stamp above `last` that is not before the clock.
 * @param {string} last
 * @param {number} unixMs
 * @returns {string} source: hybrid logical clock, common practice
 */
export function nextStamp(last, unixMs) {
  const now = writeStamp(Math.max(0, unixMs));
  if (now > last) return now;
  const counter = Number.parseInt(last.slice(13), 16) + 1;
  return counter < COUNTER ? writeStamp(stampMs(last), counter) : writeStamp(stampMs(last) + 1);
}

/**
 * A stamp for a new entry, above all this clock has made or seen.
 * @param {Clock} clock
 * @param {number} deviceMs
 * @returns {{stamp: string, clock: Clock}} source: hybrid logical clock, common practice
 */
export function tick(clock, deviceMs) {
  const stamp = nextStamp(clock.last, deviceMs + clock.correctionMs);
  return { stamp, clock: { ...clock, last: stamp } };
}

/**
 * The clock after an entry of this order arrived.
 * @param {Clock} clock
 * @param {string} order
 * @returns {Clock} source: hybrid logical clock, common practice
 */
export function seen(clock, order) {
  return order > clock.last ? { ...clock, last: order } : clock;
}

/**
 * The clock after the server told its time: corrected, and set back if it ran far ahead.
 * @param {Clock} clock
 * @param {number} serverMs
 * @param {number} deviceMs
 * @returns {Clock} source: definition
 */
export function answered(clock, serverMs, deviceMs) {
  const ahead = stampMs(clock.last) > serverMs + AHEAD_MS;
  return {
    last: ahead ? writeStamp(serverMs) : clock.last,
    correctionMs: serverMs - deviceMs,
  };
}

/**
 * The order the server keeps beside an entry, or null when its stamp serves.
 * @param {string} stamp
 * @param {number} serverMs
 * @param {string | null} [last] the order given before in this batch, so that orders rise
 * @param {string | null} [held] the order the entry had before a restore; one that cannot be
 *   kept is made anew
 * @returns {string | null} source: definition
 */
export function orderGiven(stamp, serverMs, last, held) {
  const limit = serverMs + AHEAD_MS;
  if (held && held <= stamp && stampMs(held) <= limit) return held;
  if (!held && stampMs(stamp) <= limit) return null;
  return nextStamp(last ?? FIRST, serverMs);
}
