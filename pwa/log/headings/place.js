/** Where a part or holder lies, or where it has gone. */
import { oneStands } from '../merge.js';
import { id, may, mustOrNull, shape, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ in: mustOrNull(id), where: may(text), gone: may(text) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'place',
  check,
  merge: oneStands,
  v: 1,
  names: false,
});
