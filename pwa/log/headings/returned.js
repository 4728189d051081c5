/** A part that came back from where it was sent. */
import { keepBoth } from '../merge.js';
import { facts, id, lines, may, must, shape, text, word } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  sent: must(id),
  note: may(text),
  readings: may(lines(facts)),
  verdict: may(word('use', 'spare', 'machine', 'scrap')),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'returned',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
