/** Pieces that came to a counted handful. */
import { keepBoth } from '../merge.js';
import { id, lines, may, must, shape, text, whole } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ count: must(whole), says: may(text), pieces: may(lines(id)) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({ word: 'add', check, merge: keepBoth, v: 1, names: false });
