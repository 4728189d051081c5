/**
 * Laying a pattern onto the picture so that it fits best, by small steps along the slopes of the
 * picture (Gauss-Newton, as in Lucas and Kanade's image registration; method from memory).
 */
import { addTo, solve } from './homography.js';
import { brightness } from './planes.js';

/** @typedef {import('./planes.js').Plane} Plane */
/** @typedef {import('./homography.js').Way} Way */
/**
 * @typedef {object} Pattern samples of what should be seen; all arrays are of one length
 * @property {Float32Array} p
 * @property {Float32Array} q
 * @property {Float32Array} target -1 dark to 1 light
 * @property {Float32Array} weight
 * @property {Float32Array} middle the brightness that counts as 0
 * @property {Float32Array} half the brightness from there to light
 * @property {number} modules how many of them the square is wide
 */

/** A sample further off than this is dirt, and pulls no more. */
const DIRT = 1.6;
/** Slopes are taken over this share of a module to each side, which smooths over grain and blur. */
const SOFT = 0.35;

/**
 * One step; the way is changed in place.
 * @param {Plane} plane
 * @param {Way} way
 * @param {Pattern} pattern
 * @param {number} stiffness how much the slant (perspective) resists
 * @returns {number} how far the corners of the square moved, in pixels
 */
export function alignStep(plane, way, pattern, stiffness) {
  const sums = new Float64Array(64);
  const right = new Float64Array(8);
  const line = new Float64Array(8);
  const { p: ps, q: qs, weight } = pattern;
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = way;
  const reach = reachOf(way, pattern.modules);
  for (let i = 0; i < ps.length; i += 1) {
    if (weight[i] === 0) continue;
    const p = /** @type {number} */ (ps[i]);
    const q = /** @type {number} */ (qs[i]);
    const w = g * p + h * q + 1;
    const x = (a * p + b * q + c) / w;
    const y = (d * p + e * q + f) / w;
    const { gx, gy, off, trust } = slope(plane, pattern, i, x, y, reach);
    if (trust === 0) continue;
    line[0] = (gx * p) / w;
    line[1] = (gx * q) / w;
    line[2] = gx / w;
    line[3] = (gy * p) / w;
    line[4] = (gy * q) / w;
    line[5] = gy / w;
    const slant = (gx * x + gy * y) / w;
    line[6] = -slant * p;
    line[7] = -slant * q;
    addTo(sums, right, line, -off, trust * /** @type {number} */ (weight[i]));
  }
  return move(way, sums, right, stiffness);
}

/**
 * @param {Way} way
 * @param {number} modules
 * @returns {number} over how many pixels to each side slopes are taken
 */
function reachOf([a = 0, b = 0, , d = 0, e = 0], modules) {
  return Math.max(0.5, (Math.hypot(a, d) + Math.hypot(b, e)) * (SOFT / modules));
}

/**
 * How far the picture is from what a sample should be, how it changes there, and whether that is
 * to be trusted (0 to 1).
 * @param {Plane} plane
 * @param {Pattern} pattern
 * @param {number} i
 * @param {number} x
 * @param {number} y
 * @param {number} reach
 */
function slope(plane, pattern, i, x, y, reach) {
  const east = brightness(plane, x + reach, y);
  const west = brightness(plane, x - reach, y);
  const south = brightness(plane, x, y + reach);
  const north = brightness(plane, x, y - reach);
  const off = distance(pattern, i, (east + west + south + north) / 4);
  const trust = Math.abs(off) >= DIRT ? 0 : (1 - (off / DIRT) ** 2) ** 2;
  const scale = 1 / (2 * reach * /** @type {number} */ (pattern.half[i]));
  return { gx: (east - west) * scale, gy: (south - north) * scale, off, trust };
}

/**
 * @param {Pattern} pattern
 * @param {number} i
 * @param {number} value
 * @returns {number}
 */
function distance({ middle, half, target }, i, value) {
  const level = (value - /** @type {number} */ (middle[i])) / /** @type {number} */ (half[i]);
  const held = Math.max(-1.3, Math.min(1.3, level));
  return held - /** @type {number} */ (target[i]);
}

/**
 * @param {Way} way
 * @param {Float64Array} sums
 * @param {Float64Array} right
 * @param {number} stiffness
 * @returns {number}
 */
function move(way, sums, right, stiffness) {
  for (let i = 0; i < 8; i += 1) {
    const own = /** @type {number} */ (sums[i * 9]);
    sums[i * 9] = own * (i < 6 ? 1.001 : 1 + stiffness) + 1e-9;
  }
  const change = solve(sums, right);
  if (!change) return 0;
  change.forEach((value, i) => {
    way[i] = /** @type {number} */ (way[i]) + value;
  });
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = change;
  return Math.abs(a) + Math.abs(b) + Math.abs(c) + Math.abs(d) + Math.abs(e) + Math.abs(f);
}
