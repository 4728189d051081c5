/** A tool that tightens: its range, graduation, deviation and calibration. */
import { latestPerField } from '../merge.js';
import { may, must, number, shape, text, truth, word } from '../shapes.js';

/** What a description may say; it names only what changed, and null empties a field. */
const wrenchFields = shape({
  name: may(text),
  sort: may(word('click', 'beam', 'dial', 'display', 'angle')),
  unit: may(text),
  least: may(number),
  most: may(number),
  graduation: may(number),
  deviation: may(number),
  calibrated: may(text),
  lies: may(text),
  note: may(text),
  invented: may(truth),
  due: may(text),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(wrenchFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'wrench',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
