/** A photo as large as its place: looked at closer, moved, pointed at. The picture is never changed. */

import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { html, Icon } from '../frame/index.js';
import { usePhoto } from '../frame/photo.js';
import { t } from '../texts/index.js';
import { Arrows } from './arrows.js';
import { useHands } from './hands.js';
import { clamped, fitting, placed } from './view.js';

/** @typedef {import('./view.js').Size} Size */

/** @type {Size} */
const UNKNOWN = Object.freeze({ w: 1, h: 1 });

/** How large the pane is now. @param {{current: HTMLElement | null}} pane @returns {Size} */
function useSize(pane) {
  const [size, setSize] = useState(UNKNOWN);
  useLayoutEffect(() => {
    const measure = () => {
      const { clientWidth: w, clientHeight: h } = /** @type {HTMLElement} */ (pane.current);
      setSize((was) => (was.w === w && was.h === h ? was : { w: w || 1, h: h || 1 }));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(/** @type {HTMLElement} */ (pane.current));
    return () => watch.disconnect();
  }, []);
  return size;
}

/**
 * @param {{sha: string, says: string, view: import('./view.js').View, onView: (view: any) => void, marks: any[],
 *   arrow?: any, onDraw?: any, caption?: any, chosen?: boolean, onChoose?: () => void}} props
 *   arrow: the one that is being drawn
 */
export function Pane({
  sha,
  says,
  view: wanted,
  onView,
  marks,
  arrow,
  onDraw,
  caption,
  chosen,
  onChoose,
}) {
  const box = useRef(/** @type {HTMLElement | null} */ (null));
  const pane = useSize(box);
  const [picture, setPicture] = useState(UNKNOWN);
  const address = usePhoto(sha);
  const room = { pane, picture: picture === UNKNOWN ? pane : picture };
  const view = clamped(wanted, room);
  const hands = useHands(box, { room, view, onView, onDraw: onDraw ?? null });
  const fit = fitting(room);
  const at = placed(view, { x: 0.5, y: 0.5 }, room);
  const place = `width:${fit.w}px;height:${fit.h}px;transform:translate(-50%,-50%) translate(${at.x}px,${at.y}px) scale(${view.k})`;
  const known = (/** @type {any} */ { target }) =>
    setPicture({ w: target.naturalWidth || 1, h: target.naturalHeight || 1 });
  return html`<figure class=${`shot ${chosen ? 'chosen' : ''}`} onFocusIn=${onChoose} onPointerDown=${onChoose}>
    <div ref=${box} class=${`pane ${onDraw ? 'draws' : ''}`} data-fingers tabindex="0" role="group" aria-label=${t('photo.pane')} aria-busy=${String(address === undefined)} ...${hands}>
      ${address && html`<img src=${address} alt=${says} style=${place} onLoad=${known} draggable=${false} />`}
      ${address && html`<${Arrows} marks=${marks} arrow=${arrow} spot=${(/** @type {any} */ one) => placed(view, one, room)} />`}
      ${address === null && html`<p class="still"><${Icon} name="i-photo" /><span>${t('photo.still')}</span></p>`}
    </div>${caption && html`<figcaption>${caption}</figcaption>`}</figure>`;
}
