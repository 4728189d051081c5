/** How far a bore or journal is from round and straight, by what was read at its spots. */
import { outOfRoundOfPlanes, taperAlong } from '../trade/shape.js';
import { convertDifference, quantityOf } from '../trade/units.js';
import * as plain from './plain.js';

/** @typedef {import('./reading.js').Spot & {mean: number}} Mean */

/**
 * The worst position's largest less its smallest diameter, or null.
 * @param {Mean[]} spots
 * @param {string} unit
 */
export function outOfRoundOf(spots, unit) {
  const rings = byPosition(spots).filter((ring) => ring.length > 1);
  return shapeOf(outOfRoundOfPlanes, rings.map(means), unit);
}

/**
 * The largest less the smallest diameter along the bore or journal, in the worst direction, or null.
 * Only a diameter, or what is measured in directions, has one: two ends of a rod have none.
 * @param {plain.Facts} measure
 * @param {Mean[]} spots
 * @param {string} unit
 */
export function taperOf(measure, spots, unit) {
  const round = plain.text(measure.quantity) === 'diameter';
  if (!round && !plain.texts(measure.directions).length) return null;
  const rings = byPosition(spots);
  const shared = (rings[0] ?? []).filter((one) => rings.every((ring) => alongIn(ring, one)));
  if (rings.length < 2 || !shared.length) return null;
  const planes = rings.map((ring) => means(shared.flatMap((one) => alongIn(ring, one) ?? [])));
  return shapeOf(taperAlong, planes, unit);
}

/** @param {Mean[]} spots */
const means = (spots) => spots.map(({ mean }) => mean);

/** What was read in the same direction. @param {Mean[]} ring @param {Mean} one */
const alongIn = (ring, one) => ring.find(({ direction }) => direction === one.direction);

/** @param {Mean[]} spots */
const byPosition = (spots) =>
  plain
    .once(spots.map(({ position }) => position))
    .map((position) => spots.filter((spot) => spot.position === position));

/**
 * A difference of diameters, in a unit; null where nothing is left, or they are no diameters.
 * @param {(planesMm: number[][]) => number} rule
 * @param {number[][]} planes
 * @param {string} unit
 */
function shapeOf(rule, planes, unit) {
  if (!planes.length || quantityOf(unit) !== 'length') return null;
  const planesMm = planes.map((plane) => plane.map((each) => convertDifference(each, unit, 'mm')));
  if (planesMm.flat().some((each) => each < LEAST)) return null;
  return convertDifference(rule(planesMm), 'mm', unit);
}

/** Less is no diameter. */
const LEAST = 1e-9;
