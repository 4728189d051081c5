/** Taking an engine apart, place after place: which ones come next? */
import { compared } from './own_place.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */

const PAIRS = Object.freeze([
  ['intake', 'exhaust'],
  ['left', 'right'],
  ['upper', 'lower'],
  ['front', 'rear'],
]);
const FURTHEST = 400;

/**
 * The places that follow the last one: the next number, then the other side of the same number.
 * Places that were used already are passed over.
 * @param {string | null} last
 * @param {string[]} [used]
 * @returns {string[]}
 */
export function nextPlaces(last, used = []) {
  const own = plain.text(last);
  if (own === null) return [];
  const other = otherSide(own);
  const free = other !== null && isFree(other, used) ? other : null;
  const found = [counted(own, used), free ?? (other && counted(other, used))];
  return plain.once(found.filter((place) => place !== null));
}

/** @param {string} place @param {string[]} used */
const isFree = (place, used) => used.every((one) => compared(one, place) !== 'same');

/**
 * The same words with the next number that is free; null where there is no number.
 * @param {string} place
 * @param {string[]} used
 */
function counted(place, used) {
  const [, before = '', digits = '', after = ''] = /^(.*?)([0-9]{1,9})([^0-9]*)$/.exec(place) ?? [];
  if (!digits) return null;
  const first = Number(digits) + 1;
  for (let number = first; number < first + FURTHEST; number += 1) {
    const next = `${before}${number}${after}`;
    if (isFree(next, used)) return next;
  }
  return null;
}

/** Intake for exhaust, left for right. @param {string} place */
function otherSide(place) {
  for (const [one = '', other = ''] of [...PAIRS, ...PAIRS.map((pair) => [...pair].reverse())]) {
    const found = new RegExp(`^(.*\\b)?${one}(\\b.*)?$`, 'i').exec(place);
    if (found) return `${found[1] ?? ''}${other}${found[2] ?? ''}`;
  }
  return null;
}
