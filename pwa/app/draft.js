/** Half-done screens survive a kill: what is typed lies on the disk under the screen's name. */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';

/**
 * @template T
 * @typedef {Partial<T> | ((was: T) => Partial<T>)} Change
 */

/**
 * A value that is read from the disk once and written there at each change.
 * @template {Record<string, any>} T
 * @param {any} store
 * @param {string} name
 * @param {T} initial
 * @returns {[T | null, (change: Change<T>) => void, () => Promise<void>]} null until it has been read;
 *   change; forget, resolved when the disk has forgotten it
 */
export function useDraft(store, name, initial) {
  const [value, setValue] = useState(/** @type {T | null} */ (null));
  const now = useRef(/** @type {T | null} */ (null));
  useEffect(() => {
    let gone = false;
    now.current = null;
    setValue(null);
    Promise.resolve(store.draft(name)).then((kept) => {
      if (gone) return;
      now.current = { ...initial, ...(kept ?? {}) };
      setValue(now.current);
    });
    return () => {
      gone = true;
    };
  }, [name]);
  const change = useCallback(
    (/** @type {Change<T>} */ part) => {
      const was = /** @type {T} */ ({ ...initial, ...now.current });
      // Quick fingers press twice before the screen is drawn anew, so a change may build on the last.
      now.current = { ...was, ...(typeof part === 'function' ? part(was) : part) };
      setValue(now.current);
      store.setDraft(name, now.current);
    },
    [name],
  );
  const forget = useCallback(async () => {
    now.current = null;
    await store.setDraft(name, null);
  }, [name]);
  return [value, change, forget];
}
