/** Reading plain JSON that may be odd: what has not the shape asked for is null or empty. */
import { measured as toMeasured } from '../trade/units.js';

/** @typedef {import('../trade/units.js').Measured} Measured */
/** @typedef {ReturnType<typeof import('../log/workshop.js').Workshop>} Workshop */
/** @typedef {Record<string, any>} Facts */
/** @typedef {[number, number, string][]} NaturalKey */

const BLANKS = /^[ \t\r\n\u00a0]+|[ \t\r\n\u00a0]+$/g;

/**
 * The text without blanks around it, or null when nothing is left.
 * @param {unknown} value
 * @returns {string | null}
 */
export function text(value) {
  return typeof value === 'string' ? value.replace(BLANKS, '') || null : null;
}

/**
 * The text of an id as it is, or none at all; never another value made into text.
 * @param {unknown} value
 */
export function asId(value) {
  return typeof value === 'string' ? value : '';
}

/**
 * The whole number, or null.
 * @param {unknown} value
 * @returns {number | null}
 */
export function whole(value) {
  return Number.isSafeInteger(value) ? /** @type {number} */ (value) : null;
}

/**
 * The list, or an empty one.
 * @param {unknown} value
 * @returns {any[]}
 */
export function listed(value) {
  return Array.isArray(value) ? value : [];
}

/**
 * The texts of a list, others left out.
 * @param {unknown} value
 * @returns {string[]}
 */
export function texts(value) {
  return listed(value).filter((each) => typeof each === 'string');
}

/**
 * @param {unknown} value
 * @returns {value is Facts}
 */
function isMapping(value) {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * The object, or an empty one.
 * @param {unknown} value
 * @returns {Facts}
 */
export function mapping(value) {
  return isMapping(value) ? value : {};
}

/**
 * The objects of a list, others left out.
 * @param {unknown} value
 * @returns {Facts[]}
 */
export function mappings(value) {
  return listed(value).filter(isMapping);
}

/**
 * A measured value as it was kept, or null.
 * @param {unknown} kept
 * @returns {Measured | null}
 */
export function measured(kept) {
  const { value, unit } = mapping(kept);
  return typeof value === 'string' && typeof unit === 'string' ? { value, unit } : null;
}

/**
 * A measured value to compute with, or null where number or unit cannot be read.
 * @param {unknown} value
 * @returns {Measured | null}
 */
export function quantity(value) {
  const kept = measured(value);
  try {
    return kept && toMeasured(kept.value, kept.unit);
  } catch {
    return null;
  }
}

/**
 * A key that sorts "Pushrod 2" before "Pushrod 10", and the nameless last.
 * @param {string | null} name
 * @returns {NaturalKey}
 */
export function natural(name) {
  if (name === null) return [[2, 0, '']];
  return (name.toLowerCase().match(/[0-9]+|[^0-9]+/g) ?? []).map((piece) => {
    if (!/^[0-9]/.test(piece)) return [1, 0, piece];
    const digits = piece.replace(/^0+/, '');
    return [0, digits.length, digits];
  });
}

/**
 * Less than, equal or more, as two keys of the same make are sorted.
 * @param {any} one
 * @param {any} other
 * @returns {number}
 */
export function inOrder(one, other) {
  if (!Array.isArray(one)) return one === other ? 0 : one < other ? -1 : 1;
  const shared = Math.min(one.length, other.length);
  for (let i = 0; i < shared; i += 1) {
    const said = inOrder(one[i], other[i]);
    if (said) return said;
  }
  return one.length - other.length;
}

/**
 * The ids in the order they come, each once.
 * @template T
 * @param {Iterable<T>} ids
 * @returns {T[]}
 */
export function once(ids) {
  return [...new Set(ids)];
}

/**
 * Whether two JSON values say the same, whatever the order of their keys.
 * @param {unknown} one
 * @param {unknown} other
 * @returns {boolean}
 */
export function alike(one, other) {
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((each, i) => alike(each, other[i]));
  }
  if (!isMapping(one) || !isMapping(other)) return one === other;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && alike(one[key], other[key]))
  );
}

/**
 * A list sorted by a key; what is equal stays in its order.
 * @template T
 * @param {Iterable<T>} lines
 * @param {(line: T) => any} key
 * @returns {T[]}
 */
export function sorted(lines, key) {
  return [...lines]
    .map((line) => ({ line, at: key(line) }))
    .sort((one, other) => inOrder(one.at, other.at))
    .map(({ line }) => line);
}
