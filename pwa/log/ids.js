/** Ids of entries and things: UUID version 7, lower case, made on the device. */
import { TimeBeyond } from '../errors.js';

export const MOST_MS = 2 ** 48 - 1;
const UUID7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

/**
 * An id from a moment in milliseconds and ten random bytes, six bits of which are unused.
 * @param {number} unixMs
 * @param {Uint8Array} random
 * @returns {string} source: RFC 9562, section 5.7
 */
export function uuid7(unixMs, random) {
  if (unixMs < 0 || unixMs > MOST_MS) throw new TimeBeyond({ ms: unixMs });
  const bytes = [...random.slice(0, 10)];
  bytes[0] = 0x70 | (Number(bytes[0]) & 0x0f);
  bytes[2] = 0x80 | (Number(bytes[2]) & 0x3f);
  const tail = bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const digits = unixMs.toString(16).padStart(12, '0') + tail;
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/**
 * Whether this is a UUID of version 7 written in lower case.
 * @param {string} text
 * @returns {boolean} source: RFC 9562, sections 4 and 5.7
 */
export function isUuid7(text) {
  return UUID7.test(text);
}

/**
 * Moment, version and variant of a UUID of any case.
 * @param {string} text
 * @returns {{unixMs: number, version: number, variant: number}} source: RFC 9562, section 4
 */
export function idFacts(text) {
  const digits = text.replaceAll('-', '');
  const sign = (/** @type {number} */ place) => Number.parseInt(digits.slice(place, place + 1), 16);
  const unixMs = Number.parseInt(digits.slice(0, 12), 16);
  return { unixMs, version: sign(12), variant: sign(16) >> 2 };
}
