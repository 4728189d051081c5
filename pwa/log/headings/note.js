/** Something written down about anything. */
import { keepBoth } from '../merge.js';
import { must, photos, shape, words } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ text: must(words), photos });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({ word: 'note', check, merge: keepBoth, v: 1, names: false });
