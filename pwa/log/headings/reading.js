/** One measured value of a part. */
import { keepBoth } from '../merge.js';
import { id, may, measured, must, shape, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ of: must(words), value: must(measured), wrench: may(id) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'reading',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
