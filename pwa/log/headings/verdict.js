/** What may be done with a part. */
import { oneStands } from '../merge.js';
import { id, may, must, shape, text, word } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  verdict: must(word('use', 'spare', 'machine', 'scrap')),
  reason: may(text),
  inspection: may(id),
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'verdict',
  check,
  merge: oneStands,
  v: 1,
  names: false,
});
