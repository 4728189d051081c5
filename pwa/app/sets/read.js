/** What the screens of sets read, and the search made ready before it is asked. */
import { Workshop } from '../../log/workshop.js';
import { best } from '../../trade/sets.js';

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

let warm = false;

/**
 * The search runs once over made-up sizes while the page has nothing to do, so that the first set
 * somebody waits for finds it translated already.
 */
export function warmUp() {
  if (warm) return;
  warm = true;
  const idle = globalThis.requestIdleCallback ?? ((fn) => setTimeout(fn, 200));
  const turn = (/** @type {number} */ left) =>
    idle(() => {
      const pieces = Array.from({ length: 24 }, (_, at) => ({
        name: String(at),
        sizes: [(at * 7919) % 97, (at * 104729) % 89],
      }));
      best(pieces, [{ name: 'one' }, { name: 'other' }], 8);
      if (left > 1) turn(left - 1);
    });
  turn(4);
}
