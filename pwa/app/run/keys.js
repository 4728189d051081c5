/** Keys of a run: Enter confirms once per key-up, R reading, S strike out, Escape leaves. */

import { useLayoutEffect, useRef } from 'preact/hooks';
import { settings } from '../settings.js';

const CONTROLS = 'a[href], button, input, select, textarea, dialog, [role="alertdialog"]';

/** @typedef {{confirm?: () => unknown, reading?: () => void, strike?: () => void, leave?: () => void}} RunKeys */

/** @param {RunKeys} keys */
export function useRunKeys(keys) {
  const now = useRef(keys);
  now.current = keys;
  // With the picture, not after it: a key pressed at what is seen must count.
  useLayoutEffect(() => {
    let enter = false;
    const down = (/** @type {KeyboardEvent} */ event) => {
      const elsewhere = /** @type {Element} */ (event.target).closest?.(CONTROLS);
      if (event.key === 'Enter' && !event.repeat) enter = !elsewhere;
    };
    const up = (/** @type {KeyboardEvent} */ event) => {
      if (event.key === 'Enter' && enter) {
        enter = false;
        press(now.current);
      } else letter(event, now.current);
    };
    document.addEventListener('keydown', down);
    document.addEventListener('keyup', up);
    return () => {
      document.removeEventListener('keydown', down);
      document.removeEventListener('keyup', up);
    };
  }, []);
}

/** A pedal goes the way of the confirm itself, so that it is as deaf after a kept pull. @param {RunKeys} keys */
function press(keys) {
  const confirm = /** @type {HTMLElement | null} */ (document.querySelector('.run .act'));
  if (confirm) confirm.click();
  else keys.confirm?.();
}

/** @param {KeyboardEvent} event @param {RunKeys} keys */
function letter(event, keys) {
  const typing = /** @type {Element} */ (event.target).closest?.('input, textarea, select, dialog');
  if (typing || event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === 'Escape') keys.leave?.();
  else if (!settings.letters.value) return;
  else if (event.key === 'r' || event.key === 'R') keys.reading?.();
  else if (event.key === 's' || event.key === 'S') keys.strike?.();
}
