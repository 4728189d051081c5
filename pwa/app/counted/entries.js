/** What makes a counted part single and back: one keep each way. */

import { standing, value } from '../../log/workshop.js';
import { freshId } from '../fresh_id.js';
import { strikeOut } from '../run/drafts.js';

const COPIED = ['kind', 'donor', 'from', 'build', 'for', 'single_use', 'thread', 'invented'];

/**
 * Pieces with what is said of the counted part, where it lies, and one entry that takes them.
 * @param {any} workshop
 * @param {string} id
 * @param {{id: string, number: number, name: string, was?: string}[]} make
 * @param {{was: string}[]} [lost] those among them that are counted as single already and shown nowhere
 * @returns {any[]}
 */
export function singly(workshop, id, make, lost = []) {
  const part = workshop.subject(id);
  const said = COPIED.map((name) => [name, value(part, name)]).filter(([, is]) => is !== null);
  const fields = Object.fromEntries(said);
  const places = standing(part, 'place').map(({ body }) => body);
  const gone = lost.map(({ was }) => was);
  return [
    ...(gone.length
      ? [{ heading: 'add', about: id, body: { count: gone.length, pieces: gone } }]
      : []),
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
    ...saidOf(workshop.subject(was ?? ''), id),
  ];
}

const GOES_ON = ['inspection', 'reading', 'note', 'photo'];

/**
 * What was said of a piece while it was counted goes on with it: what was found, noted and
 * photographed, and its verdict, which rests on the inspection as it is kept here.
 * @param {any} was the piece as it was made single before
 * @param {string} about
 */
function saidOf(was, about) {
  const found = (was?.facts ?? [])
    .filter(
      (/** @type {any} */ { heading, struck }) => GOES_ON.includes(heading) && struck === null,
    )
    .map((/** @type {any} */ fact) => ({ ...fact, now: freshId() }));
  const nowOf = (/** @type {unknown} */ id) =>
    found.find((/** @type {any} */ one) => one.id === id)?.now;
  const verdicts = standing(was, 'verdict')
    .slice(-1)
    .map(({ body }) => {
      const inspection = nowOf(body.inspection);
      const { inspection: _, ...said } = body;
      return {
        heading: 'verdict',
        about,
        body: { ...said, ...(inspection ? { inspection } : {}) },
      };
    });
  return [
    ...found.map((/** @type {any} */ { heading, body, now }) => ({
      heading,
      about,
      id: now,
      body,
    })),
    ...verdicts,
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
