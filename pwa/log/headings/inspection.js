/** What somebody saw and measured on a part. */
import { keepBoth } from '../merge.js';
import { facts, id, lines, may, must, photos, shape, text, truth, word } from '../shapes.js';

/** One criterion looked at. */
const look = shape({ criterion: must(id), good: must(truth) });

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({
  verdict: may(word('use', 'spare', 'machine', 'scrap')),
  reason: may(text),
  looks: may(lines(look)),
  readings: may(lines(facts)),
  note: may(text),
  photos,
});

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'inspection',
  check,
  merge: keepBoth,
  v: 1,
  names: false,
});
