/** What there is of a heading, to choose from. */
import { value } from '../../log/workshop.js';

/** @param {any} workshop @param {string} heading @returns {{id: string, name: string}[]} */
export const named = (workshop, heading) =>
  workshop
    .all(heading)
    .map((/** @type {any} */ subject) => ({ id: subject.id, name: value(subject, 'name') ?? '' }));
