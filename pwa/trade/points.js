/** Fasteners that stand where somebody put them: an order from the middle outwards, and a drawing. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { finite } from './amounts.js';
import { EDGE, HEIGHT, MOST, NoFasteners, TOP, TooManyFasteners, WIDTH } from './sequence.js';

/** @typedef {readonly number[]} Point */

const STEPS = 1e9;

/** Two fasteners in one hole. */
export class PointsMeet extends TradeError {
  static code = 'points-meet';
  static says = 'Fasteners {one} and {other} stand at the same place.';
  static nextStep = 'Move one of them.';
}

/** A place that is not two numbers. */
export class PointUnclear extends TradeError {
  static code = 'points-place';
  static says = 'Fastener {number} has no place.';
  static nextStep = 'Give each its two coordinates.';
}

/**
 * Numbers of free-standing fasteners from the middle of their outline outwards, in a spiral.
 * @param {readonly Point[]} points x to the right, y downwards, in any one unit
 */
export function order(points) {
  const places = checked(points);
  const { left, right, top, bottom } = outline(places);
  const size = Math.max(right - left, bottom - top) || 1;
  const spiral = places.map(([x, y], index) => {
    const across = (x - (left + right) / 2) / size;
    const down = (y - (top + bottom) / 2) / size;
    const ring = Math.floor(Math.hypot(across, down) * STEPS + 0.5);
    return { number: index + 1, ring, angle: Math.atan2(down, across) };
  });
  spiral.sort((a, b) => a.ring - b.ring || a.angle - b.angle || a.number - b.number);
  return spiral.map(({ number }) => number);
}

/**
 * Where each is drawn, x 0…1000 and y 0…500, as large as fits without being drawn out.
 * @param {readonly Point[]} points
 * @returns {[number, number][]}
 */
export function positions(points) {
  const places = checked(points);
  const { left, right, top, bottom } = outline(places);
  const scales = [
    [WIDTH - 2 * EDGE, right - left],
    [HEIGHT - 2 * TOP, bottom - top],
  ].flatMap(([space = 0, extent = 0]) => (extent ? [space / extent] : []));
  const scale = scales.length ? Math.min(...scales) : 1;
  return places.map(([x, y]) => [
    Math.floor(WIDTH / 2 + (x - (left + right) / 2) * scale + 0.5),
    Math.floor(HEIGHT / 2 + (y - (top + bottom) / 2) * scale + 0.5),
  ]);
}

/** @param {[number, number][]} places */
function outline(places) {
  const across = places.map(([x]) => x);
  const down = places.map(([, y]) => y);
  return {
    left: Math.min(...across),
    right: Math.max(...across),
    top: Math.min(...down),
    bottom: Math.max(...down),
  };
}

/**
 * @param {readonly Point[]} points
 * @returns {[number, number][]}
 */
function checked(points) {
  if (many(points, 'points').length < 1) throw new NoFasteners();
  if (points.length > MOST) throw new TooManyFasteners({ count: points.length });
  const seen = new Map();
  return points.map((point, index) => {
    if (many(point, 'point').length !== 2) throw new PointUnclear({ number: index + 1 });
    const [x, y] = /** @type {[number, number]} */ (point.map((each) => finite(each, 'place')));
    const key = `${x},${y}`;
    if (seen.has(key)) throw new PointsMeet({ one: seen.get(key), other: index + 1 });
    seen.set(key, index + 1);
    return [x, y];
  });
}
