/**
 * The word of a linear code that lies nearest to what was seen, by ordered statistics: believe the
 * surest bits that fix a word, then try what happens when one or two of those are wrong.
 * source: M. Fossorier, S. Lin, Soft-decision decoding of linear block codes based on ordered
 * statistics, IEEE Trans. Inf. Theory 41 (1995) (method, from memory).
 */

/**
 * @typedef {object} Code words = base + any sum of rows
 * @property {Uint8Array} base
 * @property {Uint8Array[]} rows
 */
/** @typedef {{word: Uint8Array, cost: number}} Near cost = summed belief in the bits given up */

/**
 * @param {Code} code
 * @param {Float32Array} belief per bit: above 0 for one, below 0 for zero, size = how sure
 * @param {number[]} order bits, surest first
 * @param {1 | 2} depth how many of the surest bits may be wrong
 * @returns {Near}
 */
export function nearestWord(code, belief, order, depth) {
  const { rows, pivots } = reduce(code.rows, order);
  const word = code.base.slice();
  rows.forEach((row, i) => {
    const pivot = pivots[i] ?? 0;
    if (word[pivot] !== ((belief[pivot] ?? 0) > 0 ? 1 : 0)) add(word, row);
  });
  const loss = Float32Array.from(belief, (value, i) => (word[i] ? value : -value));
  const best = bestFlips(rows, loss, depth);
  for (const row of best.flips) add(word, row);
  let cost = best.gain;
  for (const value of loss) if (value < 0) cost -= value;
  return { word, cost };
}

/**
 * Row-reduce so that each row alone owns one bit, taken in the given order.
 * @param {Uint8Array[]} given
 * @param {number[]} order
 * @returns {{rows: Uint8Array[], pivots: number[]}}
 */
function reduce(given, order) {
  const left = given.map((row) => Uint8Array.from(row));
  /** @type {Uint8Array[]} */
  const rows = [];
  const pivots = [];
  for (const bit of order) {
    if (left.length === 0) break;
    const found = left.findIndex((row) => row[bit] === 1);
    const [pivot] = found < 0 ? [] : left.splice(found, 1);
    if (!pivot) continue;
    clear([...rows, ...left], bit, pivot);
    rows.push(pivot);
    pivots.push(bit);
  }
  return { rows, pivots };
}

/**
 * @param {Uint8Array[]} rows
 * @param {number} bit
 * @param {Uint8Array} pivot
 */
function clear(rows, bit, pivot) {
  for (const row of rows) if (row[bit] === 1) add(row, pivot);
}

/**
 * @param {Uint8Array} word
 * @param {Uint8Array} row
 */
function add(word, row) {
  for (let i = 0; i < word.length; i += 1) word[i] = (word[i] ?? 0) ^ (row[i] ?? 0);
}

/**
 * @param {Uint8Array[]} rows
 * @param {Float32Array} loss what each bit costs when it is turned over
 * @param {1 | 2} depth
 * @returns {{flips: Uint8Array[], gain: number}} gain is zero or below
 */
function bestFlips(rows, loss, depth) {
  const ones = rows.map((row) => {
    const places = [];
    for (let i = 0; i < row.length; i += 1) if (row[i] === 1) places.push(i);
    return Uint16Array.from(places);
  });
  const single = ones.map((places) => sumOver(places, loss));
  let best = { flips: /** @type {Uint8Array[]} */ ([]), gain: 0 };
  rows.forEach((row, i) => {
    if ((single[i] ?? 0) < best.gain) best = { flips: [row], gain: single[i] ?? 0 };
  });
  if (depth === 1) return best;
  for (let i = 0; i < rows.length; i += 1) {
    const one = /** @type {Uint8Array} */ (rows[i]);
    for (let j = i + 1; j < rows.length; j += 1) {
      const two = /** @type {Uint8Array} */ (rows[j]);
      const gain = (single[i] ?? 0) + (single[j] ?? 0) - 2 * sumOver(ones[j], loss, one);
      if (gain < best.gain) best = { flips: [one, two], gain };
    }
  }
  return best;
}

/**
 * @param {Uint16Array | undefined} places
 * @param {Float32Array} loss
 * @param {Uint8Array} [only]
 * @returns {number}
 */
function sumOver(places, loss, only) {
  let sum = 0;
  for (const place of places ?? []) if (!only || only[place] === 1) sum += loss[place] ?? 0;
  return sum;
}
