/** What a part is: criteria, what to measure, reasons, companions. */
import { latestPerField } from '../merge.js';
import {
  id,
  lines,
  may,
  must,
  number,
  pictureDigest,
  shape,
  text,
  truth,
  words,
} from '../shapes.js';

/** One thing to look at for a kind, and what good and bad look like. */
const criterion = shape({
  id: must(id),
  asks: must(words),
  hint: may(text),
  good: may(text),
  bad: may(text),
  drawing: may(text),
  good_photo: may(pictureDigest),
  bad_photo: may(pictureDigest),
});

/** One thing to measure for a kind: with what, where, and between which limits. */
const measure = shape({
  id: must(id),
  name: must(words),
  quantity: may(text),
  unit: may(text),
  instrument: may(text),
  positions: may(lines(text)),
  directions: may(lines(text)),
  least: may(number),
  most: may(number),
  source: may(text),
});

/** Short reasons a person may choose, for each verdict that wants one. */
const reasons = shape({
  spare: may(lines(text)),
  machine: may(lines(text)),
  scrap: may(lines(text)),
});

/** What a description may say; it names only what changed, and null empties a field. */
const kindFields = shape({
  name: may(text),
  plural: may(text),
  criteria: may(lines(criterion)),
  reasons: may(reasons),
  fastener: may(truth),
  single_use: may(truth),
  companions: may(lines(id)),
  drawing: may(text),
  invented: may(truth),
  measures: may(lines(measure)),
  own_place: may(truth),
  source: may(text),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(kindFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'kind',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
