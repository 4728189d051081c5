/** Everything of several headings, as one workshop; for screens that look over all parts. */
import { Workshop } from '../log/workshop.js';

/**
 * @param {any} store
 * @param {string[]} headings
 * @param {string} [id] a thing that is wanted even where it was struck out
 */
export async function readAll(store, headings, id) {
  const slices = await Promise.all(headings.map((word) => store.allOf(word)));
  const found = id ? slices.map((slice) => slice.subject(id)).filter(Boolean) : [];
  return Workshop([...slices.flatMap((slice, at) => slice.all(String(headings[at]))), ...found]);
}
