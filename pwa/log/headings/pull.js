/** One fastener confirmed at one pass. */
import { fastener } from '../heading.js';
import { keepBoth } from '../merge.js';
import { id, may, measured, must, shape, text, truth, word } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  run: must(id),
  fastener: must(id),
  pass: must(id),
  wrench: may(id),
  target: may(measured),
  reading: may(measured),
  read_at: may(word('bolt', 'set')),
  lubricant: may(text),
  together: may(truth),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'pull',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
  whose: fastener,
});
