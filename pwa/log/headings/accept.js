/** A pull in doubt accepted, with the reason. */
import { keepBoth } from '../merge.js';
import { id, must, shape, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ pull: must(id), reason: must(words) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'accept',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
