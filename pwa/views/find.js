/** Where is that thing? Words or a code, ranked; when nothing is found, what sounds like it. */
import { codeFromText } from '../trade/label.js';
import { HEADINGS } from './find_row.js';
import { near } from './near.js';
import * as plain from './plain.js';

/** @typedef {import('./find_row.js').Row} Row */
/**
 * A row made ready: its name and words folded, so that "Ölpumpe" is found by "olp". `words` has a
 * blank before each, name first: a word begins where " word" is found.
 * @typedef {{row: Row, name: string, names: string[], words: string, at: plain.NaturalKey}} Found
 * @typedef {{found: Found[]}} Index
 * @typedef {{each: Found, rank: number}} Hit
 */

const MOST = 20;
const WORD = /[^ \t\r\n\u00a0.,;:/()[\]"'|–-]+/g;
const ACCENTS = /[\u0300-\u036f]/g;
const CODE = 0;
const EXACT = 1;
const BEGINS = 2;
const WORDS_OF_NAME = 3;
const WORDS = 4;
const INSIDE = 5;
const WHY = ['code', 'name', 'name', 'name', 'words', 'words'];

/** Rows stay the same objects while nothing changes, so that each is folded once. */
const folds = /** @type {WeakMap<Row, Found>} */ (new WeakMap());

/**
 * Small letters without accents.
 * @param {string} text
 */
export function folded(text) {
  return text.toLowerCase().normalize('NFD').replace(ACCENTS, '');
}

/** @param {string} text */
function wordsOf(text) {
  return folded(text).match(WORD) ?? [];
}

/**
 * Rows made ready once, for many questions; by name, so that hits need no sorting.
 * @param {Iterable<Row>} rows
 * @returns {Index}
 */
export function prepare(rows) {
  const found = [...rows].map((each) => folds.get(each) ?? fold(each));
  found.sort(
    (one, other) => plain.inOrder(one.at, other.at) || plain.inOrder(one.row.id, other.row.id),
  );
  return { found };
}

/** @param {Row} each */
function fold(each) {
  const name = folded(each.name ?? '');
  const names = name.match(WORD) ?? [];
  const words = ` ${[...names, ...wordsOf(each.words ?? '')].join(' ')}`;
  const made = { row: each, name, names, words, at: plain.natural(name || null) };
  folds.set(each, made);
  return made;
}

/**
 * Hits in groups, the best first, scrap last; rows as row() makes them, or prepared.
 * @param {Row[] | Index} rows
 * @param {string} query
 */
export function find(rows, query) {
  const { found } = Array.isArray(rows) ? prepare(rows) : rows;
  const typed = typeof query === 'string' ? query : '';
  const wanted = wordsOf(typed);
  const code = codeOf(typed);
  const hits = ranked(found, wanted, code);
  const groups = [...hits].map(groupOf).filter((group) => group.count);
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  const nothing = !count && wanted.length;
  return { query: typed, code, count, groups, near: nothing ? near(found, wanted, HEADINGS) : [] };
}

/**
 * Heading → for each rank its hits by name; ranks of scrap follow all others.
 * @param {Found[]} found
 * @param {string[]} wanted
 * @param {string | null} code
 */
function ranked(found, wanted, code) {
  /** @type {Map<string, Hit[][]>} */
  const hits = new Map(HEADINGS.map((heading) => [heading, WHY.concat(WHY).map(() => [])]));
  for (const each of found) {
    const rank = rankOf(each, wanted, code);
    if (rank === null) continue;
    const place = rank + (each.row.scrap === true ? WHY.length : 0);
    hits.get(each.row.heading)?.[place]?.push({ each, rank });
  }
  return hits;
}

/** @param {string} typed */
function codeOf(typed) {
  try {
    return codeFromText(typed);
  } catch {
    return null;
  }
}

/**
 * How well a row fits, 0 best; null when a word is missing. A code comes before all.
 * @param {Found} each
 * @param {string[]} wanted
 * @param {string | null} code
 */
function rankOf({ row: { codes }, name, names, words }, wanted, code) {
  if (code !== null && codes?.includes(code)) return CODE;
  if (!wanted.length) return null;
  if (!wanted.every((word) => words.includes(` ${word}`))) {
    const inside = wanted.every((word) => [...word].length > 2 && words.includes(word));
    return inside ? INSIDE : null;
  }
  return rankOfWords(name, names, wanted);
}

/**
 * @param {string} name
 * @param {string[]} names
 * @param {string[]} wanted
 */
function rankOfWords(name, names, wanted) {
  if (names.length === wanted.length && names.every((each, i) => each === wanted[i])) return EXACT;
  if (name.startsWith(wanted.join(' '))) return BEGINS;
  const inName = wanted.every((word) => names.some((each) => each.startsWith(word)));
  return inName ? WORDS_OF_NAME : WORDS;
}

/** @param {[string, Hit[][]]} hits */
function groupOf([heading, ranks]) {
  const count = ranks.reduce((sum, rank) => sum + rank.length, 0);
  const hits = ranks.flat().slice(0, MOST);
  return {
    heading,
    count,
    hits: hits.map(({ each: { row: found }, rank }) => ({
      id: found.id,
      heading,
      name: found.name ?? null,
      at: found.at ?? null,
      verdict: found.verdict ?? null,
      scrap: found.scrap === true,
      why: WHY[rank],
    })),
  };
}
