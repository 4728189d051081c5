/** Where the heads of a joint stand in its drawing: a picture of 366 by 182, not to scale. */

export const WIDTH = 366;
export const HEIGHT = 182;
/** More heads than these come too near to each other on a true circle. */
const ROUND_HEADS = 8;
/** Centres nearer than this in both directions would draw one head over another. */
const APART = Object.freeze({ x: 36, y: 32 });
const WHOLE = Object.freeze({ x: 33, y: 36, w: 300, h: 114 });
export const ROUND = Object.freeze({ x: 33, y: 30, w: 300, h: 122 });

/**
 * @typedef {{id: string, number: number, x: number, y: number}} Spot
 * @typedef {{x: number, y: number, w: number, h: number}} Box
 */

/**
 * Points moved and stretched into a box; kept in proportion if asked. A line lies in the box's middle.
 * @param {Spot[]} spots
 * @param {Box} box
 * @param {boolean} proportional
 * @returns {Spot[]}
 */
export function fit(spots, box, proportional) {
  const from = extent(spots);
  let scaleX = from.w ? box.w / from.w : 0;
  let scaleY = from.h ? box.h / from.h : 0;
  if (proportional) {
    const scale = Math.min(from.w ? scaleX : scaleY, from.h ? scaleY : scaleX);
    scaleX = scale;
    scaleY = scale;
  }
  const middle = { x: box.x + box.w / 2, y: box.y + box.h / 2 };
  return spots.map((spot) => ({
    ...spot,
    x: round(middle.x + (spot.x - from.x - from.w / 2) * scaleX),
    y: round(middle.y + (spot.y - from.y - from.h / 2) * scaleY),
  }));
}

/**
 * The box around points.
 * @param {{x: number, y: number}[]} spots
 * @returns {Box}
 */
export function extent(spots) {
  const xs = spots.map((s) => s.x);
  const ys = spots.map((s) => s.y);
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y };
}

/**
 * Whether two heads would lie over each other.
 * @param {Spot[]} spots
 */
export function crowded(spots) {
  const near = (/** @type {Spot} */ a, /** @type {Spot} */ b) =>
    Math.hypot((a.x - b.x) / APART.x, (a.y - b.y) / APART.y) < 1;
  return spots.some((a, i) => spots.slice(i + 1).some((b) => near(a, b)));
}

/**
 * All heads of a joint placed by its pattern.
 * @param {Spot[]} spots
 * @param {string} pattern
 * @returns {Spot[]}
 */
export function placeAll(spots, pattern) {
  if (spots.length < 2) return fit(spots, WHOLE, true);
  if (pattern === 'circle') return placeRound(spots);
  if (pattern === 'points') {
    const kept = fit(spots, WHOLE, true);
    return crowded(kept) ? fit(spots, WHOLE, false) : kept;
  }
  return fit(spots, WHOLE, false);
}

/**
 * A circle while it has room, else an oval with the same gap between all neighbours.
 * @param {Spot[]} spots
 * @returns {Spot[]}
 */
function placeRound(spots) {
  if (spots.length <= ROUND_HEADS) return fit(spots, ROUND, true);
  const from = extent(spots);
  const turn = (/** @type {Spot} */ s) =>
    Math.atan2(s.y - from.y - from.h / 2, s.x - from.x - from.w / 2);
  const byTurn = [...spots].sort((a, b) => turn(a) - turn(b));
  const [first] = byTurn;
  const places = oval(byTurn.length, first ? turn(first) : 0);
  const at = new Map(byTurn.map((spot, i) => [spot.id, places[i]]));
  return spots.map((spot) => ({ ...spot, ...at.get(spot.id) }));
}

/**
 * Points on the oval with equal ways between them.
 * @param {number} count
 * @param {number} start
 */
function oval(count, start) {
  const steps = 720;
  const on = (/** @type {number} */ turn) => ({
    x: round(WIDTH / 2 + (ROUND.w / 2) * Math.cos(turn)),
    y: round(HEIGHT / 2 + (ROUND.h / 2) * Math.sin(turn)),
  });
  const way = [0];
  for (let i = 1; i <= steps; i += 1) {
    const a = on(start + ((i - 1) * 2 * Math.PI) / steps);
    const b = on(start + (i * 2 * Math.PI) / steps);
    way.push(length(way) + Math.hypot(b.x - a.x, b.y - a.y));
  }
  const whole = length(way);
  return Array.from({ length: count }, (_, i) => {
    const step = way.findIndex((w) => w >= (whole * i) / count);
    return on(start + (step * 2 * Math.PI) / steps);
  });
}

/** @param {number[]} way */
const length = (way) => way[way.length - 1] ?? 0;

/** @param {number} value */
export const round = (value) => Math.round(value * 10) / 10;
