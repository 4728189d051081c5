/** Which thing a label marks; nothing marked is blank, spoilt or free again. */
import { oneStands } from '../merge.js';
import { id, may, mustOrNull, shape, word } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ marks: mustOrNull(id), state: may(word('retired', 'free')) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({ word: 'label', check, merge: oneStands, v: 1, names: true });
