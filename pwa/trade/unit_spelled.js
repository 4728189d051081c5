/** A unit as people write it, found in the closed lists. */
import { UnitNotTaken, UnitsDiffer, UnitTwoMeanings, UnitUnknown } from './unit_errors.js';
import { AS_WRITTEN, NOT_TAKEN, SPELLINGS, TWO_MEANINGS } from './unit_spellings.js';
import { UNIT_WORDS } from './unit_words.js';

/** Signs that mean the same. @type {Record<string, string>} */
export const SAME = {
  '²': '2',
  '³': '3',
  μ: 'u',
  µ: 'u',
  '″': '"',
  '”': '"',
  '′': "'",
  '’': "'",
  º: '°',
};
const SQUEEZED_OUT = /[\s·⋅•∙*.^_()\-‐‑–−]/g;

/**
 * Sign by sign, by a table.
 * @param {string} text
 * @param {Record<string, string>} table
 */
export const translated = (text, table) => [...text].map((sign) => table[sign] ?? sign).join('');

/** @param {string} text */
const squeezed = (text) => translated(text.toLowerCase(), SAME).replace(SQUEEZED_OUT, '');

const WORDS = new Map(
  Object.entries(UNIT_WORDS).map(([wanted, words]) => [
    wanted,
    new Map([
      ...Object.entries(SPELLINGS[wanted] ?? {}).flatMap(([word, each]) =>
        each.map((spelling) => /** @type {const} */ ([spelling, word])),
      ),
      ...Object.keys(words).map((word) => /** @type {const} */ ([squeezed(word), word])),
    ]),
  ]),
);

/**
 * Squeezed spelling → word, for one quantity.
 * @param {string} wanted
 */
export function wordsOf(wanted) {
  const words = WORDS.get(wanted);
  if (!words) throw new UnitUnknown({ unit: wanted });
  return words;
}

/**
 * The word of UNIT_WORDS for a unit as people write it, where the quantity is known.
 * @param {string} typed
 * @param {string} wanted
 */
export function unitWord(typed, wanted) {
  const words = wordsOf(wanted);
  if (typeof typed !== 'string') throw new UnitUnknown({ unit: typed });
  const each = squeezed(typed).replaceAll("''", '"');
  const capitals = typed.replace(SQUEEZED_OUT, '');
  const two =
    (AS_WRITTEN[wanted] ?? []).find(({ written }) => written.includes(capitals)) ??
    (TWO_MEANINGS[wanted] ?? []).find(({ written }) => written.includes(each));
  if (two) throw new UnitTwoMeanings({ typed, one: two.units[0], other: two.units[1] });
  const word = words.get(each);
  if (word) return word;
  const units = Object.keys(/** @type {Record<string, object>} */ (UNIT_WORDS)[wanted] ?? {});
  if (NOT_TAKEN[wanted]?.includes(each)) {
    throw new UnitNotTaken({ unit: typed, words: units.join(' or ') });
  }
  if ([...WORDS.values()].some((others) => others.has(each))) {
    throw new UnitsDiffer({ unit: typed, other: units[0] });
  }
  throw new UnitUnknown({ unit: typed });
}
