/** One line bought. */
import { keepBoth } from '../merge.js';
import { may, measured, shape, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ price: may(measured), seller: may(text), says: may(text) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'purchase',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
