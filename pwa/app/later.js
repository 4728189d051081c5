/** Lets a screen paint what is looked at first; the long part follows when the page has a moment. */
import { useEffect, useState } from 'preact/hooks';
import { remembered } from './router.js';

/** It does not wait longer than this, however busy the page is. */
const PATIENCE_MS = 150;

/** @param {() => void} work */
const start = (work) =>
  'requestIdleCallback' in globalThis
    ? requestIdleCallback(work, { timeout: PATIENCE_MS })
    : setTimeout(work, PATIENCE_MS / 3);
const stop = globalThis.cancelIdleCallback ?? clearTimeout;

/** Resolves when the page has painted and heard what waits. @returns {Promise<void>} */
export const breath = () => new Promise((done) => void start(done));

/** Whether somebody comes back to where they were, far down: then all of it is there at once. */
export const comesBack = () => Boolean(remembered());

/**
 * False for the first painted frame, true after it.
 * @param {any} [about] what the first frame waits for
 */
export function useLater(about = true) {
  const [later, setLater] = useState(comesBack);
  useEffect(() => {
    if (!about || later) return undefined;
    const waiting = start(() => setLater(true));
    return () => stop(/** @type {number} */ (waiting));
  }, [Boolean(about)]);
  return later;
}
