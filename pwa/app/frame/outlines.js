/** The labels that were seen, as corners drawn on the camera's picture. */
import { middle } from './camera.js';
import { html } from './html.js';

/** How much of each side a corner's arms take, and how far outside the symbol they stand. */
const ARM = 0.24;
const OUTSIDE = 1.3;

/** The box around the label, not around its symbol. @param {number[][]} box */
function around(box) {
  const [x, y] = middle(box);
  return box.map(([u = 0, v = 0]) => [x + (u - x) * OUTSIDE, y + (v - y) * OUTSIDE]);
}

/** @param {number[][]} box @param {number} at */
function corner(box, at) {
  const [x = 0, y = 0] = box[at] ?? [];
  const arm = (/** @type {number[]} */ [u = 0, v = 0] = []) =>
    `${x + (u - x) * ARM} ${y + (v - y) * ARM}`;
  return `M${arm(box[(at + box.length - 1) % box.length])}L${x} ${y}L${arm(box[(at + 1) % box.length])}`;
}

/** @param {{box: number[][], n: number, many: boolean, high: number}} props */
function Outline({ box, n, many, high }) {
  const [x, y] = middle(box);
  const path = around(box)
    .map((_, at, points) => corner(points, at))
    .join('');
  return html`<path class="outline rim" d=${path} vector-effect="non-scaling-stroke" /><path class=${n === 0 ? 'outline' : 'outline other'} d=${path} vector-effect="non-scaling-stroke" />
    ${many && html`<text x=${x} y=${y} font-size=${high / 8} stroke-width=${high / 50} dominant-baseline="central">${n + 1}</text>`}`;
}

/**
 * Corners around each label; several are numbered as their keys are.
 * @param {{seen: {code: string, box: number[][]}[], video: {current: HTMLVideoElement | null}}} props
 */
export function Outlines({ seen, video }) {
  const { videoWidth: wide = 0, videoHeight: high = 0 } = video.current ?? {};
  if (!wide || seen.length === 0) return null;
  const fit = matchMedia('(min-width: 900px)').matches ? 'xMidYMid meet' : 'xMidYMid slice';
  return html`<svg viewBox=${`0 0 ${wide} ${high}`} preserveAspectRatio=${fit}>${seen.map(
    ({ code, box }, n) =>
      html`<${Outline} key=${code} box=${box} n=${n} many=${seen.length > 1} high=${high} />`,
  )}</svg>`;
}
