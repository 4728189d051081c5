/**
 * SHA-256 at once. The browser's own is a promise, which ends an IndexedDB transaction that
 * waits for it and costs more than the hash itself on texts as short as an entry's.
 * source: FIPS 180-4, sections 4.1.2, 5.1.1, 5.3.3 and 6.2
 */

const ROUNDS = 64;
const K = new Int32Array(constants(ROUNDS, 1 / 3));
const START = new Int32Array(constants(8, 1 / 2));
const w = new Int32Array(ROUNDS);

/**
 * The digest of some bytes, as 64 hex digits.
 * @param {Uint8Array} bytes
 * @returns {string}
 */
export function sha256(bytes) {
  const padded = new Uint8Array(((bytes.length + 72) >> 6) << 6);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, bytes.length << 3);
  const state = START.slice();
  for (let at = 0; at < padded.length; at += 64) {
    for (let i = 0; i < 16; i += 1) w[i] = view.getInt32(at + i * 4);
    block(state);
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

/** @param {Int32Array} state */
function block(state) {
  for (let i = 16; i < ROUNDS; i += 1) {
    w[i] = small(at(i - 2), 17, 19, 10) + at(i - 7) + small(at(i - 15), 7, 18, 3) + at(i - 16);
  }
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let i = 0; i < ROUNDS; i += 1) {
    const one = (h + large(e, 6, 11, 25) + ((e & f) ^ (~e & g)) + (K[i] ?? 0) + at(i)) | 0;
    const two = large(a, 2, 13, 22) + ((a & b) ^ (a & c) ^ (b & c));
    h = g;
    g = f;
    f = e;
    e = (d + one) | 0;
    d = c;
    c = b;
    b = a;
    a = (one + two) | 0;
  }
  for (const [i, word] of [a, b, c, d, e, f, g, h].entries()) state[i] = (state[i] ?? 0) + word;
}

/** @param {number} i */
function at(i) {
  return /** @type {number} */ (w[i]);
}

/** @type {(x: number, one: number, two: number, three: number) => number} */
function large(x, one, two, three) {
  return turned(x, one) ^ turned(x, two) ^ turned(x, three);
}

/** @type {(x: number, one: number, two: number, gone: number) => number} */
function small(x, one, two, gone) {
  return turned(x, one) ^ turned(x, two) ^ (x >>> gone);
}

/** @type {(x: number, by: number) => number} */
function turned(x, by) {
  return (x >>> by) | (x << (32 - by));
}

/**
 * First 32 bits of the fractions of the roots of the first primes.
 * @param {number} many
 * @param {number} power
 */
function constants(many, power) {
  const found = [];
  for (let prime = 2; found.length < many; prime += 1) {
    let divisor = 2;
    while (divisor * divisor <= prime && prime % divisor) divisor += 1;
    const root = prime ** power;
    if (divisor * divisor > prime) found.push(Math.floor((root - Math.floor(root)) * 2 ** 32));
  }
  return found;
}
