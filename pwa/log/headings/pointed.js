/** An arrow that points at something on a photo; the picture itself stays as it was taken. */
import { keepBoth } from '../merge.js';
import { may, must, pictureDigest, shape, spot, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  photo: must(pictureDigest),
  from: must(spot),
  to: must(spot),
  note: may(text),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'pointed',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
