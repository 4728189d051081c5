/** Where a symbol may lie, judged from two of its corner squares. */
import { across, wayThrough } from './homography.js';

/** @typedef {import('./reader.js').Point} Point */
/** @typedef {import('./square_fit.js').Square} Square */
/**
 * @typedef {object} Guess
 * @property {import('./homography.js').Way} way
 * @property {number} version
 * @property {import('./grid.js').Spot[]} anchors
 * @property {number[]} reaches
 */

const VERSIONS = [2, 3, 4, 5];
/** @type {Point[]} */
export const QUARTERS = [
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
];
const FROM_TWO = [8, 12, 18, 26, 40];

/**
 * @param {Square} one
 * @param {Square} two
 * @param {Square[]} all among which the third may be
 * @returns {Guess[]}
 */
export function guessesFromTwo(one, two, all) {
  const ahead = seenFrom(one, two.middle);
  const back = seenFrom(two, one.middle);
  const [near, far] = [Math.hypot(...ahead), Math.hypot(...back)];
  if (near / far > 1.6 || far / near > 1.6) return [];
  const long = Math.max(Math.abs(ahead[0]), Math.abs(ahead[1]));
  const short = Math.min(Math.abs(ahead[0]), Math.abs(ahead[1]));
  const steep = short / long;
  if (steep > 0.3 && steep < 0.7) return [];
  // Under a slant, each square sees the distance too long or too short; their mean is nearly right.
  const modules = Math.sqrt(near * far) / (steep > 0.5 ? Math.SQRT2 : 1);
  const fitting = VERSIONS.filter((version) => Math.abs(modules - 10 - 4 * version) < 3.2);
  return fitting
    .flatMap((version) =>
      cornersFor(ahead, steep > 0.5).map((corners) => guessOf([one, two], corners, version, all)),
    )
    .filter((guess) => guess !== null);
}

/**
 * The point in modules as a square sees it.
 * @param {Square} square
 * @param {Point} point
 * @returns {Point}
 */
function seenFrom({ middle, right, down }, point) {
  const [x, y] = [point[0] - middle[0], point[1] - middle[1]];
  const area = right[0] * down[1] - right[1] * down[0];
  return [(x * down[1] - y * down[0]) / area, (y * right[0] - x * right[1]) / area];
}

/**
 * In which corners (-1 or 1 both ways) the two squares can lie.
 * @param {Point} ahead
 * @param {boolean} diagonal
 * @returns {[Point, Point][]}
 */
function cornersFor([u, v], diagonal) {
  const [su, sv] = [Math.sign(u), Math.sign(v)];
  if (diagonal)
    return [
      [
        [-su, -sv],
        [su, sv],
      ],
    ];
  /** @type {[Point, Point][]} */
  const level = [
    [
      [-su, -1],
      [su, -1],
    ],
    [
      [-su, 1],
      [su, 1],
    ],
  ];
  /** @type {[Point, Point][]} */
  const upright = [
    [
      [-1, -sv],
      [-1, sv],
    ],
    [
      [1, -sv],
      [1, sv],
    ],
  ];
  return Math.abs(u) > Math.abs(v) ? level : upright;
}

/**
 * @param {[Square, Square]} squares
 * @param {[Point, Point]} corners
 * @param {number} version
 * @param {Square[]} all
 * @returns {Guess | null}
 */
function guessOf(squares, corners, version, all) {
  const side = 17 + 4 * version;
  const inset = 1 - 7 / side;
  const anchors = corners.map(([p, q]) => ({ p: p * inset, q: q * inset }));
  const square = anchors.flatMap((spot) => cornersOf(spot, side));
  const [one, two] = squares;
  const seen = [...seenCorners(one), ...seenCorners(alike(one, two))];
  const way = wayThrough(square, seen);
  if (!way) return null;
  for (const [p, q] of QUARTERS) {
    if (corners.some((corner) => corner[0] === p && corner[1] === q)) continue;
    const spot = { p: p * inset, q: q * inset };
    const third = near(all, across(way, spot.p, spot.q), squares);
    if (!third) continue;
    const better = wayThrough(
      [...square, ...cornersOf(spot, side)],
      [...seen, ...seenCorners(alike(one, third))],
    );
    if (better) return { way: better, version, anchors: [...anchors, spot], reaches: FROM_TWO };
  }
  return { way, version, anchors, reaches: FROM_TWO };
}

/**
 * @param {Square[]} all
 * @param {Point} point
 * @param {Square[]} taken
 * @returns {Square | undefined} a square not far from the point
 */
function near(all, [x, y], taken) {
  return all.find((square) => {
    if (taken.includes(square)) return false;
    const [u, v] = seenFrom(square, [x, y]);
    return Math.hypot(u, v) < 5;
  });
}

/**
 * @param {import('./grid.js').Spot} spot
 * @param {number} side
 * @returns {Point[]}
 */
export function cornersOf({ p, q }, side) {
  const r = 7 / side;
  return [
    [p - r, q - r],
    [p + r, q - r],
    [p + r, q + r],
    [p - r, q + r],
  ];
}

/**
 * @param {Square} square
 * @returns {Point[]}
 */
export function seenCorners({ middle: [x, y], right, down }) {
  return [
    [-3.5, -3.5],
    [3.5, -3.5],
    [3.5, 3.5],
    [-3.5, 3.5],
  ].map(([u = 0, v = 0]) => [x + u * right[0] + v * down[0], y + u * right[1] + v * down[1]]);
}

/**
 * The second square with its sides named as the first one's are.
 * @param {Square} one
 * @param {Square} two
 * @returns {Square}
 */
function alike(one, two) {
  let best = two;
  let turned = two;
  for (let i = 0; i < 3; i += 1) {
    const { right, down } = turned;
    turned = { ...turned, right: down, down: [-right[0], -right[1]] };
    if (dot(one.right, turned.right) > dot(one.right, best.right)) best = turned;
  }
  return best;
}

/**
 * @param {Point} one
 * @param {Point} two
 * @returns {number}
 */
function dot(one, two) {
  return one[0] * two[0] + one[1] * two[1];
}
