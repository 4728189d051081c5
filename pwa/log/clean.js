/**
 * JSON that both languages read and write alike, or a flaw that says why not.
 *
 * JSON.parse hides doubled keys, fractions and -0, so the text of an entry is read by a small
 * parser of our own. What cannot be kept becomes a Flaw in its place; canonical() raises it.
 */
import { NotJson, NumberNotWhole, TextNotClean, TooMuch } from '../errors.js';

const DEEPEST_REQUEST = 64;
const BLANK = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\]|\\.)*"/sy;
const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][-+]?[0-9]+)?|-?Infinity|NaN/y;
const WORD = /true|false|null/y;
const HALF_SIGN = /\p{Surrogate}/u;
const ASCII = /^\p{ASCII}*$/u;

/** Stands in the parsed value where something could not be taken. */
export class Flaw {
  /** @param {import('../errors.js').Refusal} refusal */
  constructor(refusal) {
    this.refusal = refusal;
  }
}

/**
 * Levels of nesting of a JSON text, counted before any parser recurses.
 * @param {string} text
 * @returns {number} source: definition
 */
export function deepest(text) {
  let level = 0;
  let most = 0;
  for (const [mark] of text.matchAll(/"(?:[^"\\]|\\.)*"?|[[\]{}]/gs)) {
    if (mark === '{' || mark === '[') level += 1;
    else if (mark === '}' || mark === ']') level -= 1;
    most = Math.max(most, level);
  }
  return most;
}

/**
 * The JSON value of a text, with a Flaw in place of what cannot be kept.
 * @param {string} text
 * @returns {unknown}
 */
export function parse(text) {
  if (deepest(text) > DEEPEST_REQUEST) {
    throw new TooMuch({ trouble: 'it is more than 64 levels deep' });
  }
  const reader = { text, at: 0 };
  const value = readValue(reader);
  skip(reader);
  if (reader.at < text.length) throw unreadable(reader);
  return value;
}

/**
 * The one text of a value: keys sorted, no spaces, nothing escaped that need not be.
 * @param {unknown} value
 * @returns {string}
 */
export function canonical(value) {
  if (typeof value === 'string') return written(value);
  if (typeof value === 'number') return whole(value);
  if (value === null || typeof value === 'boolean') return String(value);
  if (value instanceof Flaw) throw value.refusal;
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object') {
    throw new TextNotClean({ trouble: 'it holds something JSON has no sign for' });
  }
  return object(/** @type {Record<string, unknown>} */ (value));
}

/** @param {Record<string, unknown>} facts */
function object(facts) {
  const lines = [];
  for (const key of Object.keys(facts).sort()) {
    if (!ASCII.test(key)) throw new TextNotClean({ trouble: OTHER_KEY });
    if (facts[key] !== undefined) lines.push(`${JSON.stringify(key)}:${canonical(facts[key])}`);
  }
  return `{${lines.join(',')}}`;
}

/** @param {string} text */
function written(text) {
  if (HALF_SIGN.test(text)) {
    throw new TextNotClean({ trouble: 'half a sign stands alone in it' });
  }
  return JSON.stringify(text);
}

/** @param {number} number */
function whole(number) {
  if (Number.isSafeInteger(number) && !Object.is(number, -0)) return String(number);
  throw new NumberNotWhole({ number: Object.is(number, -0) ? '-0' : String(number) });
}

const OTHER_KEY = 'a key has other signs than ASCII';

/** @typedef {{text: string, at: number}} Reader */

/**
 * @param {Reader} reader
 * @param {RegExp} sort
 */
function token(reader, sort) {
  sort.lastIndex = reader.at;
  const found = sort.exec(reader.text)?.[0];
  if (found !== undefined) reader.at += found.length;
  return found;
}

/** @param {Reader} reader */
function skip(reader) {
  token(reader, BLANK);
}

/**
 * @param {Reader} reader
 * @param {string} sign
 */
function sees(reader, sign) {
  skip(reader);
  if (reader.text[reader.at] !== sign) return false;
  reader.at += 1;
  return true;
}

/** @param {Reader} reader */
function unreadable(reader) {
  return new NotJson({ trouble: `position ${reader.at} cannot be read` });
}

/**
 * A string or word as the browser's parser reads it.
 * @param {Reader} reader
 * @param {string} text
 */
function unescaped(reader, text) {
  try {
    return JSON.parse(text);
  } catch {
    throw unreadable(reader);
  }
}

/**
 * @param {Reader} reader
 * @returns {unknown}
 */
function readValue(reader) {
  if (sees(reader, '{')) return readObject(reader);
  if (sees(reader, '[')) return readList(reader);
  const text = token(reader, STRING) ?? token(reader, WORD);
  if (text !== undefined) return unescaped(reader, text);
  const number = token(reader, NUMBER);
  if (number === undefined) throw unreadable(reader);
  const value = /^-?[0-9]+$/.test(number) ? Number(number) : Number.NaN;
  if (Number.isSafeInteger(value) && number !== '-0') return value;
  const shown = number.length <= 24 ? number : `${number.slice(0, 21)}…`;
  return new Flaw(new NumberNotWhole({ number: shown }));
}

/** @param {Reader} reader */
function readList(reader) {
  /** @type {unknown[]} */
  const list = [];
  if (sees(reader, ']')) return list;
  do list.push(readValue(reader));
  while (sees(reader, ','));
  if (!sees(reader, ']')) throw unreadable(reader);
  return list;
}

/** @param {Reader} reader */
function readObject(reader) {
  /** @type {Map<string, unknown>} */
  const facts = new Map();
  let pairs = 0;
  if (sees(reader, '}')) return {};
  do {
    skip(reader);
    const key = token(reader, STRING);
    if (key === undefined || !sees(reader, ':')) throw unreadable(reader);
    facts.set(unescaped(reader, key), readValue(reader));
    pairs += 1;
  } while (sees(reader, ','));
  if (!sees(reader, '}')) throw unreadable(reader);
  if (facts.size !== pairs) {
    return new Flaw(new TextNotClean({ trouble: 'a key stands twice in one object' }));
  }
  if (!ASCII.test([...facts.keys()].join(''))) {
    return new Flaw(new TextNotClean({ trouble: OTHER_KEY }));
  }
  return Object.fromEntries(facts);
}
