/** Where on which build a part is fitted. */
import { oneStands } from '../merge.js';
import { id, may, mustOrNull, shape, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ build: mustOrNull(id), place: may(text), reason: may(text) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'fitted',
  check,
  merge: oneStands,
  v: 1,
  names: false,
});
