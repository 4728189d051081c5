/** A half-typed reading belongs to its fastener and pass: for another one the keys begin empty. */

import { useDraft } from '../draft.js';
import { nextOf } from './ready.js';

/**
 * @param {any} store
 * @param {string} id
 * @param {any} run what useRun gives
 * @returns {[any, (part: any) => void, () => Promise<void>]} as useDraft gives it
 */
export function useHalfTyped(store, id, run) {
  const [kept, set, forget] = useDraft(store, `reading:${id}`, BLANK);
  const cell = run.known ? cellOf(run.known.view, run.chosen) : null;
  const own = (/** @type {any} */ draft) =>
    draft && draft.cell !== cell ? { ...draft, typed: '', cell } : draft;
  const change = (/** @type {any} */ part) =>
    set((/** @type {any} */ was) => {
      const now = own(was);
      return { ...now, ...(typeof part === 'function' ? part(now) : part) };
    });
  return [own(kept), change, forget];
}

const BLANK = { typed: '', unit: '', at: '', cell: '' };

/** @param {any} view @param {string | null} chosen the run, the pass and the fastener read now */
function cellOf(view, chosen) {
  return [view.run?.id, view.pass, nextOf(view, chosen)?.id].join(' ');
}
