/** How the photos on the screen are looked at, one or both at once, by keys too. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { wayOf } from './use_mark.js';
import { MOST, STEP, WHOLE } from './view.js';

/** @typedef {import('./view.js').View} View */

const STRIDE = 0.15;

/** @param {View} view @param {number} by */
const closer = (view, by) => ({ ...view, k: Math.min(MOST, Math.max(1, view.k * by)) });

/** @param {View} view @param {[number, number]} way */
const aside = (view, [x, y]) => ({
  ...view,
  x: Math.min(1, Math.max(0, view.x + (x * STRIDE) / view.k)),
  y: Math.min(1, Math.max(0, view.y + (y * STRIDE) / view.k)),
});

/** Typing into a field, a sheet over it, or a key of the browser. @param {KeyboardEvent} stroke */
const isElsewhere = ({ target, ctrlKey, metaKey, altKey }) =>
  ctrlKey ||
  metaKey ||
  altKey ||
  /** @type {Element} */ (target).closest?.('input, textarea, select') ||
  document.querySelector('dialog[open]');

/** @param {any} mark an arrow that is being drawn, else null */
export function useViews(mark) {
  const [views, setViews] = useState([WHOLE, WHOLE]);
  const [together, setTogether] = useState(true);
  const [at, choose] = useState(0);
  const set = (/** @type {number} */ which) => (/** @type {View} */ view) =>
    setViews((was) => was.map((one, n) => (together || n === which ? view : one)));
  const now = views[at] ?? WHOLE;
  const own = {
    together,
    at,
    now,
    choose,
    of: (/** @type {number} */ which) => views[which] ?? WHOLE,
    set,
    zoom: (/** @type {number} */ by) => set(at)(closer(now, by)),
    whole: () => setViews((was) => was.map((one, n) => (together || n === at ? WHOLE : one))),
    join: () => {
      if (!together) setViews([now, now]);
      setTogether(!together);
    },
  };
  /** @param {[number, number]} way @param {boolean} shift @returns {boolean} whether something moved */
  const turn = (way, shift) => {
    if (mark) mark.key(way, shift, now);
    else if (now.k > 1) set(at)(aside(now, way));
    return Boolean(mark) || now.k > 1;
  };
  const stroke = (/** @type {KeyboardEvent} */ { key, shiftKey }) => {
    const way = wayOf(key);
    if (mark && key === 'Escape') {
      mark.leave();
      return true;
    }
    if (way) return turn(way, shiftKey);
    const does = keys[key];
    does?.(own);
    return Boolean(does);
  };
  useKeys(stroke);
  return own;
}

/** @type {Record<string, (own: any) => void>} */
const keys = {
  '+': (own) => own.zoom(STEP),
  '=': (own) => own.zoom(STEP),
  '-': (own) => own.zoom(1 / STEP),
  0: (own) => own.whole(),
};

/** @param {(event: KeyboardEvent) => boolean} stroke */
function useKeys(stroke) {
  const latest = useRef(stroke);
  latest.current = stroke;
  useEffect(() => {
    const hear = (/** @type {KeyboardEvent} */ event) => {
      if (event.defaultPrevented || isElsewhere(event)) return;
      if (latest.current(event)) event.preventDefault();
    };
    document.addEventListener('keydown', hear, true);
    return () => document.removeEventListener('keydown', hear, true);
  }, []);
}
