/** How the photos on the screen are looked at, one or both at once, by keys too. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { say } from '../frame/index.js';
import { t } from '../texts/index.js';
import { wayOf } from './use_mark.js';
import { between, inside, MOST, STEP, WHOLE } from './view.js';

/** @typedef {import('./view.js').View} View */

const STRIDE = 0.15;

/** @param {View} view @param {number} by */
const closer = (view, by) => ({ ...view, k: between(view.k * by, 1, MOST) });

/** @param {View} view @param {[number, number]} way */
const aside = ({ k, x, y }, [across, down]) => ({
  k,
  x: inside(x + (across * STRIDE) / k, 1 / k),
  y: inside(y + (down * STRIDE) / k, 1 / k),
});

/** @param {number} k */
export const times = (k) => Math.round(k * 10) / 10;

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
    turned(which, () => view);
  /** @param {number} which @param {(view: View) => View} to keys stroke faster than the screen is drawn */
  const turned = (which, to) =>
    setViews((was) => was.map((one, n) => (together || n === which ? to(one) : one)));
  const now = views[at] ?? WHOLE;
  const own = {
    together,
    at,
    now,
    choose,
    of: (/** @type {number} */ which) => views[which] ?? WHOLE,
    set,
    zoom: (/** @type {number} */ by) => {
      turned(at, (view) => closer(view, by));
      say(t('photo.times.spoken', { n: times(closer(now, by).k) }));
    },
    whole: () => set(at)(WHOLE),
    join: () => {
      if (!together) setViews([now, now]);
      setTogether(!together);
    },
  };
  /** @param {[number, number]} way @param {boolean} shift @returns {boolean} whether something moved */
  const turn = (way, shift) => {
    if (mark) mark.key(way, shift, now);
    else if (now.k > 1) turned(at, (view) => aside(view, way));
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
