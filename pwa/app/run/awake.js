/** Keeps the screen on during a run, and notices when nobody has touched it for ten minutes. */

import { useEffect } from 'preact/hooks';
import { glass } from '../glass.js';

export const IDLE_MS = 10 * 60 * 1000;
const LOOK_MS = 15 * 1000;

/**
 * @param {boolean} wanted
 * @param {() => void} onIdle
 */
export function useAwake(wanted, onIdle) {
  useEffect(() => {
    if (!wanted) return undefined;
    /** @type {any} */
    let lock = null;
    let gone = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const given = await navigator.wakeLock.request('screen');
        if (gone) given.release();
        else lock = given;
      } catch {
        // A phone low on power refuses; the run goes on without.
        lock = null;
      }
    };
    // The lock ends when the page is hidden, so it is asked for again on return.
    document.addEventListener('visibilitychange', ask);
    ask();
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', ask);
      lock?.release();
    };
  }, [wanted]);
  useIdle(wanted, onIdle);
}

/**
 * @param {boolean} wanted
 * @param {() => void} onIdle
 */
function useIdle(wanted, onIdle) {
  useEffect(() => {
    if (!wanted) return undefined;
    const since = performance.now();
    let pressed = since;
    const onKey = () => {
      pressed = performance.now();
    };
    document.addEventListener('keyup', onKey);
    const timer = setInterval(() => {
      const last = Math.max(since, pressed, glass.touched);
      if (performance.now() - last >= IDLE_MS) onIdle();
    }, LOOK_MS);
    return () => {
      document.removeEventListener('keyup', onKey);
      clearInterval(timer);
    };
  }, [wanted, onIdle]);
}
