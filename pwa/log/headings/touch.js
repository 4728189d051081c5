/** A fastener checked with the wrench, not turned. */
import { fastener } from '../heading.js';
import { keepBoth } from '../merge.js';
import { id, must, shape } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ run: must(id), fastener: must(id) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'touch',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
  whose: fastener,
});
