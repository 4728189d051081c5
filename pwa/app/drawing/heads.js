/** One fastener head in its state. All are hexagons, told apart by outline before colour. */

import { html } from '../frame/html.js';

/**
 * @param {number} x
 * @param {number} y
 * @param {number} r
 */
export function hexagon(x, y, r) {
  const step = Math.PI / 3;
  return Array.from({ length: 6 }, (_, i) => {
    const px = (x + r * Math.cos(i * step)).toFixed(1);
    return `${px},${(y + r * Math.sin(i * step)).toFixed(1)}`;
  }).join(' ');
}

/**
 * @typedef {{x: number, y: number, number: number, index?: number}} HeadProps
 */

/** @param {HeadProps} props */
const Todo = ({ x, y, number }) => html`<polygon class="todo-h" points=${hexagon(x, y, 17.8)} />
  <text class="todo-n" x=${x} y=${y + 7.5}>${number}</text>`;

/** @param {HeadProps} props */
const Done = ({ x, y, number, index = 0 }) => html`
  <polygon class="done-h" points=${hexagon(x, y, 20.8)} />
  <rect class="paint-edge" style=${`--i:${index}`} x="-3.75" y="-11.5" width="7.5" height="23" rx="1.6"
    transform=${`translate(${x + 16.5} ${y - 14.5}) rotate(38)`} />
  <text class="done-n" x=${x - 2} y=${y + 8.5}>${number}</text>`;

/** @param {HeadProps} props */
const Out = ({ x, y, number }) => html`<polygon class="out-h" points=${hexagon(x, y, 17.8)} />
  <text class="todo-n" x=${x} y=${y + 7.5}>${number}</text>
  <path class="out-x" d=${`M${x + 9} ${y - 20}l13 13M${x + 22} ${y - 20}l-13 13`} />`;

/** @param {HeadProps} props */
const Void = ({ x, y, number }) => html`<polygon class="out-h" points=${hexagon(x, y, 17.8)} />
  <text class="todo-n" x=${x} y=${y + 7.5}>${number}</text>`;

/** @param {HeadProps} props */
const Next = ({ x, y, number }) => html`<polygon class="next-o" points=${hexagon(x, y, 27.2)} />
  <polygon class="next-h" points=${hexagon(x, y, 21.2)} />
  <text class="next-n" x=${x} y=${y + 10}>${number}</text>`;

/** @param {{x: number, y: number}} props */
const Triangle = ({
  x,
  y,
}) => html`<g class="flag-mark" transform=${`translate(${x - 20} ${y - 20})`}>
  <path class="flag-h" d="M0 -9.500L10 8H-10z" />
  <path class="flag-i" d="M0 -3.500v5M0 5v.1" /></g>`;

/** @param {HeadProps} props */
const Flagged = (props) => html`<${Done} ...${props} /><${Triangle} ...${props} />`;

/** @param {HeadProps} props */
const Doubt = ({ x, y, number }) => html`<polygon class="done-h" points=${hexagon(x, y, 20.8)} />
  <text class="done-n" x=${x} y=${y + 8.5}>${number}</text><${Triangle} x=${x} y=${y} />`;

/** @type {Record<string, (props: any) => any>} */
const HEADS = {
  todo: Todo,
  next: Next,
  done: Done,
  out: Out,
  flagged: Flagged,
  doubt: Doubt,
  void: Void,
};

/**
 * @param {HeadProps & {mark: string}} props
 */
export function Head({ mark, ...props }) {
  return html`<${HEADS[mark] ?? Todo} ...${props} />`;
}
