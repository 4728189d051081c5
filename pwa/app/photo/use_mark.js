/** An arrow that is being drawn: by finger, by two taps or by keys; it survives a kill of the page. */

import { useDraft } from '../draft.js';
import { say } from '../frame/index.js';
import { t } from '../texts/index.js';
import { pointOf, spotOf } from './view.js';

/** @typedef {import('./view.js').View} View */

/** @type {{on: boolean, from: string[] | null, to: string[] | null, note: string}} */
const FRESH = Object.freeze({ on: false, from: null, to: null, note: '' });
const STRIDE = 0.02;
const FIRST = 0.12;

/** @type {Record<string, [number, number]>} */
const WAYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** Whether a key moves something. @param {string} key */
export const wayOf = (key) => WAYS[key] ?? null;

/** @param {{from: string[] | null, to: string[] | null}} was @param {any} way */
function drawn(was, { tap, from, to }) {
  if (!tap) return { from: spotOf(from), to: spotOf(to) };
  if (was.from && !was.to) return { to: spotOf(tap) };
  return { from: spotOf(tap), to: null };
}

/** A spot moved by a stride; a closer look makes it finer. @param {string[]} spot @param {[number, number]} way @param {View} view */
function moved(spot, [x, y], { k }) {
  const at = pointOf(spot);
  return spotOf({ x: at.x + (x * STRIDE) / k, y: at.y + (y * STRIDE) / k });
}

/**
 * Arrow keys move the head, with shift the tail; the first one lays the arrow in the middle.
 * @param {typeof FRESH} was @param {[number, number]} way @param {boolean} tail @param {View} view
 */
function keyed(was, way, tail, view) {
  const from = was.from ?? spotOf({ x: view.x - FIRST / view.k, y: view.y + FIRST / view.k });
  const to = was.to ?? spotOf(view);
  return tail ? { from: moved(from, way, view), to } : { from, to: moved(to, way, view) };
}

/**
 * @param {any} store
 * @param {string} sha
 */
export function useMark(store, sha) {
  const [draft, change, forget] = useDraft(store, `pointed:${sha}`, FRESH);
  const now = draft ?? FRESH;
  const leave = () => {
    change({ ...FRESH });
    return forget();
  };
  return {
    ready: draft !== null,
    on: now.on,
    arrow: now.on && now.from ? { from: now.from, to: now.to } : null,
    whole: Boolean(now.from && now.to),
    half: Boolean(now.from && !now.to),
    note: now.note,
    begin: () => change({ ...FRESH, on: true }),
    leave,
    write: (/** @type {string} */ note) => change({ note }),
    draw: (/** @type {any} */ way) => change((was) => drawn(was, way)),
    key: (
      /** @type {[number, number]} */ way,
      /** @type {boolean} */ tail,
      /** @type {View} */ view,
    ) => {
      // A held key strokes faster than the screen is drawn anew.
      change((was) => {
        const next = keyed(was, way, tail, view);
        const at = pointOf(next.to);
        say(t('photo.mark.at', { x: Math.round(at.x * 100), y: Math.round(at.y * 100) }));
        return next;
      });
    },
    /** What is kept. @param {string} about */
    entry: (about) => {
      const note = now.note.trim();
      const body = { photo: sha, from: now.from, to: now.to, ...(note ? { note } : {}) };
      return { heading: 'pointed', about, body };
    },
  };
}
