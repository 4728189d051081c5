/** Which of the texts that a reader brings are labels of ours. */
import { TradeError } from '../errors.js';
import { codeFromText } from '../trade/label.js';

/** @typedef {import('./reader.js').Sighting} Sighting */
/** @typedef {import('./reader.js').Point} Point */
/** @typedef {{code: string, box: Point[]}} Found a label that was read */
/** @typedef {{why: 'not-ours' | 'last-sign-wrong', text: string, box: Point[]}} Other */
/** @typedef {{codes: Found[], others: Other[], unread: Point[][]}} Sorted */

const OUR_SHAPE = /\/L\/[0-9A-HJKMNP-TV-Z]{8}$/i;

/**
 * Only a text with our path and a right check sign is a code; the computer named in it is ignored,
 * because labels outlive a change of computer. A code printed twice on its label counts once.
 * @param {Sighting[]} sightings
 * @returns {Sorted}
 */
export function sortSightings(sightings) {
  /** @type {Map<string, Found>} */
  const codes = new Map();
  /** @type {Sorted} */
  const sorted = { codes: [], others: [], unread: [] };
  for (const { text, box } of sightings) {
    const code = codeOf(text);
    if (text === '') sorted.unread.push(box);
    else if (code === null) sorted.others.push({ why: whyNot(text), text, box });
    else if (!codes.has(code)) codes.set(code, { code, box });
  }
  return { ...sorted, codes: [...codes.values()] };
}

/**
 * The code in the text of a symbol, or null when it is no label of ours. Look-alikes are for
 * fingers: a print has no letter outside the alphabet.
 * @param {string} text
 * @returns {string | null}
 */
export function codeOf(text) {
  if (!OUR_SHAPE.test(text)) return null;
  try {
    return codeFromText(text);
  } catch (error) {
    if (error instanceof TradeError) return null;
    throw error;
  }
}

/**
 * @param {string} text
 * @returns {Other['why']}
 */
function whyNot(text) {
  return OUR_SHAPE.test(text) ? 'last-sign-wrong' : 'not-ours';
}
