/** What one bagged part becomes: its description, label, place and photos, kept together. */

import { freshId } from '../fresh_id.js';
import { startOf } from '../kinds/ready.js';

/** What is asked anew for each part. */
export const NEXT = Object.freeze({ place: '', quantity: 1, code: '', after: [], photos: [] });

/** A run in which nothing has been said. @type {Record<string, any>} */
export const EMPTY = Object.freeze({
  donor: '',
  kind: '',
  newKind: '',
  holder: '',
  scan: false,
  bagged: [],
  ...NEXT,
});

/**
 * @param {any} draft
 * @param {string} id of the new part
 * @param {{id: string, name: string}[]} kinds
 * @returns {{entries: any[], line: any, kind: string}} what is kept, its line in the list of the
 *   evening, and the kind the next part has most likely too
 */
export function bagged(draft, id, kinds) {
  const fresh = draft.newKind ? startOf(draft.newKind, kinds) : null;
  const kind = fresh ? freshId() : draft.kind;
  const word = fresh?.name ?? kinds.find((one) => one.id === kind)?.name ?? '';
  const place = draft.place.trim();
  const name = [word, place].filter(Boolean).join(' ');
  const fields = {
    name,
    ...(kind ? { kind } : {}),
    quantity: draft.quantity,
    donor: draft.donor,
    ...(place ? { from: place } : {}),
  };
  const drafts = [
    ...(fresh ? [{ heading: 'kind', about: kind, body: { fields: fresh } }] : []),
    { heading: 'part', about: id, body: { fields } },
    ...around(draft, id),
  ].map((one) => ({ id: freshId(), ...one }));
  const voids = drafts.filter(({ heading }) => heading !== 'kind').map((one) => one.id);
  const { code, quantity } = draft;
  return { entries: drafts, line: { id, name, code, quantity, voids }, kind };
}

/** Label, holder and photos. @param {any} draft @param {string} id @returns {any[]} */
function around({ code, after, holder, photos }, id) {
  return [
    ...(code ? [{ heading: 'label', about: code, after, body: { marks: id } }] : []),
    ...(holder ? [{ heading: 'place', about: id, body: { in: holder } }] : []),
    ...photos.map((/** @type {string} */ photo) => ({
      heading: 'photo',
      about: id,
      body: { photo },
    })),
  ];
}

/**
 * Photos that were ready only after their part had been kept go to that part, not to the next.
 * @param {any[]} lines what is bagged now, the newest first
 * @param {any[]} before what was bagged when the photos were taken
 * @param {string[]} photos
 * @returns {{entries: any[], bagged: any[]} | null} null where their part is not kept yet
 */
export function latePhotos(lines, before, photos) {
  const since = lines.filter(({ id }) => before.every((one) => one.id !== id));
  const mine = since.at(-1);
  if (!mine) return null;
  const entries = photos.map((photo) => ({
    id: freshId(),
    heading: 'photo',
    about: mine.id,
    body: { photo },
  }));
  const marked = { ...mine, voids: [...mine.voids, ...entries.map(({ id }) => id)] };
  return { entries, bagged: lines.map((one) => (one === mine ? marked : one)) };
}
