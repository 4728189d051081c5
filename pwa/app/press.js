/** The press guard: every key that makes an entry goes through it. Numbers are in press_rules.js. */

import { h } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { at, glass, isFinger } from './glass.js';
import { judge, LIMITS, reject } from './press_rules.js';

export { rejectedContacts, useWet, wake, watchGlass, whenStill } from './glass.js';

/**
 * @typedef {import('./press_rules.js').Manner} Manner
 * @typedef {{fn: (event: Event) => unknown, press: import('./press_rules.js').Press | null, judged: boolean,
 *   key: string, busy: boolean}} Held
 */

/**
 * Handlers for one key, and how it is to be drawn: ready, down, keeping, kept.
 * @param {(event: Event) => unknown} fn a promise makes the key wait; false says that nothing was kept
 * @param {Manner & {disabled?: boolean}} [manner]
 */
export function usePress(fn, manner = {}) {
  const [state, setState] = useState('ready');
  const held = useRef(
    /** @type {Held} */ ({ fn, press: null, judged: false, key: '', busy: false }),
  );
  const gone = useRef(false);
  held.current.fn = fn;
  useEffect(
    () => () => {
      gone.current = true;
    },
    [],
  );
  const show = (/** @type {string} */ next) => {
    if (!gone.current) setState(next);
  };
  const { confirm, typing, disabled } = manner;
  const props = useMemo(
    () => (disabled ? {} : handlers(held.current, { confirm, typing }, show)),
    [confirm, typing, disabled],
  );
  return { props, state };
}

/**
 * @param {Held} held
 * @param {Manner} manner
 * @param {(state: string) => void} show
 */
function handlers(held, manner, show) {
  const act = (/** @type {Event} */ event) => run(held, manner, show, event);
  return {
    onPointerDown: (/** @type {any} */ event) => {
      held.judged = isFinger(event);
      if (!held.judged) return;
      held.press = { ...at(event), alone: event.alone !== false, spoilt: glass.contacts.size > 1 };
      if (!held.busy) show('down');
    },
    onPointerUp: (/** @type {PointerEvent} */ event) => release(held, manner, show, event, act),
    onPointerCancel: (/** @type {PointerEvent} */ event) => release(held, manner, show, event, act),
    onClick: (/** @type {MouseEvent} */ event) => {
      // A screen reader or a mouse gives a click without a judged contact; keys act on key-up;
      // a finger's click comes after its contact was judged, or is stopped as a ghost.
      const judged = held.judged && event.detail !== 0;
      held.judged = false;
      if (!judged) act(event);
    },
    onKeyDown: (/** @type {KeyboardEvent} */ event) => {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      if (!event.repeat) held.key = event.key;
    },
    onKeyUp: (/** @type {KeyboardEvent} */ event) => {
      if (event.key !== held.key) return;
      event.preventDefault();
      held.key = '';
      act(event);
    },
  };
}

/**
 * @param {Held} held
 * @param {Manner} manner
 * @param {(state: string) => void} show
 * @param {PointerEvent} event
 * @param {(event: Event) => void} act
 */
function release(held, manner, show, event, act) {
  const press = held.press;
  if (!press || press.id !== event.pointerId) return;
  held.press = null;
  if (glass.contacts.size > 0 || glass.doubled >= press.at) press.spoilt = true;
  const element = /** @type {Element} */ (event.currentTarget);
  const cause = judge(
    glass,
    press,
    { ...at(event), inside: inside(element, event), cancelled: event.type === 'pointercancel' },
    manner,
  );
  if (cause) {
    reject(glass, { at: event.timeStamp, cause, target: element.textContent?.slice(0, 40) ?? '' });
    if (!held.busy) show('ready');
    return;
  }
  act(event);
}

/**
 * @param {Element} element
 * @param {PointerEvent} event
 */
function inside(element, event) {
  const box = element.getBoundingClientRect();
  const { clientX: x, clientY: y } = event;
  return x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;
}

/**
 * @param {Held} held
 * @param {Manner} manner
 * @param {(state: string) => void} show
 * @param {Event} event
 */
async function run(held, manner, show, event) {
  if (held.busy || (manner.confirm && performance.now() < glass.deafUntil)) return;
  held.busy = true;
  show('keeping');
  try {
    const kept = await held.fn(event);
    if (manner.confirm && kept !== false && kept !== undefined) {
      glass.deafUntil = performance.now() + LIMITS.deaf;
      show('kept');
      await new Promise((resolve) => setTimeout(resolve, LIMITS.deaf));
    }
  } finally {
    held.busy = false;
    show('ready');
  }
}

/**
 * A guarded key.
 * @param {Record<string, any>} props onPress, typing, and what a button takes
 */
export function Press({ onPress, typing, confirm, children, ...rest }) {
  const { props, state } = usePress(onPress, { typing, confirm, disabled: rest.disabled });
  return h('button', { type: 'button', ...rest, 'data-press': state, ...props }, children);
}
