/** Fasteners tightened together, the parts they clamp, and the programme. */
import { latestPerField } from '../merge.js';
import {
  id,
  lines,
  may,
  measured,
  must,
  number,
  shape,
  text,
  textOr,
  truth,
  whole,
  word,
  words,
} from '../shapes.js';

/** One fastener by its id, with its number and its place in the drawing. */
const fastener = shape({
  id: must(id),
  number: must(whole),
  x: must(whole),
  y: must(whole),
  group: may(text),
  note: may(text),
  part: may(id),
});

/** The value of a pass, for one group of fasteners or for all. */
const target = shape({ value: must(number), unit: must(words), group: may(text) });

/** One round over the fasteners. */
const pass = shape({
  id: must(id),
  how: must(word('hand', 'torque', 'angle', 'back-off')),
  values: may(lines(target)),
});

/** A signal word and what it warns of. */
const caution = shape({
  word: must(word('danger', 'warning', 'caution', 'notice')),
  says: must(words),
});

/** The ordered passes, lubricant state, sequence and source; one field as a whole. */
const programme = shape({
  passes: must(lines(pass)),
  lubricant: may(text),
  sequence: may(lines(id)),
  source: may(text),
  cautions: may(lines(caution)),
  retorque: may(text),
  invented: may(truth),
});

/** What the wrench pulls through: its length, the wrench's, and the angle between them. */
const adapter = shape({
  name: may(text),
  adapter_length: must(measured),
  wrench_length: must(measured),
  angle: must(measured),
});

/** What a description may say; it names only what changed, and null empties a field. */
const jointFields = shape({
  name: may(text),
  build: may(id),
  parts: may(lines(id)),
  noun: may(text),
  plural: may(text),
  thread: may(text),
  fastener_part: may(id),
  fasteners: may(lines(fastener)),
  pattern: may(word('circle', 'rows', 'line', 'points')),
  programme: may(programme),
  wrench: may(id),
  adapter: may(textOr(adapter)),
  note: may(text),
  invented: may(truth),
  casting: may(word('plain', 'ring', 'head')),
  strength_class: may(text),
});

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ fields: must(jointFields) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({
  word: 'joint',
  check,
  merge: latestPerField,
  v: 1,
  names: true,
});
