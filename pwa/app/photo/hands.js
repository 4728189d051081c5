/** Fingers, mouse and wheel on a picture: pan, pinch, double tap, and drawing from tail to head. */

import { useEffect, useRef } from 'preact/hooks';
import { panned, pictured, STEP, WHOLE, zoomed } from './view.js';

/** @typedef {import('./view.js').Point} Point */
/** @typedef {import('./view.js').Room} Room */
/** @typedef {import('./view.js').View} View */

const SLIP = 10;
const TWICE_MS = 320;
const TAP_MS = 400;
const NEAR = 3;

/**
 * @typedef {object} Wanted
 * @property {Room} room
 * @property {View} view
 * @property {(view: View) => void} onView
 * @property {((way: {tap?: Point, from?: Point, to?: Point}) => void) | null} onDraw while an arrow is drawn
 */

/** @param {Point} one @param {Point} other */
const apart = (one, other) => Math.hypot(one.x - other.x, one.y - other.y);

/** @param {Point} one @param {Point} other */
const middle = (one, other) => ({ x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 });

/** A contact, in px from the middle of the pane. @param {any} event @returns {Point} */
function placeOf(event) {
  const box = event.currentTarget.getBoundingClientRect();
  return {
    x: event.clientX - box.left - box.width / 2,
    y: event.clientY - box.top - box.height / 2,
  };
}

class Hands {
  /** @type {Map<number, Point>} */
  down = new Map();
  /** Where the only finger went down, and when; null when there were two. @type {{at: Point, ms: number, slid: boolean} | null} */
  alone = null;
  /** The tap before this one. */
  last = { at: { x: 0, y: 0 }, ms: -Infinity };
  /** @type {Wanted} */
  wanted = /** @type {any} */ (null);

  /** @param {any} event */
  press(event) {
    if (event.button > 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = placeOf(event);
    this.down.set(event.pointerId, at);
    this.alone = this.down.size === 1 ? { at, ms: event.timeStamp, slid: false } : null;
  }

  /** @param {any} event */
  move(event) {
    const was = this.down.get(event.pointerId);
    if (!was) return;
    const at = placeOf(event);
    if (this.down.size === 2) this.pinch(event.pointerId, was, at);
    else if (this.alone) this.slide(was, at);
    this.down.set(event.pointerId, at);
  }

  /** @param {number} id @param {Point} was @param {Point} at */
  pinch(id, was, at) {
    const { room, view, onView } = this.wanted;
    const [other] = [...this.down].filter(([each]) => each !== id).map(([, point]) => point);
    if (!other) return;
    const from = middle(was, other);
    const to = middle(at, other);
    const moved = panned(view, { x: to.x - from.x, y: to.y - from.y }, room);
    this.show(onView, zoomed(moved, apart(at, other) / Math.max(apart(was, other), 1), to, room));
  }

  /** @param {Point} was @param {Point} at */
  slide(was, at) {
    const { room, view, onView, onDraw } = this.wanted;
    const alone = /** @type {NonNullable<Hands['alone']>} */ (this.alone);
    alone.slid ||= apart(alone.at, at) > SLIP;
    if (!alone.slid) return;
    if (onDraw) onDraw({ from: pictured(view, alone.at, room), to: pictured(view, at, room) });
    else this.show(onView, panned(view, { x: at.x - was.x, y: at.y - was.y }, room));
  }

  /** Moves may come faster than the screen is drawn anew. @param {(view: View) => void} onView @param {View} view */
  show(onView, view) {
    this.wanted = { ...this.wanted, view };
    onView(view);
  }

  /** @param {any} event */
  release(event) {
    const { alone } = this;
    this.down.delete(event.pointerId);
    // A finger that stays after a pinch neither draws nor taps.
    this.alone = null;
    const short = alone && !alone.slid && event.timeStamp - alone.ms < TAP_MS;
    if (short && event.type === 'pointerup') this.tap(alone.at, event.timeStamp);
  }

  /** @param {Point} at @param {number} ms */
  tap(at, ms) {
    const { room, view, onView, onDraw } = this.wanted;
    if (onDraw) {
      onDraw({ tap: pictured(view, at, room) });
      return;
    }
    const twice = ms - this.last.ms < TWICE_MS && apart(at, this.last.at) < SLIP * NEAR;
    this.last = { at, ms: twice ? -Infinity : ms };
    if (twice) this.show(onView, view.k > 1 ? WHOLE : zoomed(view, STEP ** 2, at, room));
  }

  /** @param {any} event */
  roll(event) {
    event.preventDefault();
    const { room, view, onView } = this.wanted;
    const by = event.deltaY < 0 ? STEP ** 0.5 : STEP ** -0.5;
    this.show(onView, zoomed(view, by, placeOf(event), room));
  }
}

/**
 * What the element of a pane listens to.
 * @param {{current: HTMLElement | null}} pane
 * @param {Wanted} wanted
 */
export function useHands(pane, wanted) {
  const hands = useRef(/** @type {Hands | null} */ (null));
  hands.current ??= new Hands();
  const own = hands.current;
  own.wanted = wanted;
  useEffect(() => {
    // A wheel handler set as an attribute may be passive, and the page would scroll away below.
    const roll = (/** @type {WheelEvent} */ event) => own.roll(event);
    pane.current?.addEventListener('wheel', roll, { passive: false });
    return () => pane.current?.removeEventListener('wheel', roll);
  }, []);
  return {
    onPointerDown: (/** @type {any} */ event) => own.press(event),
    onPointerMove: (/** @type {any} */ event) => own.move(event),
    onPointerUp: (/** @type {any} */ event) => own.release(event),
    onPointerCancel: (/** @type {any} */ event) => own.release(event),
  };
}
