/** The engine, vehicle or job lot that used parts came from. */
import { latestPerField } from '../merge.js';
import { may, must, shape, text, truth } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const donorFields = shape({
  name: may(text),
  engine: may(text),
  note: may(text),
  bought: may(text),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(donorFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'donor',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
