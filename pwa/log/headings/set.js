/** Pieces of one kind chosen to be used together, each with its place, and the ranked spares. */
import { latestPerField } from '../merge.js';
import { id, lines, may, must, shape, text, truth, whole } from '../shapes.js';

/** A chosen piece and its place on the engine. */
const piece = shape({ part: must(id), place: may(text) });

/** One measure the pieces were compared by; its weight as typed. */
const measure = shape({ measure: must(id), weight: may(text) });

/** What a description may say; it names only what changed, and null empties a field. */
const setFields = shape({
  name: may(text),
  kind: may(id),
  build: may(id),
  count: may(whole),
  pieces: may(lines(piece)),
  spares: may(lines(id)),
  measures: may(lines(measure)),
  excluded: may(lines(id)),
  pinned: may(lines(id)),
  says: may(text),
  invented: may(truth),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(setFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'set',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
