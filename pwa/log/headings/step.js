/** A piece of assembly work. */
import { latestPerField } from '../merge.js';
import { id, may, must, shape, text, truth, whole } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const stepFields = shape({
  name: may(text),
  minutes: may(whole),
  build: may(id),
  note: may(text),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(stepFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'step',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
