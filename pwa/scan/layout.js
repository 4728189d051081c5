/**
 * Where everything lies in a QR symbol of version 2 to 5 (25 to 37 modules a side).
 * source: ISO/IEC 18004:2015, 6.3 (structure), 7.7.3 (placing), 7.8.2 (masks), 7.9 (format), table 9.
 */

/**
 * @typedef {object} Layout
 * @property {number} version
 * @property {number} side modules a side
 * @property {Int8Array} fixed per module 1 dark, -1 light, 0 data or format
 * @property {Uint16Array} path the data modules in the order of their bits
 * @property {Uint16Array[]} format the two copies of the format bits, highest bit first
 */

/** @type {Map<number, Layout>} */
const made = new Map();

/**
 * @param {number} version
 * @returns {Layout}
 */
export function layoutOf(version) {
  let layout = made.get(version);
  if (!layout) {
    layout = makeLayout(version);
    made.set(version, layout);
  }
  return layout;
}

/**
 * @param {number} version
 * @returns {Layout}
 */
function makeLayout(version) {
  const side = 17 + 4 * version;
  const fixed = new Int8Array(side * side);
  for (let i = 0; i < side; i += 1) {
    fixed[6 * side + i] = i % 2 === 0 ? 1 : -1;
    fixed[i * side + 6] = i % 2 === 0 ? 1 : -1;
  }
  drawSquares(fixed, side);
  fixed[(side - 8) * side + 8] = 1;
  const format = formatPlaces(side);
  const taken = new Set(format.flatMap((places) => [...places]));
  return { version, side, fixed, path: dataPath(fixed, taken, side), format };
}

/**
 * The three corner squares with their margins, and the small square of alignment.
 * @param {Int8Array} fixed
 * @param {number} side
 */
function drawSquares(fixed, side) {
  const far = side - 7;
  drawSquare(fixed, side, [3, 3], 4);
  drawSquare(fixed, side, [far + 3, 3], 4);
  drawSquare(fixed, side, [3, far + 3], 4);
  drawSquare(fixed, side, [far, far], 2);
}

/**
 * @param {Int8Array} fixed
 * @param {number} side
 * @param {[number, number]} middle
 * @param {number} reach
 */
function drawSquare(fixed, side, [x, y], reach) {
  for (let dy = -reach; dy <= reach; dy += 1) {
    for (let dx = -reach; dx <= reach; dx += 1) {
      const [column, row] = [x + dx, y + dy];
      const inside = Math.min(column, row) >= 0 && Math.max(column, row) < side;
      if (inside) fixed[row * side + column] = ring(dx, dy, reach);
    }
  }
}

/**
 * @param {number} dx
 * @param {number} dy
 * @param {number} reach
 * @returns {1 | -1}
 */
function ring(dx, dy, reach) {
  const distance = Math.max(Math.abs(dx), Math.abs(dy));
  if (reach === 2) return distance === 1 ? -1 : 1;
  return distance === 2 || distance === 4 ? -1 : 1;
}

/**
 * @param {number} side
 * @returns {Uint16Array[]}
 */
function formatPlaces(side) {
  const one = [];
  const two = [];
  for (let i = 0; i < 6; i += 1) one.push([i, 8]);
  one.push([7, 8], [8, 8], [8, 7]);
  for (let i = 5; i >= 0; i -= 1) one.push([8, i]);
  for (let i = 0; i < 7; i += 1) two.push([8, side - 1 - i]);
  for (let i = 0; i < 8; i += 1) two.push([side - 8 + i, 8]);
  return [one, two].map((places) => Uint16Array.from(places, ([x = 0, y = 0]) => y * side + x));
}

/**
 * Two columns at a time from the right, up and down in turn, past the column of the timing line.
 * @param {Int8Array} fixed
 * @param {Set<number>} taken
 * @param {number} side
 * @returns {Uint16Array}
 */
function dataPath(fixed, taken, side) {
  const all = [];
  for (let pair = 0; pair < (side - 1) / 2; pair += 1) {
    const right = side - 1 - 2 * pair;
    const column = right <= 6 ? right - 1 : right;
    for (let i = 0; i < side; i += 1) {
      const row = pair % 2 === 0 ? side - 1 - i : i;
      all.push(row * side + column, row * side + column - 1);
    }
  }
  return Uint16Array.from(all.filter((place) => fixed[place] === 0 && !taken.has(place)));
}

/** @type {((x: number, y: number) => number)[]} zero where the mask turns a module over */
const MASKS = [
  (x, y) => (x + y) % 2,
  (_, y) => y % 2,
  (x) => x % 3,
  (x, y) => (x + y) % 3,
  (x, y) => (Math.floor(y / 2) + Math.floor(x / 3)) % 2,
  (x, y) => ((x * y) % 2) + ((x * y) % 3),
  (x, y) => (((x * y) % 2) + ((x * y) % 3)) % 2,
  (x, y) => (((x + y) % 2) + ((x * y) % 3)) % 2,
];

/**
 * @param {number} mask
 * @param {number} place
 * @param {number} side
 * @returns {boolean}
 */
export function isTurned(mask, place, side) {
  return MASKS[mask]?.(place % side, Math.floor(place / side)) === 0;
}

/**
 * The 15 format bits for five bits of level and mask.
 * @param {number} five
 * @returns {number}
 */
export function formatBits(five) {
  let rest = five << 10;
  for (let bit = 14; bit >= 10; bit -= 1) {
    if (rest & (1 << bit)) rest ^= 0b10100110111 << (bit - 10);
  }
  return ((five << 10) | rest) ^ 0b101010000010010;
}

/** The two bits of a level in the format. */
export const LEVELS = /** @type {const} */ (['M', 'L', 'H', 'Q']);

/**
 * Data codewords and blocks; the rest of each block is for correction.
 * @type {Record<number, Record<string, [codewords: number, data: number[]]>>}
 */
const BLOCKS = {
  2: { L: [44, [34]], M: [44, [28]], Q: [44, [22]], H: [44, [16]] },
  3: { L: [70, [55]], M: [70, [44]], Q: [70, [17, 17]], H: [70, [13, 13]] },
  4: { L: [100, [80]], M: [100, [32, 32]], Q: [100, [24, 24]], H: [100, [9, 9, 9, 9]] },
  5: {
    L: [134, [108]],
    M: [134, [43, 43]],
    Q: [134, [15, 15, 16, 16]],
    H: [134, [11, 11, 12, 12]],
  },
};

/**
 * For each block the places of its codewords in the order of the symbol, data first.
 * @param {number} version
 * @param {'L' | 'M' | 'Q' | 'H'} level
 * @returns {{data: number, order: number[]}[]}
 */
export function blocksOf(version, level) {
  const [codewords, data] = BLOCKS[version]?.[level] ?? [0, []];
  const correction = (codewords - data.reduce((sum, count) => sum + count, 0)) / data.length;
  const blocks = data.map((count) => ({ data: count, order: /** @type {number[]} */ ([]) }));
  let next = 0;
  for (let i = 0; i < Math.max(...data); i += 1) {
    for (const block of blocks) if (i < block.data) block.order.push(next++);
  }
  for (let i = 0; i < correction; i += 1) for (const block of blocks) block.order.push(next++);
  return blocks;
}
