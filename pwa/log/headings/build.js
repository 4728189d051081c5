/** The work that makes one engine. */
import { latestPerField } from '../merge.js';
import { may, must, shape, text, truth } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const buildFields = shape({
  name: may(text),
  engine: may(text),
  note: may(text),
  bought: may(text),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(buildFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'build',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
