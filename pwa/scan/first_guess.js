/** What a symbol probably says, before anything of it is deciphered. */
import { expectedBits, shapes, UNKNOWN } from './expected.js';
import { blocksOf, formatBits, isTurned, LEVELS, layoutOf } from './layout.js';

/** @typedef {'L' | 'M' | 'Q' | 'H'} Level */
/** @typedef {{level: Level, mask: number, bits: Uint8Array, score: number}} Guess */

/** Agreement of a guess, of 1, that chance does not reach. */
const CHANCE = 0.35;
/** The same for the 30 modules of the format alone. */
const FORMAT = 0.6;
const GUESSES = 6;

/**
 * The likeliest ways to begin: level, mask and shape of the text, best first, and at the end
 * the likeliest level and mask with nothing known of the text. None when nothing agrees better than chance would.
 * @param {Float32Array} beliefs
 * @param {number} version
 * @param {string} [address]
 * @returns {Guess[]}
 */
export function guesses(beliefs, version, address) {
  /** @type {(Guess & {share: number})[]} */
  const all = [];
  for (let five = 0; five < 32; five += 1) {
    const level = /** @type {Level} */ (LEVELS[five >> 3]);
    const format = formatScore(beliefs, version, five);
    const seen = unmasked(beliefs, version, five & 7);
    for (const { bits, places, signs } of textsFor(version, level, address)) {
      let { score, total } = format;
      for (let i = 0; i < places.length; i += 1) {
        const belief = /** @type {number} */ (seen[/** @type {number} */ (places[i])]);
        score += belief * /** @type {number} */ (signs[i]);
        total += Math.abs(belief);
      }
      all.push({ level, mask: five & 7, bits, score, share: score / (total || 1) });
    }
  }
  all.sort((a, b) => b.score - a.score);
  const least = (all[0]?.score ?? 0) * 0.75;
  const blank = all.find(({ bits, share }) => share > FORMAT && bits.every((b) => b === UNKNOWN));
  const best = all.slice(0, GUESSES).filter(({ score, share }) => score >= least && share > CHANCE);
  return blank && !best.includes(blank) ? [...best, blank] : best;
}

/** @type {Map<string, {bits: Uint8Array, places: Uint16Array, signs: Int8Array}[]>} */
const texts = new Map();

/**
 * What a label may say at this size and level, and where on the path each known bit lies.
 * @param {number} version
 * @param {Level} level
 * @param {string} [address]
 * @returns {{bits: Uint8Array, places: Uint16Array, signs: Int8Array}[]}
 */
function textsFor(version, level, address) {
  const name = `${version}${level}${address}`;
  let result = texts.get(name);
  if (!result) {
    const order = bitOrder(version, level);
    const open = new Uint8Array(order.length).fill(UNKNOWN);
    const all = [open, ...shapes(address).map((shape) => expectedBits(shape, order.length / 8))];
    result = all
      .filter((bits) => bits !== null)
      .map((bits) => {
        const known = [...bits.keys()].filter((i) => bits[i] !== UNKNOWN);
        const places = Uint16Array.from(known, (i) => order[i] ?? 0);
        return { bits, places, signs: Int8Array.from(known, (i) => (bits[i] ?? 0) * 2 - 1) };
      });
    texts.set(name, result);
  }
  return result;
}

/**
 * @param {Float32Array} beliefs
 * @param {number} version
 * @param {number} five
 * @returns {{score: number, total: number}}
 */
function formatScore(beliefs, version, five) {
  const bits = formatBits(five);
  let score = 0;
  let total = 0;
  for (const places of layoutOf(version).format) {
    places.forEach((place, i) => {
      const belief = beliefs[place] ?? 0;
      score += belief * ((bits >> (14 - i)) & 1 ? 1 : -1);
      total += Math.abs(belief);
    });
  }
  return { score, total };
}

/**
 * @param {Float32Array} beliefs
 * @param {number} version
 * @param {number} mask
 * @returns {Float32Array} per bit of the symbol's path
 */
export function unmasked(beliefs, version, mask) {
  const { path, side } = layoutOf(version);
  return Float32Array.from(path, (place) => {
    const belief = beliefs[place] ?? 0;
    return isTurned(mask, place, side) ? -belief : belief;
  });
}

/**
 * Where on the path each data bit lies.
 * @param {number} version
 * @param {Level} level
 * @returns {number[]}
 */
function bitOrder(version, level) {
  return blocksOf(version, level).flatMap(({ data, order }) => bitsOf(order.slice(0, data)));
}

/**
 * @param {number[]} codewords
 * @returns {number[]}
 */
export function bitsOf(codewords) {
  return codewords.flatMap((word) => Array.from({ length: 8 }, (_, i) => word * 8 + i));
}
