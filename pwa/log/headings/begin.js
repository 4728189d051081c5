/** The beginning of a run over a joint. */
import { keepBoth } from '../merge.js';
import { id, may, must, shape, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  run: must(id),
  lubricant: must(text),
  wrench: may(id),
  overruled: may(text),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({ word: 'begin', check, merge: keepBoth, v: 1, names: false });
