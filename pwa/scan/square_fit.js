/** Fitting one corner square exactly: its middle, its slant and how well it looks like one. */
import { alignStep } from './align.js';
import { across } from './homography.js';
import { brightness } from './planes.js';

/** @typedef {import('./planes.js').Plane} Plane */
/** @typedef {import('./reader.js').Point} Point */
/**
 * @typedef {object} Square
 * @property {Point} middle
 * @property {Point} right one module along its first side
 * @property {Point} down one module along its second side
 * @property {number} score 0 to 1, how much it looks like a corner square
 */

/** Modules a side that are compared: the square and its margin. */
const SPAN = 9;
const FINE = SPAN * 2;

/** @param {number} distance from the middle, in modules */
const shade = (distance) => (distance < 1.5 || (distance > 2.5 && distance < 3.5) ? -1 : 1);

const COARSE = samples(SPAN);
const DETAIL = samples(FINE);

/**
 * @param {number} count samples a side
 * @returns {import('./align.js').Pattern}
 */
function samples(count) {
  const total = count * count;
  const pattern = {
    p: new Float32Array(total),
    q: new Float32Array(total),
    target: new Float32Array(total),
    weight: new Float32Array(total).fill(1),
    middle: new Float32Array(total),
    half: new Float32Array(total),
    modules: SPAN,
  };
  for (let i = 0; i < total; i += 1) {
    const p = ((i % count) + 0.5) / count;
    const q = (Math.floor(i / count) + 0.5) / count;
    pattern.p[i] = 2 * p - 1;
    pattern.q[i] = 2 * q - 1;
    pattern.target[i] = blurred((p - 0.5) * SPAN, (q - 0.5) * SPAN);
  }
  return pattern;
}

/**
 * The square as a lens shows it, a little soft.
 * @param {number} u
 * @param {number} v
 * @returns {number}
 */
function blurred(u, v) {
  let sum = 0;
  for (const du of [-0.3, 0, 0.3]) {
    for (const dv of [-0.3, 0, 0.3]) sum += shade(Math.max(Math.abs(u + du), Math.abs(v + dv)));
  }
  return sum / 9;
}

/**
 * @param {Plane} plane
 * @param {import('./corner_squares.js').Candidate} candidate
 * @returns {Square | null}
 */
export function fitSquare(plane, { x, y, module }) {
  let best = { score: 0, way: new Float64Array(0) };
  for (let turn = 0; turn < 90; turn += 15) {
    const angle = (turn * Math.PI) / 180;
    // A line across a turned square is longer than its side.
    const along = module * Math.max(Math.cos(angle), Math.sin(angle));
    for (const size of [along * 0.87, along * 0.96, along * 1.06]) {
      const c = (Math.cos(angle) * size * SPAN) / 2;
      const s = (Math.sin(angle) * size * SPAN) / 2;
      const way = Float64Array.of(c, -s, x, s, c, y, 0, 0, 1);
      const { score } = likeness(plane, way, COARSE);
      if (score > best.score) best = { score, way };
    }
  }
  return best.score < 0.35 ? null : refine(plane, best.way);
}

/**
 * @param {Plane} plane
 * @param {import('./homography.js').Way} way
 * @returns {Square | null}
 */
function refine(plane, way) {
  for (let i = 0; i < 5; i += 1) {
    const { middle, half } = likeness(plane, way, DETAIL);
    DETAIL.middle.fill(middle);
    DETAIL.half.fill(Math.max(2, half));
    if (alignStep(plane, way, DETAIL, 1e6) < 0.1) break;
  }
  const { score } = likeness(plane, way, DETAIL);
  const [a = 0, b = 0, , d = 0, e = 0] = way;
  const unit = 2 / SPAN;
  const ratio = Math.hypot(a, d) / Math.hypot(b, e);
  if (!(score > 0.5 && ratio > 0.4 && ratio < 2.5 && a * e - b * d > 0)) return null;
  return {
    middle: across(way, 0, 0),
    right: [a * unit, d * unit],
    down: [b * unit, e * unit],
    score,
  };
}

/**
 * Correlation with the pattern, and the brightness of its middle and half range.
 * @param {Plane} plane
 * @param {import('./homography.js').Way} way
 * @param {import('./align.js').Pattern} pattern
 * @returns {{score: number, middle: number, half: number}}
 */
function likeness(plane, way, { p, q, target }) {
  let [s, t, ss, tt, st] = [0, 0, 0, 0, 0];
  const n = p.length;
  for (let i = 0; i < n; i += 1) {
    const [x, y] = across(way, p[i] ?? 0, q[i] ?? 0);
    const value = brightness(plane, x, y);
    const want = target[i] ?? 0;
    s += value;
    t += want;
    ss += value * value;
    tt += want * want;
    st += value * want;
  }
  const varS = ss - (s * s) / n;
  const varT = tt - (t * t) / n;
  const both = st - (s * t) / n;
  const half = both / varT;
  return {
    score: varS < 4 * n ? 0 : both / Math.sqrt(varS * varT),
    half,
    middle: s / n - (half * t) / n,
  };
}
