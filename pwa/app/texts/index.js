/** All words of the page in one place, by key; another language is another set of these files. */

import { capital } from '../words.js';
import { texts as desk } from './desk.js';
import { texts as edit } from './edit.js';
import { texts as errors } from './errors.js';
import { texts as find } from './find.js';
import { texts as forms } from './forms.js';
import { texts as frame } from './frame.js';
import { texts as inspect } from './inspect.js';
import { texts as joint } from './joint.js';
import { texts as kinds } from './kinds.js';
import { texts as record } from './record.js';
import { texts as run } from './run.js';
import { texts as scan } from './scan.js';
import { texts as sync } from './sync.js';
import { texts as tonight } from './tonight.js';
import { spoken, texts as units } from './units.js';
import { texts as workings } from './workings.js';
import { texts as workingsBolts } from './workings_bolts.js';

/** @typedef {string | {zero?: string, one: string, other: string}} Text */

/** @type {Record<string, Text>} */
const all = {
  ...frame,
  ...record,
  ...find,
  ...tonight,
  ...scan,
  ...desk,
  ...edit,
  ...sync,
  ...errors,
  ...units,
  ...run,
  ...inspect,
  ...forms,
  ...joint,
  ...kinds,
  ...workings,
  ...workingsBolts,
};

/**
 * Takes in the words of a screen that comes with the screens' pack; its file calls this when it is loaded.
 * @param {Record<string, Text>} more
 */
export function addTexts(more) {
  Object.assign(all, more);
}

const plural = new Intl.PluralRules('en');
const figure = new Intl.NumberFormat(navigator.languages[0]);

/** Whether there is a text for this key. @param {string} key */
export const hasText = (key) => key in all;

/** @param {Text} text @param {Record<string, any>} facts */
function formOf(text, facts) {
  if (typeof text === 'string') return text;
  const n = Number(facts.n ?? 0);
  if (n === 0 && text.zero !== undefined) return text.zero;
  return plural.select(n) === 'one' ? text.one : text.other;
}

/** @param {any} fact */
const shown = (fact) => (typeof fact === 'number' ? figure.format(fact) : String(fact ?? ''));

/** What begins with a name that its owner may write small: pushrod 3, head bolts. */
const BEGINS_WITH_NAME = /^\{(?:name|parts|kinds|what)\}/;

/**
 * The text of a key with its facts filled in; `{n}` decides between one and other.
 * @param {string} key
 * @param {Record<string, any>} [facts]
 * @returns {string}
 */
export function t(key, facts = {}) {
  const text = all[key];
  if (text === undefined) return key;
  const form = formOf(text, facts);
  const said = form.replace(/\{(\w+)\}/g, (_, name) => shown(facts[name]));
  return BEGINS_WITH_NAME.test(form) ? capital(said) : said;
}

/** A unit as it is spoken: "pound-feet". @param {string | null | undefined} unit */
export const unitWords = (unit) => spoken[unit ?? ''] ?? unit ?? '';

/** A code as it is spoken, sign by sign. @param {string} code */
export const codeWords = (code) => [...code].join(' ').replace(/^((?:\S ){3}\S) /, '$1, ');
