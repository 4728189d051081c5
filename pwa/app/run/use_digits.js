/** A number typed on a hardware keyboard, or by a caliper that types. */

import { useLayoutEffect } from 'preact/hooks';

/**
 * Digits from a hardware keyboard or a caliper that types; Enter keeps, by way of the key itself, so
 * that it can keep only once.
 * @param {(key: string) => void} type
 * @param {() => void} leave
 */
export function useDigits(type, leave) {
  // With the picture, not after it: a digit typed at what is seen must count.
  useLayoutEffect(() => {
    const onKey = (/** @type {KeyboardEvent} */ event) => digit(event, type, leave);
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  });
}

/**
 * @param {KeyboardEvent} event
 * @param {(key: string) => void} type
 * @param {() => void} leave
 */
function digit(event, type, leave) {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const key = KEYS[event.key] ?? event.key;
  if (/^[0-9.]$|^erase$/.test(key)) typed(key, type);
  else if (key === 'Escape') leave();
  else if (key === 'Enter' && !event.repeat) pressMain(event);
}

/**
 * What is typed goes to the reading, and so does the Enter after it: a key or link that had the
 * focus from before must not take it.
 * @param {string} key
 * @param {(key: string) => void} type
 */
function typed(key, type) {
  const had = document.activeElement;
  if (had instanceof HTMLElement && had.matches('button, a[href]')) had.blur();
  type(key);
}

/** @type {Record<string, string>} */
const KEYS = { ',': '.', Backspace: 'erase' };

/** @param {KeyboardEvent} event */
function pressMain(event) {
  const elsewhere = /** @type {Element} */ (event.target).closest?.('button, a[href]');
  if (!elsewhere) /** @type {HTMLElement | null} */ (document.querySelector('.run .act'))?.click();
}
