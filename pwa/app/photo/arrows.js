/** Arrows over a photo: white in a black edge, so that they are seen on any picture, numbered at the tail. */

import { html } from '../frame/index.js';
import { pointOf } from './view.js';

/** @typedef {import('./view.js').Point} Point */

const HEAD = 18;
const HALF = 0.45;

/** The head of an arrow as points of a polygon. @param {Point} tail @param {Point} tip */
export function headOf(tail, tip) {
  const turn = Math.atan2(tip.y - tail.y, tip.x - tail.x);
  return [turn + Math.PI - HALF, turn + Math.PI + HALF]
    .map((way) => [tip.x + HEAD * Math.cos(way), tip.y + HEAD * Math.sin(way)])
    .concat([[tip.x, tip.y]])
    .map((point) => point.map((n) => n.toFixed(1)).join(','))
    .join(' ');
}

/** @param {{tail: Point, tip: Point | null, number: any}} props */
function Arrow({ tail, tip, number }) {
  return html`<g>${
    tip &&
    html`<g class="edge"><line x1=${tail.x} y1=${tail.y} x2=${tip.x} y2=${tip.y} /><polygon points=${headOf(tail, tip)} /></g>
      <g class="core"><line x1=${tail.x} y1=${tail.y} x2=${tip.x} y2=${tip.y} /><polygon points=${headOf(tail, tip)} /></g>`
  }
    <circle cx=${tail.x} cy=${tail.y} r="13" /><text x=${tail.x} y=${tail.y + 6}>${number}</text></g>`;
}

/**
 * @param {{marks: any[], arrow?: {from: string[], to: string[] | null} | null, spot: (at: Point) => Point}} props
 */
export function Arrows({ marks, arrow, spot }) {
  const standing = marks.filter(({ number }) => number);
  const drawn = arrow ? [...standing, { ...arrow, number: standing.length + 1 }] : standing;
  return html`<svg class="arrows" aria-hidden="true"><g class="middle">${drawn.map(
    (one) =>
      html`<${Arrow} key=${one.id ?? 'now'} number=${one.number} tail=${spot(pointOf(one.from))} tip=${one.to && spot(pointOf(one.to))} />`,
  )}</g></svg>`;
}
