/** What a heading is: the word, the check of its body, and how its entries merge. */
import { HeadingDoubled } from '../errors.js';

/**
 * One heading; `names` where an entry says what kind of thing its `about` is.
 * @typedef {{word: string, check: import('./shapes.js').Check, merge: import('./merge.js').Merge,
 *   v: number, names: boolean, whose?: (body: Record<string, any>) => string}} Heading
 */

/**
 * Headings by their word.
 * @param {readonly Heading[]} found
 * @returns {Map<string, Heading>}
 */
export function collected(found) {
  const byWord = new Map();
  for (const heading of found) {
    if (byWord.has(heading.word)) throw new HeadingDoubled({ word: heading.word });
    byWord.set(heading.word, heading);
  }
  return byWord;
}

/**
 * What an entry is about, as a person would call it in a refusal.
 * @param {Heading} heading
 * @param {Record<string, any>} body
 * @returns {string}
 */
export function spoken(heading, body) {
  return heading.whose?.(body) ?? `this ${heading.word.replaceAll('-', ' ')}`;
}

/**
 * The fastener of a pull or a touch, by its id in the programme.
 * @param {Record<string, any>} body
 * @returns {string}
 */
export function fastener({ fastener: named }) {
  return typeof named === 'string' && named ? `fastener ${named}` : 'this fastener';
}
