/** The choice to go on at a value without a source. */
import { keepBoth } from '../merge.js';
import { id, measured, must, shape } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ run: must(id), pass: must(id), target: must(measured) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'unsourced',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
