/** The joint of a screen, reckoned anew when entries come, but never under a finger. */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { joint as jointView } from '../../views/joint.js';
import { whenStill } from '../press.js';

/**
 * @typedef {{workshop: any, view: any}} Known
 */

/**
 * @param {any} store
 * @param {string} id
 * @returns {{known: Known | null, missing: boolean, refresh: () => Promise<Known | null>}}
 */
export function useJoint(store, id) {
  const [known, setKnown] = useState(/** @type {Known | null} */ (null));
  const [missing, setMissing] = useState(false);
  const turn = useRef(0);
  const refresh = useCallback(async () => {
    turn.current += 1;
    const mine = turn.current;
    const next = await readJoint(store, id);
    if (mine !== turn.current) return next;
    setMissing(!next);
    setKnown(next);
    return next;
  }, [store, id]);
  useEffect(() => {
    refresh();
    // What another device sent waits until the finger is off; what was pressed here is shown at once.
    const off = store.onChange(async () => {
      await whenStill();
      await refresh();
    });
    return () => {
      turn.current += 1;
      off();
    };
  }, [refresh]);
  return { known, missing, refresh };
}

/**
 * @param {any} store
 * @param {string} id
 * @returns {Promise<Known | null>}
 */
export async function readJoint(store, id) {
  const workshop = await store.jointSlice(id);
  const subject = workshop.subject(id);
  if (subject?.heading !== 'joint' || subject.hidden) return null;
  return { workshop, view: jointView(workshop, id) };
}
