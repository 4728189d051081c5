/** What the screens of gauge studies read. */
import { readAll } from '../read_all.js';

const HEADINGS = ['study', 'instrument'];

/** @param {any} store */
export const readStudies = (store) => readAll(store, HEADINGS);

/** A study by its id, struck out or not. @param {any} store @param {string} id */
export const readStudy = (store, id) => readAll(store, HEADINGS, id);
