/** The labels that were seen, as corners drawn on the camera's picture. */
import { html } from './html.js';

/** How much of each side a corner's arms take. */
const ARM = 0.24;

/** @param {number[][]} box @param {number} at */
function corner(box, at) {
  const [x, y] = /** @type {[number, number]} */ (box[at]);
  const arm = (/** @type {number[]} */ [u = 0, v = 0]) =>
    `${x + (u - x) * ARM} ${y + (v - y) * ARM}`;
  const before = /** @type {number[]} */ (box[(at + box.length - 1) % box.length]);
  const after = /** @type {number[]} */ (box[(at + 1) % box.length]);
  return `M${arm(before)}L${x} ${y}L${arm(after)}`;
}

/** @param {number[][]} box */
function middle(box) {
  const sum = (/** @type {number} */ axis) =>
    box.reduce((total, point) => total + (point[axis] ?? 0), 0) / box.length;
  return { x: sum(0), y: sum(1) };
}

/**
 * Corners around each label; several are numbered as their keys are.
 * @param {{seen: {code: string, box: any[]}[], video: {current: HTMLVideoElement | null}}} props
 */
export function Outlines({ seen, video }) {
  const { videoWidth: wide = 0, videoHeight: high = 0 } = video.current ?? {};
  if (!wide || seen.length === 0) return null;
  const fit = matchMedia('(min-width: 900px)').matches ? 'xMidYMid meet' : 'xMidYMid slice';
  return html`<svg viewBox=${`0 0 ${wide} ${high}`} preserveAspectRatio=${fit}>${seen.map(
    ({ code, box }, n) => {
      const points = box.map((point) => (Array.isArray(point) ? point : [point.x, point.y]));
      const { x, y } = middle(points);
      return html`<g key=${`${code}${n}`}><path class=${n === 0 ? 'outline' : 'outline other'} stroke-width="6" vector-effect="non-scaling-stroke" d=${points.map((_, at) => corner(points, at)).join('')} />
      ${seen.length > 1 && html`<text x=${x} y=${y} font-size=${high / 9} stroke-width=${high / 60} dominant-baseline="middle">${n + 1}</text>`}</g>`;
    },
  )}</svg>`;
}
