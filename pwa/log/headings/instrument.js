/** A tool that measures: its quantity and range, how far it may be off, its calibration. */
import { latestPerField } from '../merge.js';
import { may, must, number, shape, text, truth } from '../shapes.js';

/**
 * What a description may say; it names only what changed, and null empties a field. Unit against
 * quantity, least against most and one date against another are asked by the form and told by
 * views/instrument: two devices may each change one of a pair, and both must be read.
 */
const instrumentFields = shape({
  name: may(text),
  sort: may(text),
  quantity: may(text),
  unit: may(text),
  least: may(number),
  most: may(number),
  resolution: may(number),
  deviation: may(number),
  uncertainty: may(number),
  calibrated: may(text),
  due: may(text),
  lies: may(text),
  note: may(text),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(instrumentFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'instrument',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
