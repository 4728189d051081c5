/** Digests by which a phone and the computer see that both hold the same entries. */
import { sha256 } from './sha256.js';

const MODULUS = 1n << 256n;
const utf8 = new TextEncoder();

/**
 * SHA-256 of an entry's canonical text, a line feed, and its order if it has one.
 * @param {string} text
 * @param {string | null} [order]
 * @returns {bigint} source: FIPS 180-4 for the hash; the layout is ours
 */
export function digest(text, order) {
  return BigInt(`0x${sha256(utf8.encode(`${text}\n${order ?? ''}`))}`);
}

/**
 * Digest of a set after more entries: the sum modulo 2^256, whatever their order.
 * @param {bigint} total
 * @param {Iterable<bigint>} more
 * @returns {bigint} source: definition
 */
export function added(total, more) {
  let sum = total;
  for (const one of more) sum += one;
  return sum % MODULUS;
}

/**
 * A digest as 64 lower-case hex digits.
 * @param {bigint} total
 * @returns {string} source: definition
 */
export function asHex(total) {
  return total.toString(16).padStart(64, '0');
}

/**
 * The digest that 64 hex digits stand for.
 * @param {string} hex
 * @returns {bigint} source: definition
 */
export function fromHex(hex) {
  return BigInt(`0x${hex}`);
}
