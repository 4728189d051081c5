/** A part that goes back where it came from: which place is its own, and is another one meant? */
import { value } from '../log/workshop.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/**
 * The place a part goes back to: where it came from, if its kind goes back to its own place.
 * @param {Workshop} workshop
 * @param {string} id
 * @returns {string | null}
 */
export function placeOf(workshop, id) {
  const part = workshop.subject(id);
  const kind = workshop.subject(plain.asId(value(part, 'kind')));
  return value(kind, 'own_place') === true ? plain.text(value(part, 'from')) : null;
}

/**
 * Whether a wanted place is a part's own: same, elsewhere, or none where it has no own place or
 * no place is wanted.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {string | null} [wanted]
 */
export function ownPlace(workshop, id, wanted = null) {
  const place = placeOf(workshop, id);
  return { place, says: compared(place, plain.text(wanted)) };
}

/**
 * Two places compared as a person reads them: case, blanks, stops and leading zeros say nothing.
 * @param {string | null} own
 * @param {string | null} wanted
 * @returns {'same' | 'elsewhere' | 'none'}
 */
export function compared(own, wanted) {
  if (own === null || wanted === null) return 'none';
  return bare(own) === bare(wanted) ? 'same' : 'elsewhere';
}

/** @param {string} place */
function bare(place) {
  const words = place.toLowerCase().match(/[0-9]+|[^0-9\s.,;:_/-]+/g) ?? [];
  return words.map((word) => word.replace(/^0+(?=[0-9])/, '')).join(' ');
}

/**
 * What holds fitting a part at a place back until a reason is given: another place than its own,
 * a verdict against it, or none at all.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {string | null} [wanted]
 * @returns {string[]}
 */
export function heldBack(workshop, id, wanted = null) {
  const word = things.mark(workshop.subject(id));
  const against = ['scrap', 'machine'].filter((one) => one === word);
  const unseen = word === 'look' || word === 'ask' ? ['not-inspected'] : [];
  const elsewhere = ownPlace(workshop, id, wanted).says === 'elsewhere' ? ['elsewhere'] : [];
  return [...against, ...unseen, ...elsewhere];
}
