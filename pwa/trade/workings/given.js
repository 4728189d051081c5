/** What a person gave a working, read and ready for the rules. */
import { convert, measured } from '../units.js';
import { AskMissing } from './errors.js';

/** @typedef {{value: string, unit: string | null}} Typed one value as it was read */

/** @typedef {ReturnType<typeof given>} Given */

/**
 * Everything that was given, by the name of the ask; lists have several.
 * @param {Record<string, Typed[]>} values
 */
export function given(values) {
  const has = (/** @type {string} */ name) => name in values;
  const all = (/** @type {string} */ name) => {
    const found = values[name];
    if (!found) throw new AskMissing({ ask: name.replaceAll('-', ' '), about: name });
    return found;
  };
  const typed = (/** @type {string} */ name) => /** @type {Typed} */ (all(name)[0]);
  const inside = (/** @type {string} */ name, /** @type {string} */ unit) =>
    plain(typed(name), unit);
  return Object.freeze({
    values,
    has,
    typed,
    inside,
    /** The unit it was given in. @param {string} name */
    unit: (name) => typed(name).unit ?? '',
    /** The value with its unit as it was typed. @param {string} name */
    measured: (name) => measured(typed(name).value, typed(name).unit ?? ''),
    /** The value in a unit, or null. @param {string} name @param {string} unit */
    insideOrNull: (name, unit) => (has(name) ? inside(name, unit) : null),
    /** The values of a list in a unit. @param {string} name @param {string} unit */
    allIn: (name, unit) => all(name).map((each) => plain(each, unit)),
    /** A bare number. @param {string} name */
    number: (name) => Number(typed(name).value),
    /** The bare numbers of a list. @param {string} name */
    numbers: (name) => all(name).map((each) => Number(each.value)),
    /** A whole number. @param {string} name */
    count: (name) => Number(typed(name).value),
    /** A share from 0 to 1; it is typed in per cent. @param {string} name */
    share: (name) => Number(typed(name).value) / 100,
    /** A word: a choice or a designation. @param {string} name */
    word: (name) => typed(name).value,
    /** How many decimals it was typed with; of a list the most. @param {string} name */
    decimals: (name) => Math.max(...all(name).map((each) => decimalsOf(each.value))),
  });
}

/** @param {Typed} typed @param {string} unit */
const plain = (typed, unit) => convert(Number(typed.value), typed.unit ?? '', unit);

/** @param {string} text */
const decimalsOf = (text) => (text.split('.')[1] ?? '').length;
