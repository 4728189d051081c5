/** Where a symbol may lie, judged from one corner square alone. */
import { across, wayThrough } from './homography.js';
import { brightness } from './planes.js';
import { cornersOf, QUARTERS, seenCorners } from './symbol_guess.js';

/** @typedef {import('./planes.js').Plane} Plane */
/** @typedef {import('./reader.js').Point} Point */
/** @typedef {import('./square_fit.js').Square} Square */
/** @typedef {import('./symbol_guess.js').Guess} Guess */

/** From a small beginning the grid is followed outwards, a few modules at a time. */
const REACHES = [5, 7, 9, 12, 15, 19, 24, 30, 40];

/**
 * From one square alone, on the sides where it has no empty margin.
 * @param {Plane} plane
 * @param {Square} square
 * @returns {Guess[]}
 */
export function guessesFromOne(plane, square) {
  const likely = QUARTERS.map((way) => ({ way, busy: business(plane, square, way) }))
    .sort((a, b) => b.busy - a.busy)
    .slice(0, 2);
  return [3, 4]
    .flatMap((version) =>
      likely.map(({ way: [u, v] }) => {
        const side = 17 + 4 * version;
        const spot = { p: -u * (1 - 7 / side), q: -v * (1 - 7 / side) };
        const way = wayThrough(cornersOf(spot, side), seenCorners(square));
        return way && { way, version, anchors: [spot], reaches: REACHES };
      }),
    )
    .filter((guess) => guess !== null);
}

/**
 * How much more the picture changes on one side of the square than on the other.
 * @param {Plane} plane
 * @param {Square} square
 * @param {Point} way
 * @returns {number}
 */
function business(plane, { middle, right, down }, [u, v]) {
  const frame = Float64Array.of(
    right[0],
    down[0],
    middle[0],
    right[1],
    down[1],
    middle[1],
    0,
    0,
    1,
  );
  /** @param {number} sign */
  const change = (sign) => {
    let sum = 0;
    for (let i = -3; i <= 3; i += 1) {
      const values = [5.5, 6.5, 7.5, 8.5].flatMap((far) => [
        brightness(plane, ...across(frame, sign * u * far, i)),
        brightness(plane, ...across(frame, i, sign * v * far)),
      ]);
      sum += Math.max(...values) - Math.min(...values);
    }
    return sum;
  };
  return change(1) - change(-1);
}
