/** What was put together from the store, remembered until an entry comes. */

/** @type {WeakMap<object, {found: Map<string, any>}>} */
const kept = new WeakMap();

/**
 * A map that is another, empty one after each entry: what was begun before does not land in it.
 * Ask for it before listening to the store, so that it is empty when the listener asks again.
 * @param {any} store
 * @returns {Map<string, any>}
 */
export function untilChanged(store) {
  const had = kept.get(store);
  if (had) return had.found;
  const fresh = { found: new Map() };
  kept.set(store, fresh);
  store.onChange(() => {
    fresh.found = new Map();
  });
  return fresh.found;
}
