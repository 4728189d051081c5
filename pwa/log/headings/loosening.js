/** Done fasteners undone, and the pulls that are void from then on. */
import { oneStands } from '../merge.js';
import { id, lines, may, must, shape, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  run: must(id),
  pulls: must(lines(id)),
  fasteners: may(lines(id)),
  reason: must(words),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'loosening',
  check,
  merge: oneStands,
  v: 1,
  names: false,
});
