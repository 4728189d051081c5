/** A part sent out to be worked on. */
import { keepBoth } from '../merge.js';
import { may, measured, must, shape, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  to: must(text),
  for: may(text),
  due: may(text),
  price: may(measured),
  note: may(text),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'sent',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
