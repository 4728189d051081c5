/** The store for every component, and questions to it that answer themselves again. */
import { createContext } from 'preact';
import { useContext, useLayoutEffect, useState } from 'preact/hooks';

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
 * @param {(store: any) => T | null} [known] what has been read already; it is shown at once
 * @returns {Answer<T>}
 */
export function useAnswer(ask, about, known = () => null) {
  const store = useStore();
  const [answer, setAnswer] = useState(() => firstAnswer(known(store)));
  // Before the first paint: what is remembered is then the first thing to be seen.
  useLayoutEffect(() => {
    setAnswer((was) => unlessSame(was, firstAnswer(known(store))));
    return keepAsking(store, ask, setAnswer);
  }, about);
  return answer;
}

/**
 * @template T
 * @param {T | null} value
 * @returns {Answer<T>}
 */
const firstAnswer = (value) => ({ state: value === null ? 'wait' : 'ready', value, error: null });

/**
 * The same object as before when nothing else is answered: then nothing is drawn anew.
 * @template T
 * @param {Answer<T>} was
 * @param {Answer<T>} next
 */
const unlessSame = (was, next) =>
  was.state === next.state && was.value === next.value ? was : next;

/**
 * Only the answer to the latest question is shown; an older one may come later.
 * @template T
 * @param {any} store
 * @param {(store: any) => Promise<T>} ask
 * @param {(change: (was: Answer<T>) => Answer<T>) => void} show
 * @returns {() => void} stops asking
 */
function keepAsking(store, ask, show) {
  let turn = 0;
  let due = false;
  let stopped = false;
  const read = async () => {
    turn += 1;
    const mine = turn;
    try {
      const value = await ask(store);
      if (mine === turn) show((was) => unlessSame(was, { state: 'ready', value, error: null }));
    } catch (error) {
      if (mine === turn) show((was) => ({ ...was, state: 'broken', error }));
      reportError(error);
    }
  };
  read();
  const off = store.onChange(() => {
    if (due) return;
    due = true;
    afterFrame(() => {
      due = false;
      if (!stopped) read();
    });
  });
  return () => {
    stopped = true;
    turn += 1;
    off();
  };
}

/** What answers a tap is painted before all is asked again; a page that nobody sees does not wait. @param {() => void} work */
function afterFrame(work) {
  if (document.hidden) work();
  else requestAnimationFrame(() => setTimeout(work));
}

/**
 * A slice of the workshop, kept fresh.
 * @param {any} store
 * @param {(store: any) => Promise<any>} read
 * @param {any[]} about
 * @param {(store: any) => any} [known] the same slice if it has been read already, or null
 * @returns {{state: 'wait' | 'ready' | 'broken', workshop: any}}
 */
export function useSlice(store, read, about, known) {
  const answer = useAnswer(() => read(store), about, known && (() => known(store)));
  return { state: answer.state, workshop: answer.value };
}
