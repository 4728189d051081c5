/** What the screens of sets read. */
import { Workshop } from '../../log/workshop.js';

const HEADINGS = ['part', 'set', 'kind', 'donor', 'build'];

/** Kinds, pieces, donors, builds and sets. @param {any} store */
export async function readSets(store) {
  const slices = await Promise.all(HEADINGS.map((word) => store.allOf(word)));
  return Workshop(slices.flatMap((slice, at) => slice.all(String(HEADINGS[at]))));
}

/** A set by its id, struck out or not, with all that is about it. @param {any} store @param {string} id */
export async function readSet(store, id) {
  const slices = await Promise.all(HEADINGS.map((word) => store.allOf(word)));
  const found = slices.map((slice) => slice.subject(id)).filter(Boolean);
  return Workshop([...slices.flatMap((slice, at) => slice.all(String(HEADINGS[at]))), ...found]);
}
