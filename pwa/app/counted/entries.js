/** What makes a counted part single and back: one keep each way. */

import { standing, value } from '../../log/workshop.js';
import { strikeOut } from '../run/drafts.js';

const COPIED = ['kind', 'donor', 'from', 'build', 'for', 'single_use', 'thread', 'invented'];

/**
 * Pieces with what is said of the counted part, where it lies, and one entry that takes them.
 * @param {any} workshop
 * @param {string} id
 * @param {{id: string, number: number, name: string, was?: string}[]} make
 * @returns {any[]}
 */
export function singly(workshop, id, make) {
  const part = workshop.subject(id);
  const said = COPIED.map((name) => [name, value(part, name)]).filter(([, is]) => is !== null);
  const fields = Object.fromEntries(said);
  const places = standing(part, 'place').map(({ body }) => body);
  return [
    ...make.flatMap((piece) => pieceOf(workshop, id, piece, fields, places)),
    { heading: 'take', about: id, body: { count: make.length, pieces: make.map((one) => one.id) } },
  ];
}

/** @param {any} workshop @param {string} bag @param {any} piece @param {any} fields @param {any[]} places */
function pieceOf(workshop, bag, { id, number, name, was }, fields, places) {
  const own = { ...fields, name, quantity: 1, bag, number };
  return [
    { heading: 'part', about: id, body: { fields: own } },
    ...places.slice(0, 1).map((body) => ({ heading: 'place', about: id, body })),
    // What was said of it while it was counted goes on with it.
    ...standing(workshop.subject(was ?? ''), 'verdict')
      .slice(-1)
      .map(({ body }) => ({ heading: 'verdict', about: id, body })),
  ];
}

/**
 * Pieces nobody touched go back: their descriptions are struck out, and one entry counts them.
 * @param {string} id
 * @param {any[]} pieces
 * @param {string} reason
 * @returns {any[]}
 */
export function together(id, pieces, reason) {
  const drafts = pieces.flatMap(({ descriptions }) =>
    descriptions.map((/** @type {string} */ entry) => strikeOut(entry, reason)),
  );
  const ids = pieces.map((piece) => piece.id);
  return [...drafts, { heading: 'add', about: id, body: { count: ids.length, pieces: ids } }];
}
