/** A gauge study: which instrument, what it measures, how many pieces, who measures, how often. */
import { latestPerField } from '../merge.js';
import { id, lines, may, must, number, shape, text, truth, whole } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const studyFields = shape({
  name: may(text),
  instrument: may(id),
  quantity: may(text),
  unit: may(text),
  least: may(number),
  most: may(number),
  pieces: may(whole),
  people: may(lines(text)),
  repeats: may(whole),
  build: may(id),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(studyFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'study',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
