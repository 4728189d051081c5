/** Finding whole symbols from the corner squares that can still be seen, be it one of three. */
import { candidates } from './corner_squares.js';
import { sampleModules, surroundings, tighten } from './grid.js';
import { across } from './homography.js';
import { layoutOf } from './layout.js';
import { darkPixels } from './planes.js';
import { guessesFromOne } from './single_guess.js';
import { fitSquare } from './square_fit.js';
import { guessesFromTwo } from './symbol_guess.js';

/** @typedef {import('./planes.js').Plane} Plane */
/** @typedef {import('./reader.js').Point} Point */
/** @typedef {import('./square_fit.js').Square} Square */
/** @typedef {import('./symbol_guess.js').Guess} Guess */
/**
 * @typedef {object} Symbol a symbol's place, its own top left first
 * @property {import('./homography.js').Way} way
 * @property {number} version
 * @property {number} score 0 to 1, agreement with what every symbol of this size has
 */

/** Agreement that chance alone does not reach. */
const LIKELY = 0.4;
const SURE = 0.6;
/** Reach = half the side of the surroundings that say what is dark, in pixels. */
const LOOKS = /** @type {const} */ ([
  { reach: 40, step: 2 },
  { reach: 16, step: 1 },
]);
const MOST_TIGHTENED = 8;
/** How much a square alone must look like one, with and without a symbol found beside it. */
const WHOLE = 0.75;
const PARTLY = 0.55;
/** Agreement before tightening below which a guess is not worth the time. */
const HOPELESS = 0.1;

/**
 * @param {Plane} plane
 * @returns {{symbols: Symbol[], squares: Square[]}}
 */
export function locate(plane) {
  const squares = cornerSquares(plane);
  /** @type {Symbol[]} */
  const symbols = [];
  const pairs = squares.flatMap((one, i) =>
    squares.slice(i + 1).flatMap((two) => guessesFromTwo(one, two, squares)),
  );
  for (const guess of best(plane, pairs, MOST_TIGHTENED)) settle(plane, guess, symbols);
  const enough = symbols.some(({ score }) => score > SURE) ? WHOLE : PARTLY;
  const lonely = squares.filter(
    ({ middle, score }) => score > enough && !symbols.some((symbol) => holds(symbol, middle)),
  );
  for (const square of lonely.slice(0, 3)) {
    for (const guess of guessesFromOne(plane, square)) settle(plane, guess, symbols);
  }
  return { symbols: symbols.sort((a, b) => b.score - a.score), squares };
}

/**
 * @param {Plane} plane
 * @returns {Square[]}
 */
function cornerSquares(plane) {
  /** @type {Square[]} */
  const squares = [];
  for (const { reach, step } of LOOKS) {
    // The closer look is for small symbols, hard shadows, and corner squares half gone.
    if (squares.filter(({ score }) => score > WHOLE).length >= 3) break;
    const dark = darkPixels(plane, reach);
    for (const candidate of candidates(dark, plane.width, plane.height, step)) {
      const square = fitSquare(plane, candidate);
      if (square && !squares.some((other) => same(other, square))) squares.push(square);
    }
  }
  return squares.sort((a, b) => b.score - a.score).slice(0, 14);
}

/**
 * @param {Square} one
 * @param {Square} two
 */
function same({ middle: [x, y], right }, two) {
  return Math.hypot(x - two.middle[0], y - two.middle[1]) < 2 * Math.hypot(...right);
}

/**
 * The guesses whose modules already look most like a symbol.
 * @param {Plane} plane
 * @param {Guess[]} guesses
 * @param {number} count
 * @returns {Guess[]}
 */
function best(plane, guesses, count) {
  return guesses
    .map((guess) => ({ guess, score: turned(plane, guess.way, guess.version).score }))
    .filter(({ score }) => score > HOPELESS)
    .sort((a, b) => b.score - a.score)
    .slice(0, count)
    .map(({ guess }) => guess);
}

/**
 * Tighten a guess and keep it when it is a symbol, and better than another in the same place.
 * @param {Plane} plane
 * @param {Guess} guess
 * @param {Symbol[]} symbols
 */
function settle(plane, { way, version, anchors, reaches }, symbols) {
  const middle = across(way, 0, 0);
  if (symbols.some((symbol) => symbol.score > SURE + 0.2 && holds(symbol, middle))) return;
  const { side, fixed } = layoutOf(version);
  tighten(plane, way, side, anchors, reaches);
  const first = turned(plane, way, version);
  if (first.score < LIKELY) return;
  tighten(plane, first.way, side, [{ p: 0, q: 0 }], [side, side], fixed);
  const final = turned(plane, first.way, version);
  const symbol = { way: final.way, version, score: final.score };
  if (symbol.score < LIKELY) return;
  const rival = symbols.findIndex((other) => holds(other, across(symbol.way, 0, 0)));
  if (rival < 0) symbols.push(symbol);
  else if ((symbols[rival]?.score ?? 0) < symbol.score) symbols[rival] = symbol;
}

/**
 * The way turned so that the symbol stands upright, and how well it then fits.
 * @param {Plane} plane
 * @param {import('./homography.js').Way} way
 * @param {number} version
 * @returns {{way: import('./homography.js').Way, score: number}}
 */
function turned(plane, way, version) {
  const { side, fixed } = layoutOf(version);
  const values = sampleModules(plane, way, side);
  const { middle, half } = surroundings(values, side);
  const levels = values.map((value, i) => {
    const level = (value - (middle[i] ?? 0)) / (half[i] ?? 1);
    return Math.max(-1, Math.min(1, level));
  });
  const scores = [0, 1, 2, 3].map((turns) => agreement(levels, fixed, side, turns));
  const score = Math.max(...scores);
  return { score, way: turnWay(way, scores.indexOf(score)) };
}

/**
 * @param {Float32Array} levels
 * @param {Int8Array} fixed
 * @param {number} side
 * @param {number} turns quarter turns of the symbol to the right
 * @returns {number} -1 to 1
 */
function agreement(levels, fixed, side, turns) {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < fixed.length; i += 1) {
    const want = fixed[i] ?? 0;
    if (want === 0) continue;
    let x = i % side;
    let y = (i - x) / side;
    for (let turn = 0; turn < turns; turn += 1) [x, y] = [side - 1 - y, x];
    sum -= want * (levels[y * side + x] ?? 0);
    count += 1;
  }
  return sum / count;
}

/**
 * @param {import('./homography.js').Way} way
 * @param {number} turns
 * @returns {import('./homography.js').Way}
 */
function turnWay(way, turns) {
  let result = way.slice();
  for (let i = 0; i < turns; i += 1) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = result;
    result = Float64Array.of(b, -a, c, e, -d, f, h, -g, 1);
  }
  return result;
}

/**
 * @param {Symbol} symbol
 * @param {Point} point
 * @returns {boolean} whether the point lies in the symbol
 */
function holds({ way }, [x, y]) {
  const box = boxOf(way);
  return box.every(([x1, y1], i) => {
    const [x2, y2] = /** @type {Point} */ (box[(i + 1) % 4]);
    return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1) > 0;
  });
}

/**
 * @param {import('./homography.js').Way} way
 * @returns {Point[]} the four corners, the symbol's own top left first
 */
export function boxOf(way) {
  return [across(way, -1, -1), across(way, 1, -1), across(way, 1, 1), across(way, -1, 1)];
}
