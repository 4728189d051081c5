/** Recomputes what the screens read, from the entries about one thing. */

import { links, standing, subject, value } from '../log/workshop.js';
import { put, remove } from './transaction.js';

/**
 * @typedef {import('./types.js').Tx} Tx
 * @typedef {import('./types.js').Kept} Kept
 * @typedef {import('./types.js').SubjectRow} SubjectRow
 */

/** The tables that a refold reads and writes. */
export const FOLDING = ['entry', 'subject', 'dirty', 'name'];

/** @param {Kept} row */
export const fact = (row) => {
  const entry = JSON.parse(row.text);
  return { entry, order: row.order ?? entry.stamp };
};

/**
 * @param {string} id @param {Kept[]} rows
 * @returns {any} the subject, or null when no entry of it is left
 */
export function folded(id, rows) {
  const facts = rows.filter((row) => !row.out).map(fact);
  return facts.length ? subject(id, facts) : null;
}

/** @param {Tx} tx @param {string} id */
export const rowsOf = (tx, id) => tx.objectStore('entry').index('subject').getAll(id);

/** Counted up when rows hold something new: rows made before are then made once more. */
export const ROWS = 2;

/**
 * Marks for the evening's question and the machine shop's, so that they need not look through
 * every part: nobody judged it yet; it lies nowhere and is fitted nowhere; it is out, it came
 * back, it is judged for the machine shop.
 * @param {any} subject
 */
function wants(subject) {
  if (subject.hidden || subject.heading !== 'part') return [];
  const stood = (/** @type {string} */ word) => standing(subject, word);
  const said = (/** @type {string} */ word) =>
    subject.facts.filter((/** @type {any} */ one) => one.heading === word && !one.struck);
  const found = [];
  if (!stood('verdict').length) found.push('look');
  if (!stood('place').length && !stood('fitted').length) found.push('put');
  const returned = said('returned');
  const ended = new Set(returned.map((/** @type {any} */ one) => one.body.sent));
  if (said('sent').some((/** @type {any} */ { id }) => !ended.has(id))) found.push('out');
  if (returned.length) found.push('back');
  if (stood('verdict').some(({ body }) => body.verdict === 'machine')) found.push('machine');
  return found;
}

/** @param {any} subject @returns {SubjectRow} */
export function subjectRow(subject) {
  return {
    id: subject.id,
    heading: subject.heading,
    hidden: subject.hidden,
    links: links(subject).map(({ role, to }) => `${role} ${to}`),
    wants: wants(subject),
    value: subject,
  };
}

/** @param {any} subject */
function text(subject, /** @type {string[]} */ fields) {
  const found = fields.map((field) => value(subject, field));
  return found.filter((one) => typeof one === 'string' && one !== '');
}

/**
 * The little of a thing that a search reads, so that a search need not load every fact.
 * @param {any} subject
 */
export function nameRow(subject) {
  const places = standing(subject, 'place').map((one) => [one.body.where, one.body.gone]);
  const fitted = standing(subject, 'fitted').map((one) => one.body.place);
  const notes = subject.facts
    .filter((/** @type {any} */ one) => one.heading === 'note' && !one.struck)
    .map((/** @type {any} */ one) => one.body.text);
  const said = [...places.flat(), ...fitted, ...notes].filter((one) => typeof one === 'string');
  return {
    id: subject.id,
    heading: subject.heading,
    name: value(subject, 'name'),
    kind: value(subject, 'kind'),
    verdicts: standing(subject, 'verdict').map((one) => one.body.verdict),
    words: [
      ...text(subject, [
        'from',
        'for',
        'note',
        'thread',
        'engine',
        'plural',
        'noun',
        'sort',
        'lies',
      ]),
      ...said,
    ],
    lies: text(subject, ['lies'])[0] ?? null,
    links: links(subject),
  };
}

const NAMED = new Set([
  'part',
  'holder',
  'joint',
  'step',
  'kind',
  'donor',
  'build',
  'label',
  'wrench',
  'instrument',
]);

/** @param {Tx} tx @param {string} id @param {any} subject */
function store(tx, id, subject) {
  remove(tx, 'dirty', id);
  if (subject) put(tx, 'subject', subjectRow(subject));
  else remove(tx, 'subject', id);
  if (subject && !subject.hidden && NAMED.has(subject.heading)) put(tx, 'name', nameRow(subject));
  else remove(tx, 'name', id);
}

/**
 * Recomputes these subjects from their entries, as this transaction sees them.
 * @param {Tx} tx @param {Iterable<string>} ids
 * @param {Map<string, Kept[]>} [known] all entries of a subject, where they are at hand already
 */
export async function refold(tx, ids, known) {
  const wanted = [...ids].filter((id) => id !== '');
  const found = await Promise.all(wanted.map((id) => known?.get(id) ?? rowsOf(tx, id)));
  wanted.forEach((id, at) => {
    store(tx, id, folded(id, /** @type {Kept[]} */ (found[at])));
  });
}
