/** A bag, bin, tray, box or shelf. */
import { latestPerField } from '../merge.js';
import { id, may, must, shape, text, truth, word } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const holderFields = shape({
  name: may(text),
  form: may(word('bag', 'bin', 'tray', 'box', 'shelf', 'other')),
  note: may(text),
  build: may(id),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(holderFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'holder',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
