/** What the screens of the shelf and of the machine shop read. */
import { Workshop } from '../../log/workshop.js';
import { readAll } from '../read_all.js';

/** Sets rank spares, holders say where they lie. */
export const AROUND = ['set', 'build', 'holder'];

/** Parts with all that says what they are and where they lie. @param {any} store */
export const readShelf = (store) => readAll(store, ['part', 'kind', 'donor', ...AROUND]);

/** The same with their labels, for choosing what is sent out. @param {any} store */
export const readAway = (store) => readAll(store, ['part', 'kind', 'donor', ...AROUND, 'label']);

/** The same for one kind: no other parts are read. @param {any} store @param {string} kind */
export async function readKind(store, kind) {
  const [slice, around] = await Promise.all([store.kindSlice(kind), readAll(store, AROUND)]);
  const about = slice.subject(kind);
  return Workshop([
    ...['part', 'donor'].flatMap((word) => slice.all(word)),
    ...AROUND.flatMap((word) => around.all(word)),
    ...(about ? [about] : []),
  ]);
}
