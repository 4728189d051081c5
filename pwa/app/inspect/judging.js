/** What an inspection on this device holds so far, and the entries it becomes. */

import { standing } from '../../log/workshop.js';
import { freshId } from '../fresh_id.js';
import { noneAgainst } from './readings.js';
import { against } from './says.js';

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
  readings: [],
  measuring: '',
  typed: '',
  unit: '',
});

/** @typedef {{criteria: any[], measures: any[], tools: any}} Asked what is looked at, measured, and with what */

/**
 * The draft after something was answered or read: all yes, and no reading against it, selects
 * *use*; nothing else is ever preselected, and what a person pressed stays. A reason why it may be
 * used goes with what it was asked for.
 * @param {any} draft
 * @param {Asked} asked
 * @param {Record<string, any>} part what changed
 */
export function judged(draft, asked, part) {
  const { criteria, measures, tools } = asked;
  const now = { ...draft, ...part };
  if (now.tapped)
    return now.verdict === 'use' && !against(asked, now).length
      ? { ...part, reason: '', own: '' }
      : part;
  const some = criteria.length + now.readings.length > 0;
  const good = some && criteria.every((one) => now.looks[one.id] === true);
  return { ...part, verdict: good && noneAgainst(measures, now.readings, tools) ? 'use' : '' };
}

/**
 * The draft after a criterion was answered.
 * @param {any} draft
 * @param {Asked} asked
 * @param {string} id
 * @param {boolean} good
 */
export const looked = (draft, asked, id, good) =>
  judged(draft, asked, { looks: { ...draft.looks, [id]: good } });

/** Why, in the person's own words or by a chip. @param {any} draft @returns {string} */
const reasonOf = (draft) => draft.own.trim() || draft.reason;

/**
 * What goes to the machine shop or into the scrap wants its reason, and so does what is used though
 * something speaks against it.
 * @param {any} draft
 * @param {string[]} held what speaks against it
 */
export const wantsReason = (draft, held) =>
  ['machine', 'scrap', ...(held.length ? ['use'] : [])].includes(draft.verdict) && !reasonOf(draft);

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
  const reason = reasonOf(draft);
  const said = { verdict, ...(reason ? { reason } : {}) };
  const looks = Object.entries(draft.looks).map(([criterion, good]) => ({ criterion, good }));
  const body = {
    ...said,
    looks,
    readings: draft.readings,
    ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
    ...(draft.photos.length ? { photos: draft.photos } : {}),
  };
  const after = standing(workshop.subject(part), 'verdict').map((fact) => fact.id);
  return [
    { heading: 'inspection', about: part, id, body },
    { heading: 'verdict', about: part, after, body: { ...said, inspection: id } },
  ];
}
