/** One reading of a gauge study: which piece, by whom, for the how manieth time, what was read. */
import { keepBoth } from '../merge.js';
import { measured, must, shape, whole, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  piece: must(whole),
  person: must(words),
  repeat: must(whole),
  value: must(measured),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'trial',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
