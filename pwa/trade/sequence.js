/** In which order the fasteners of a joint are tightened, and where they are drawn. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { count as counted, finite } from './amounts.js';

export const PATTERNS = Object.freeze(['circle', 'rows', 'line', 'points']);
export const MOST = 400;
export const WIDTH = 1000;
export const HEIGHT = 500;
export const EDGE = 60;
export const TOP = 90;
const RADIUS = 200;
const QUARTER_STARTS = /** @type {Record<number, number[]>} */ ({
  3: [1, 2, 3],
  6: [1, 4, 2, 5, 3, 6],
  7: [1, 4, 6, 2, 5, 7, 3],
  8: [1, 5, 3, 7, 2, 6, 4, 8],
});

/** A joint without fasteners has no order. */
export class NoFasteners extends TradeError {
  static code = 'sequence-no-fasteners';
  static says = 'This joint has no fasteners.';
  static nextStep = 'Say how many there are.';
}

/** More than any joint of an engine has. */
export class TooManyFasteners extends TradeError {
  static code = 'sequence-too-many';
  static says = '{count} fasteners are more than one joint has.';
  static nextStep = 'Count again, or make several joints of it.';
}

/** A pattern nobody draws here. */
export class PatternUnknown extends TradeError {
  static code = 'sequence-pattern-unknown';
  static says = '{pattern} is no pattern of fasteners.';
  static nextStep = 'Choose circle, rows, line or points.';
}

/** Rows that cannot hold the fasteners. */
export class RowsUnclear extends TradeError {
  static code = 'sequence-rows';
  static says = '{count} fasteners do not stand in {rows} rows.';
  static nextStep = 'Say how many rows there are, from one to the number of fasteners.';
}

/**
 * Numbers of the fasteners in the order of tightening.
 * @param {string} pattern
 * @param {number} count
 * @param {number} [rows]
 * @returns {number[]}
 */
export function order(pattern, count, rows = 2) {
  refuse(pattern, count, rows);
  if (pattern === 'circle') return circle(count);
  if (pattern === 'line') return outwards(count, 1);
  return pattern === 'rows' ? outwards(count, rows) : range(1, count);
}

/**
 * The order of loosening: the reverse, so that the last is the first to give.
 * @template T
 * @param {T[]} tightening
 */
export function loosening(tightening) {
  return [...many(tightening, 'order')].reverse();
}

/**
 * Where each fastener is drawn, x 0…1000 to the right and y 0…500 downwards, by number.
 * @param {string} pattern
 * @param {number} count
 * @param {number} [rows]
 * @returns {[number, number][]}
 */
export function positions(pattern, count, rows = 2) {
  refuse(pattern, count, rows);
  const places = range(0, count - 1);
  if (pattern === 'circle') return places.map((i) => onCircle((2 * Math.PI * i) / count));
  const lines = pattern === 'rows' ? rows : 1;
  const columns = Math.ceil(count / lines);
  return places.map((i) => [
    spread(EDGE, WIDTH - EDGE, i % columns, columns),
    spread(TOP, HEIGHT - TOP, Math.floor(i / columns), lines),
  ]);
}

/**
 * The drawing of a joint: its fasteners by number, each with its turn and its place.
 * @param {string} pattern
 * @param {number} count
 * @param {number} [rows]
 * @param {boolean} [loosen]
 */
export function drawn(pattern, count, rows = 2, loosen = false) {
  const tightening = order(pattern, count, rows);
  const turns = loosen ? loosening(tightening) : tightening;
  const turn = new Map(turns.map((number, place) => [number, place + 1]));
  return positions(pattern, count, rows).map(([x, y], i) =>
    Object.freeze({ number: i + 1, turn: turn.get(i + 1) ?? 0, x, y }),
  );
}

/**
 * @param {string} pattern
 * @param {number} count
 * @param {number} rows
 */
function refuse(pattern, count, rows) {
  if (!PATTERNS.includes(pattern)) throw new PatternUnknown({ pattern });
  if (finite(count, 'count') >= 1) counted(count, 'count', 1);
  if (pattern === 'rows') counted(rows, 'rows');
  if (count < 1) throw new NoFasteners();
  if (count > MOST) throw new TooManyFasteners({ count });
  if (pattern === 'rows' && !(rows >= 1 && rows <= count)) throw new RowsUnclear({ count, rows });
}

/**
 * @param {number} first
 * @param {number} last
 */
function range(first, last) {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

/** @param {number} count */
function circle(count) {
  if (count % 4 === 0) {
    const quarter = count / 4;
    const numbers = range(1, quarter);
    const oddFirst = [...numbers.filter((n) => n % 2), ...numbers.filter((n) => n % 2 === 0)];
    const starts = QUARTER_STARTS[quarter] ?? oddFirst;
    return starts.flatMap((start) => [0, 2, 1, 3].map((turn) => start + turn * quarter));
  }
  if (count % 2 === 0) return star(count / 2).flatMap((start) => [start, start + count / 2]);
  return star(count);
}

/**
 * An odd number, each time just short of half way round, comes by every place once.
 * @param {number} count
 */
function star(count) {
  return range(0, count - 1).map((i) => 1 + ((i * Math.floor(count / 2)) % count));
}

/**
 * @param {number} count
 * @param {number} rows
 */
function outwards(count, rows) {
  const columns = Math.ceil(count / rows);
  const places = range(0, count - 1).map((index) => {
    const across = 2 * (index % columns) - (columns - 1);
    const down = 2 * Math.floor(index / columns) - (rows - 1);
    const ring = Math.abs(across) + Math.abs(down);
    return { number: index + 1, ring, angle: Math.atan2(down, across) };
  });
  places.sort((a, b) => a.ring - b.ring || a.angle - b.angle || a.number - b.number);
  return places.map(({ number }) => number);
}

/**
 * @param {number} angle
 * @returns {[number, number]}
 */
function onCircle(angle) {
  return [
    Math.floor(WIDTH / 2 + RADIUS * Math.sin(angle) + 0.5),
    Math.floor(HEIGHT / 2 - RADIUS * Math.cos(angle) + 0.5),
  ];
}

/**
 * @param {number} low
 * @param {number} high
 * @param {number} index
 * @param {number} count
 */
function spread(low, high, index, count) {
  if (count === 1) return Math.floor((low + high) / 2);
  return low + Math.floor((2 * (high - low) * index + count - 1) / (2 * (count - 1)));
}
