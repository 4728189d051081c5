/** What a working is: what it asks, and what it tells. */
import { UNIT_WORDS } from '../units.js';

/**
 * What an ask may be beside a quantity of UNIT_WORDS. A share is typed in per cent; "any" is of
 * the quantity chosen in the ask it follows.
 */
export const PLAIN = ['number', 'count', 'share', 'designation', 'choice', 'currency', 'any'];

/**
 * One value a working asks for.
 * @typedef {object} Ask
 * @property {string} name
 * @property {string} quantity
 * @property {string | null} unit
 * @property {string[]} units the unit words its number may have, its own first
 * @property {string[]} choices
 * @property {boolean} many
 * @property {boolean} optional
 * @property {string | null} default
 * @property {boolean} signed
 * @property {string | null} row
 * @property {string | null} follows
 */

/**
 * One line of a result: a number with unit and band, a word, or a list of numbers. `shown` is the
 * value with the digits it is worth, `between` so the band, `other` in another unit.
 * @typedef {object} Line
 * @property {string} name
 * @property {number | string | number[]} value
 * @property {string | null} unit
 * @property {number | null} low
 * @property {number | null} high
 * @property {string} shown
 * @property {[string, string] | null} between
 * @property {string | null} other
 * @property {string | null} mark "table-value" or "rule-of-thumb", where the value is no more
 */

/** @typedef {{lines: Line[], cautions?: import('./cautions.js').Caution[]}} Result */

/**
 * A computation: what it asks, its formula and source, and what it does with what is given.
 * @typedef {object} Working
 * @property {string} name
 * @property {string} formula
 * @property {string} source
 * @property {Ask[]} asks
 * @property {(given: import('./given.js').Given) => Result} work
 * @property {Record<string, string>} [blames] code of a rule's refusal → the ask it is about
 */

/**
 * @param {string} name
 * @param {string} quantity
 * @param {Partial<Ask>} [more]
 * @returns {Ask}
 */
export function ask(name, quantity, more = {}) {
  const words = Object.keys(/** @type {Record<string, any>} */ (UNIT_WORDS)[quantity] ?? {});
  const unit = more.unit ?? null;
  return Object.freeze({
    name,
    quantity,
    choices: [],
    many: false,
    optional: false,
    default: null,
    signed: false,
    row: null,
    follows: null,
    ...more,
    unit,
    units: unit ? [unit, ...words.filter((word) => word !== unit)] : words,
  });
}
