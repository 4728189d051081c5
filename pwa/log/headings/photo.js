/** A picture of anything. */
import { keepBoth } from '../merge.js';
import { may, must, pictureDigest, shape, text } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ photo: must(pictureDigest), says: may(text) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({ word: 'photo', check, merge: keepBoth, v: 1, names: false });
