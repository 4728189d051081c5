/** What an inspection on this device holds so far, and the entries it becomes. */

import { standing } from '../../log/workshop.js';
import { freshId } from '../fresh_id.js';

export const VERDICTS = ['use', 'spare', 'machine', 'scrap'];

/** An inspection nothing has been said in. @type {Record<string, any>} */
export const FRESH = Object.freeze({
  piece: '',
  looks: {},
  verdict: '',
  tapped: false,
  reason: '',
  own: '',
  note: '',
  photos: [],
});

/**
 * The draft after a criterion was answered: all yes selects *use*, and nothing else is ever preselected.
 * @param {any} draft
 * @param {any[]} criteria
 * @param {string} id
 * @param {boolean} good
 */
export function looked(draft, criteria, id, good) {
  const looks = { ...draft.looks, [id]: good };
  if (draft.tapped) return { looks };
  const all = criteria.length > 0 && criteria.every((one) => looks[one.id] === true);
  return { looks, verdict: all ? 'use' : '' };
}

/**
 * One inspection and the verdict that follows from it, kept together.
 * @param {any} draft
 * @param {any} workshop
 * @param {string} part
 * @returns {any[]}
 */
export function entriesOf(draft, workshop, part) {
  const id = freshId();
  const { verdict } = draft;
  const reason = verdict === 'use' ? draft.own.trim() : draft.own.trim() || draft.reason;
  const said = { verdict, ...(reason ? { reason } : {}) };
  const looks = Object.entries(draft.looks).map(([criterion, good]) => ({ criterion, good }));
  const body = {
    ...said,
    looks,
    readings: [],
    ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
    ...(draft.photos.length ? { photos: draft.photos } : {}),
  };
  const after = standing(workshop.subject(part), 'verdict').map((fact) => fact.id);
  return [
    { heading: 'inspection', about: part, id, body },
    { heading: 'verdict', about: part, after, body: { ...said, inspection: id } },
  ];
}
