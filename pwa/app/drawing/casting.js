/** The outline of what is clamped: plain for most joints, with bores for a cylinder head, a ring for a circle. */

import { html } from '../frame/html.js';
import { extent, HEIGHT, ROUND, WIDTH } from './place.js';

/**
 * @param {{pattern: string, casting?: string | null, heads: import('./place.js').Spot[],
 *   area: import('./place.js').Box, whole: boolean}} props
 */
export function Casting({ pattern, casting, heads, area, whole }) {
  if (whole && pattern === 'circle') return html`<${Ring} heads=${heads} />`;
  if (whole && pattern === 'rows' && rowsOf(heads).length === 2) {
    return html`<path class="cast" d=${scalloped(heads, area)} />
      ${casting === 'head' ? html`<${Bores} heads=${heads} />` : null}`;
  }
  const box = whole ? hug(heads, area) : area;
  return html`<rect class="cast" x=${box.x} y=${box.y} width=${box.w} height=${box.h} rx="22" />`;
}

/**
 * @param {import('./place.js').Spot[]} heads
 * @param {import('./place.js').Box} area
 */
function hug(heads, area) {
  const box = extent(heads);
  const y = Math.max(area.y, box.y - 34);
  const h = Math.min(area.y + area.h, box.y + box.h + 34) - y;
  const x = Math.max(area.x, box.x - 34);
  return { x, y, w: Math.min(area.x + area.w, box.x + box.w + 34) - x, h };
}

/** @param {import('./place.js').Spot[]} heads */
function rowsOf(heads) {
  return [...new Set(heads.map((head) => head.y))].sort((a, b) => a - b);
}

/**
 * The upper and the lower row of two.
 * @param {import('./place.js').Spot[]} heads
 * @returns {[number, number]}
 */
function twoRows(heads) {
  const [top = 0, bottom = 0] = rowsOf(heads);
  return [top, bottom];
}

/**
 * Middles between neighbouring columns of one row.
 * @param {import('./place.js').Spot[]} heads
 * @param {number} row
 */
function between(heads, row) {
  const xs = heads.filter((head) => head.y === row).map((head) => head.x);
  const sorted = [...new Set(xs)].sort((a, b) => a - b);
  return sorted.slice(1).map((x, i) => (x + (sorted[i] ?? x)) / 2);
}

/**
 * @param {import('./place.js').Spot[]} heads
 * @param {import('./place.js').Box} area
 */
function scalloped(heads, area) {
  const [top, bottom] = twoRows(heads);
  const right = area.x + area.w;
  const foot = area.y + area.h;
  const away = between(heads, top).map((x) => `H${x - 12}c6 0 6 7 12 7s6 -7 12 -7`);
  const back = between(heads, bottom)
    .reverse()
    .map((x) => `H${x + 12}c-6 0 -6 -7 -12 -7s-6 7 -12 7`);
  return (
    `M${area.x} ${area.y + 22}Q${area.x} ${area.y} ${area.x + 22} ${area.y}${away.join('')}` +
    `H${right - 22}Q${right} ${area.y} ${right} ${area.y + 22}V${foot - 22}` +
    `Q${right} ${foot} ${right - 22} ${foot}${back.join('')}` +
    `H${area.x + 22}Q${area.x} ${foot} ${area.x} ${foot - 22}Z`
  );
}

/** @param {{heads: import('./place.js').Spot[]}} props */
function Bores({ heads }) {
  const [top, bottom] = twoRows(heads);
  const y = (top + bottom) / 2;
  return between(heads, top).map(
    (x) => html`<circle class="bore" cx=${x} cy=${y} r="23" />
      <ellipse class="cast" cx=${x - 8} cy=${y} rx="8" ry="10.5" />
      <circle class="cast" cx=${x + 10} cy=${y} r="7.5" />
      <rect class="slot" x=${x - 7} y=${y - 38} width="14" height="6" rx="3" />
      <rect class="slot" x=${x - 7} y=${y + 32} width="14" height="6" rx="3" />`,
  );
}

/** @param {{heads: import('./place.js').Spot[]}} props */
function Ring({ heads }) {
  const { x, y, rx, ry } = ringOf(heads);
  const hole = ry > 44;
  return html`<ellipse class="cast" cx=${x} cy=${y} rx=${rx + 29} ry=${ry + 27} />
    ${hole && html`<ellipse class="bore" cx=${x} cy=${y} rx=${rx - 30} ry=${ry - 30} />`}`;
}

/** The circle through the heads, or the oval where they stand on one. @param {import('./place.js').Spot[]} heads */
function ringOf(heads) {
  const box = extent(heads);
  if (box.w > 1.4 * ROUND.h)
    return { x: WIDTH / 2, y: HEIGHT / 2, rx: ROUND.w / 2, ry: ROUND.h / 2 };
  const x = heads.reduce((sum, head) => sum + head.x, 0) / heads.length;
  const y = heads.reduce((sum, head) => sum + head.y, 0) / heads.length;
  const r = Math.max(...heads.map((head) => Math.hypot(head.x - x, head.y - y)));
  return { x, y, rx: r, ry: r };
}
