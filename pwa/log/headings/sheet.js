/** Label codes printed together, so that none is printed twice by accident. */
import { keepBoth } from '../merge.js';
import { facts, labelCode, lines, may, must, shape, truth } from '../shapes.js';

/** Shape only. New fields go last and are optional; none is renamed or removed. */
const check = shape({ codes: must(lines(labelCode)), layout: must(facts), reprint: may(truth) });

/** @type {import('../heading.js').Heading} */
export const heading = Object.freeze({ word: 'sheet', check, merge: keepBoth, v: 1, names: true });
