/** Which of the texts that a reader brings are labels of ours. */

/** @typedef {import('./reader.js').Sighting} Sighting */
/** @typedef {import('./reader.js').Point} Point */
/** @typedef {{code: string, box: Point[]}} Found a label that was read */
/** @typedef {{why: 'not-ours' | 'last-sign-wrong', text: string, box: Point[]}} Other */
/** @typedef {{codes: Found[], others: Other[], unread: Point[][]}} Sorted */

const OUR_SHAPE = /\/L\/[0-9A-Z]{8}$/i;

/**
 * Only a text with our path and a right check sign is a code; the computer named in it is ignored,
 * because labels outlive a change of computer.
 * @param {Sighting[]} sightings
 * @returns {Sorted}
 */
export function sortSightings(sightings) {
  /** @type {Sorted} */
  const sorted = { codes: [], others: [], unread: [] };
  for (const { text, box } of sightings) {
    const code = codeOf(text);
    if (text === '') sorted.unread.push(box);
    else if (code === null) sorted.others.push({ why: whyNot(text), text, box });
    else sorted.codes.push({ code, box });
  }
  return sorted;
}

/**
 * The code in the text of a symbol, or null when it is no label of ours.
 * @param {string} text
 * @returns {string | null}
 */
export function codeOf(text) {
  if (!OUR_SHAPE.test(text)) return null;
  try {
    return codeFromText(text);
  } catch {
    return null;
  }
}

/**
 * @param {string} text
 * @returns {Other['why']}
 */
function whyNot(text) {
  return OUR_SHAPE.test(text) ? 'last-sign-wrong' : 'not-ours';
}

const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * @param {string} text
 * @returns {string | null}
 */
function codeFromText(text) {
  const code = text.slice(-8).toUpperCase();
  let sum = 0;
  for (let i = 7; i >= 0; i -= 1) {
    sum = (sum & 16 ? (sum << 1) ^ 37 : sum << 1) ^ SIGNS.indexOf(code[i] ?? '');
  }
  return sum === 0 ? code : null;
}
