/** An entry voided, with the reason; both stay readable. */
import { strikeOut } from '../merge.js';
import { must, shape, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ reason: must(words) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'strike-out',
  check,
  merge: strikeOut,
  v: 1,
  names: false,
});
