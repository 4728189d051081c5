/** What the screens of the shelf and of the machine shop read. */
import { readAll } from '../read_all.js';

const HEADINGS = ['part', 'set', 'kind', 'donor', 'build', 'holder', 'label'];

/** Parts with all that says what they are and where they lie. @param {any} store */
export const readShelf = (store) => readAll(store, HEADINGS);

/** The date here, as it is kept. @param {Date} [now] */
export function today(now = new Date()) {
  const two = (/** @type {number} */ number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
