/** What the screens of sets read. */
import { readAll } from '../read_all.js';

const HEADINGS = ['part', 'set', 'kind', 'donor', 'build'];

/** Kinds, pieces, donors, builds and sets. @param {any} store */
export const readSets = (store) => readAll(store, HEADINGS);

/** A set by its id, struck out or not, with all that is about it. @param {any} store @param {string} id */
export const readSet = (store, id) => readAll(store, HEADINGS, id);
