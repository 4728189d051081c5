/**
 * The text of a symbol from what is believed of each of its modules. Most of the text is known
 * beforehand and a third of the symbol is correction, so that few modules must be right; what is
 * accepted must agree with all the others far beyond chance.
 */
import { textOf, UNKNOWN } from './expected.js';
import { bitsOf, guesses, unmasked } from './first_guess.js';
import { bitRows } from './galois.js';
import { blocksOf } from './layout.js';
import { nearestWord } from './nearest.js';

/** @typedef {import('./first_guess.js').Guess} Guess */

/** A bit believed less than this, of 1, is no witness. */
const SURE = 0.15;
/** Chance of an accepted block being another's: 1 in 2 to this power, before the check sign. */
const MARGIN = 24;
const TRIES = 8;

/**
 * @param {Float32Array} beliefs per module: above 0 dark, below 0 light, up to 1 how sure
 * @param {number} version
 * @param {string} [address] this computer's own, to be tried first
 * @returns {string | null}
 */
export function decipher(beliefs, version, address) {
  for (const guess of guesses(beliefs, version, address)) {
    const seen = unmasked(beliefs, version, guess.mask);
    const data = readBlocks(seen, version, guess);
    const text = data && textOf(data);
    if (text) return text;
  }
  return null;
}

/**
 * @param {Float32Array} seen
 * @param {number} version
 * @param {Guess} guess
 * @returns {number[] | null} the data bits of all blocks
 */
function readBlocks(seen, version, { level, bits }) {
  const result = [];
  for (const { data, order } of blocksOf(version, level)) {
    const known = bits.subarray(result.length, result.length + data * 8);
    const belief = Float32Array.from(bitsOf(order), (place) => seen[place] ?? 0);
    const word = readBlock(belief, known, order.length - data);
    if (!word) return null;
    result.push(...word.subarray(0, data * 8));
  }
  return result;
}

/**
 * @param {Float32Array} belief
 * @param {Uint8Array} known
 * @param {number} correction codewords of correction
 * @returns {Uint8Array | null}
 */
function readBlock(belief, known, correction) {
  const base = new Uint8Array(belief.length);
  const rows = bitRows(known.length / 8, correction).filter((row, i) => {
    if (known[i] === 1)
      for (let j = 0; j < base.length; j += 1) base[j] = (base[j] ?? 0) ^ (row[j] ?? 0);
    return known[i] === UNKNOWN;
  });
  // What is known beforehand cannot bear witness for the rest.
  const witness = belief.map((value, i) => ((known[i] ?? UNKNOWN) === UNKNOWN ? value : 0));
  const depth = rows.length > 80 ? 1 : 2;
  const chance = dice();
  for (let i = 0; i < TRIES; i += 1) {
    const key = belief.map((value) => Math.abs(value) * (i === 0 ? 1 : 0.2 + chance()));
    const order = [...key.keys()].sort((a, b) => (key[b] ?? 0) - (key[a] ?? 0));
    const { word } = nearestWord({ base, rows }, belief, order, depth);
    if (surplus(word, witness) - rows.length >= MARGIN) return word;
  }
  return null;
}

/**
 * How many bits' worth of agreement the word has with what was seen: a random word agrees in more
 * than this with a chance of 1 in 2 to that power.
 * @param {Uint8Array} word
 * @param {Float32Array} belief
 * @returns {number}
 */
export function surplus(word, belief) {
  let count = 0;
  let against = 0;
  belief.forEach((value, i) => {
    if (Math.abs(value) < SURE) return;
    count += 1;
    if (value > 0 !== (word[i] === 1)) against += 1;
  });
  const share = count === 0 ? 0.5 : against / count;
  if (share >= 0.5) return 0;
  const doubt = share === 0 ? 0 : -share * Math.log2(share) - (1 - share) * Math.log2(1 - share);
  return count * (1 - doubt);
}

/**
 * The same row of numbers each time, so that a picture always gives the same answer.
 * @returns {() => number} from 0 to 1
 */
function dice() {
  let state = 1;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}
