/** A piece, or a counted handful nobody tells apart. */
import { latestPerField } from '../merge.js';
import { id, may, must, shape, text, truth, whole } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const partFields = shape({
  name: may(text),
  kind: may(id),
  quantity: may(whole),
  donor: may(id),
  from: may(text),
  build: may(id),
  for: may(text),
  single_use: may(truth),
  thread: may(text),
  note: may(text),
  invented: may(truth),
  bag: may(id),
  number: may(whole),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(partFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'part',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
