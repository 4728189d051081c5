/** What a thing is, and what its kind says of judging it. */

import { value } from '../log/workshop.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/**
 * What it is, with the criteria and reasons its kind brings.
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 */
export function kindOf(workshop, subject) {
  const id = plain.text(value(subject, 'kind'));
  const found = id ? workshop.subject(id) : null;
  const reasons = plain.mapping(value(found, 'reasons'));
  return {
    kind: id && {
      id,
      name: plain.text(value(found, 'name')),
      plural: plain.text(value(found, 'plural')),
    },
    criteria: plain.mappings(value(found, 'criteria')).map((each) => ({
      id: plain.text(each.id),
      asks: plain.text(each.asks),
      hint: plain.text(each.hint),
      good: plain.text(each.good),
      bad: plain.text(each.bad),
    })),
    reasons: {
      use: plain.texts(reasons.use),
      spare: plain.texts(reasons.spare),
      machine: plain.texts(reasons.machine),
      scrap: plain.texts(reasons.scrap),
    },
  };
}
