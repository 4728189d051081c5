/** The next pass begun though this one is not whole, with the reason. */
import { keepBoth } from '../merge.js';
import { id, must, shape, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ run: must(id), pass: must(id), reason: must(words) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'onward',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
