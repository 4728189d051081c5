/** The store for every component, and questions to it that answer themselves again. */
import { createContext } from 'preact';
import { useContext, useEffect, useRef, useState } from 'preact/hooks';

/** @type {import('preact').Context<any>} */
const StoreContext = createContext(null);

/** Gives the store to everything inside it. */
export const StoreGiver = StoreContext.Provider;

/** @returns {any} the store */
export const useStore = () => useContext(StoreContext);

/**
 * @template T
 * @typedef {{state: 'wait' | 'ready' | 'broken', value: T | null, error: any}} Answer
 */

/**
 * Asks the store, and asks again whenever an entry comes. The last answer stays until the new one
 * is there, so nothing jumps.
 * @template T
 * @param {(store: any) => Promise<T>} ask
 * @param {any[]} about asks anew when one of these changes
 * @returns {Answer<T>}
 */
export function useAnswer(ask, about) {
  const store = useStore();
  const [answer, setAnswer] = useState(
    /** @type {Answer<T>} */ ({ state: 'wait', value: null, error: null }),
  );
  const asked = useRef(0);
  useEffect(() => {
    let gone = false;
    const read = async () => {
      asked.current += 1;
      const turn = asked.current;
      try {
        const value = await ask(store);
        if (!gone && turn === asked.current) setAnswer({ state: 'ready', value, error: null });
      } catch (error) {
        if (!gone) setAnswer((was) => ({ ...was, state: 'broken', error }));
        reportError(error);
      }
    };
    setAnswer((was) => (was.state === 'wait' ? was : { ...was, state: 'wait', value: null }));
    read();
    const off = store.onChange(read);
    return () => {
      gone = true;
      off();
    };
  }, about);
  return answer;
}

/**
 * A slice of the workshop, kept fresh.
 * @param {any} store
 * @param {(store: any) => Promise<any>} read
 * @param {any[]} about
 * @returns {{state: 'wait' | 'ready' | 'broken', workshop: any}}
 */
export function useSlice(store, read, about) {
  const answer = useAnswer(() => read(store), about);
  return { state: answer.state, workshop: answer.value };
}
