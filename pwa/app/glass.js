/** What happens on the glass: every contact is watched, so that a press can be judged. */

import { useEffect, useState } from 'preact/hooks';
import { contactDown, contactEnd, contactMove, isWet, LIMITS, newGlass } from './press_rules.js';

export const glass = newGlass();
/** @type {Set<() => void>} */
const watchers = new Set();
const tell = () => {
  for (const watcher of watchers) watcher();
};

/** Contacts that did not count, oldest first, each with its cause. */
export const rejectedContacts = () => glass.trace.slice();

/** A new picture lies under the finger: what was meant for the old one must not act on it. */
export const wake = () => {
  glass.woken = performance.now();
};

/**
 * A mouse has no palm and no drips; a screen reader's press has no pressure.
 * @param {PointerEvent} event
 */
export const isFinger = (event) => event.pointerType !== 'mouse' && event.pressure !== 0;

/** The last element a finger went down on. @type {Element | null} */
let pressed = null;

/**
 * After a press has changed the screen, the browser still sends its click to whatever lies there
 * now. Such a click was never meant for it.
 * @param {any} event
 */
function stopGhost(event) {
  const byFinger = event.pointerType === 'touch' || event.pointerType === 'pen';
  if (!byFinger || !pressed || event.detail === 0) return;
  const target = /** @type {Element} */ (event.target);
  if (target.contains(pressed) || pressed.contains(target)) return;
  event.preventDefault();
  event.stopImmediatePropagation();
}

/**
 * Watches every contact on the page. Called once, by the page's start.
 * @param {Document} page
 */
export function watchGlass(page) {
  const on = (/** @type {string} */ name, /** @type {(event: any) => void} */ act) =>
    page.addEventListener(name, act, { capture: true, passive: true });
  const end = (/** @type {boolean} */ cancelled) => (/** @type {PointerEvent} */ event) => {
    contactEnd(glass, { id: event.pointerId, at: event.timeStamp, cancelled });
    if (cancelled) tell();
  };
  on('pointerdown', (event) => {
    // A picture is looked at with as many fingers as one likes; they are no palm and no drops.
    pressed = null;
    if (event.target.closest?.('[data-fingers]')) return;
    pressed = isFinger(event) ? event.target : null;
    if (!pressed) return;
    // The finger's own gap is asked before the contact is entered as the latest one.
    const gap = event.timeStamp - glass.lastEnd;
    const alone = contactDown(glass, at(event));
    event.alone = alone && gap >= LIMITS.alone;
    if (!alone) tell();
  });
  page.addEventListener('click', stopGhost, { capture: true });
  on('pointermove', (event) => contactMove(glass, at(event)));
  on('pointerup', end(false));
  on('pointercancel', end(true));
  on('scroll', () => {
    glass.scrolled = performance.now();
  });
  on('visibilitychange', () => {
    if (page.visibilityState === 'visible') wake();
    glass.contacts.clear();
  });
}

/** @param {PointerEvent} event */
export const at = (event) => ({
  id: event.pointerId,
  x: event.clientX,
  y: event.clientY,
  at: event.timeStamp,
});

/** Resolves once nobody has touched the glass for a moment, so that nothing moves under a finger. */
export async function whenStill() {
  for (;;) {
    const wait = glass.touched + LIMITS.still - performance.now();
    if (wait <= 0 && glass.contacts.size === 0) return;
    await new Promise((resolve) => setTimeout(resolve, Math.max(wait, 50)));
  }
}

/** Whether ghosts were seen on the glass lately; renews the screen when that changes. */
export function useWet() {
  const [wet, setWet] = useState(() => isWet(glass, performance.now()));
  useEffect(() => {
    let timer = 0;
    const look = () => {
      const left = glass.wetUntil - performance.now();
      setWet(left > 0);
      clearTimeout(timer);
      if (left > 0) timer = window.setTimeout(look, left + 20);
    };
    watchers.add(look);
    look();
    return () => {
      clearTimeout(timer);
      watchers.delete(look);
    };
  }, []);
  return wet;
}
