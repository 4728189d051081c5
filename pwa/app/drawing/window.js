/** What is drawn of a joint: all of it, or the seven heads around the next one and a plan. */

import { crowded, fit, placeAll, round, WIDTH } from './place.js';

const MOST_HEADS = 16;
const WINDOW_HEADS = 7;

/** @typedef {import('./place.js').Spot} Spot */
/** @typedef {import('./place.js').Box} Box */

/**
 * The fasteners nearest to one of them, itself first. In rows the columns count, so that the window
 * shows what lies opposite too.
 * @param {Spot[]} spots
 * @param {string} id
 * @param {string} [pattern]
 */
export function around(spots, id, pattern) {
  const middle = spots.find((s) => s.id === id) ?? spots[0] ?? { x: 0, y: 0 };
  const flat = pattern === 'rows' ? 0.01 : 1;
  const far = (/** @type {Spot} */ s) => Math.hypot(s.x - middle.x, (s.y - middle.y) * flat);
  return [...spots].sort((a, b) => far(a) - far(b)).slice(0, WINDOW_HEADS);
}

/**
 * What is drawn: all heads, or the seven around the next one and a plan of the whole.
 * @param {Spot[]} spots
 * @param {string} pattern
 * @param {string} next
 * @returns {{heads: Spot[], plan: {spots: Spot[], box: Box, shown: Set<string>} | null, area: Box}}
 */
export function layOut(spots, pattern, next) {
  const whole = placeAll(spots, pattern);
  if (spots.length <= MOST_HEADS && !crowded(whole)) {
    return { heads: whole, plan: null, area: { x: 4, y: 8, w: 358, h: 170 } };
  }
  const near = around(spots, next, pattern);
  const { area, box, heads } = windowOf(near, pattern);
  const plan = fit(spots, shrunk(box, 7), pattern !== 'rows');
  return { heads, plan: { spots: plan, box, shown: new Set(near.map((s) => s.id)) }, area };
}

/**
 * The window beside the plan where that has room, else above it.
 * @param {Spot[]} near
 * @param {string} pattern
 * @returns {{area: Box, box: Box, heads: Spot[]}}
 */
function windowOf(near, pattern) {
  const beside = { area: { x: 4, y: 8, w: 250, h: 170 }, box: { x: 266, y: 56, w: 92, h: 70 } };
  const above = { area: { x: 4, y: 4, w: 358, h: 118 }, box: { x: 103, y: 130, w: 160, h: 48 } };
  if (pattern === 'circle') return { ...above, heads: arch(near) };
  const heads = fit(near, inner(beside.area), pattern !== 'rows');
  if (!crowded(heads)) return { ...beside, heads };
  return { ...above, heads: fit(near, inner(above.area), pattern !== 'rows') };
}

/**
 * Neighbours on a circle as an arch, the first in the middle, as far apart as there is room.
 * @param {Spot[]} near
 * @returns {Spot[]}
 */
function arch(near) {
  const [middle = { id: '', number: 0, x: 500, y: 250 }] = near;
  const centre = { x: 500, y: 250 };
  const base = Math.atan2(middle.y - centre.y, middle.x - centre.x);
  const turn = (/** @type {Spot} */ s) => {
    const t = Math.atan2(s.y - centre.y, s.x - centre.x) - base;
    return Math.atan2(Math.sin(t), Math.cos(t));
  };
  const ordered = [...near].sort((a, b) => turn(a) - turn(b));
  const at = ordered.indexOf(middle);
  const sag = middle.y > centre.y ? -1 : 1;
  return ordered.map((spot, i) => ({
    ...spot,
    x: WIDTH / 2 + (i - at) * 47 * sag,
    y: round(63 + sag * ((i - at) ** 2 * 4 - 18)),
  }));
}

/** @param {Box} area */
const inner = (area) => ({ x: area.x + 32, y: area.y + 31, w: area.w - 64, h: area.h - 62 });

/**
 * @param {Box} box
 * @param {number} by
 */
const shrunk = (box, by) => ({
  x: box.x + by,
  y: box.y + by,
  w: box.w - 2 * by,
  h: box.h - 2 * by,
});
