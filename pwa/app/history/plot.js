/** Readings over time as a small plot: limits as lines, what lies outside by its shape. */
import { day } from '../dates.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';
import { figure, measureSays } from './says.js';

const WIDE = 272;
const TALL = 172;
const TOP = 26;
const FLOOR = 138;
const RIGHT = 14;
const SIGN = 9;
/** Two numbers at the axis stand no nearer than this. */
const LEAST_GAP = 19;
/** Bars of more points than this only hide each other. */
const MOST_BARS = 40;
const LEAST_BAR = 6;

/** @typedef {{x: number, y: number, bar: number, verdict: string | null, struck: boolean}} Mark */

/** One measure with its sentence. @param {{measure: any, many: boolean}} props */
export function Measured({ measure, many }) {
  const { name, unit, points } = measure;
  const days = { from: day(points[0].made), to: day(points.at(-1).made) };
  const says = t(days.from === days.to ? 'history.plot.day' : 'history.plot', {
    n: points.length,
    name: name ?? '',
    ...days,
  });
  const shown = drawn(measure);
  return html`<figure class="sheet over-time"><h3>${name}</h3>
    <svg viewBox=${`0 0 ${WIDE} ${TALL}`} role="img" aria-label=${says}>
      <path class="ot-axis" d=${`M${shown.left} ${TOP - 12}V${FLOOR}H${WIDE}`} />
      <text class="fig ot-unit" x=${shown.left - 6} y="15">${unit ?? ''}</text>
      <path class="ot-limit" d=${shown.limits.map((at) => `M${shown.left} ${at}H${WIDE}`).join('')} />
      ${shown.numbers.map(({ y, says: number }) => html`<text key=${number} class="fig ot-number" x=${shown.left - 6} y=${y + 6}>${number}</text>`)}
      <${Marks} marks=${shown.marks} />
      <${Days} ...${days} left=${shown.left} /></svg>
    <${Legend} marks=${shown.marks} limits=${shown.limits} /><figcaption>${measureSays(measure, many)}</figcaption></figure>`;
}

/** @param {{from: string, to: string, left: number}} props */
function Days({ from, to, left }) {
  if (from === to)
    return html`<text class="ot-day middle" x=${(left + WIDE) / 2} y=${TALL - 10}>${from}</text>`;
  return html`<text class="ot-day" x=${left} y=${TALL - 10}>${from}</text><text class="ot-day end" x=${WIDE} y=${TALL - 10}>${to}</text>`;
}

/** Where everything of a measure stands in the drawing. @param {any} measure */
function drawn(measure) {
  const { points, decimals } = measure;
  const limits = [measure.least, measure.most].filter(Boolean).map(Number);
  // A slip that was struck out does not press the others flat: it stands at the edge.
  const open = points.filter((/** @type {any} */ point) => !point.struck);
  const sizes = (open.length ? open : points).map((/** @type {any} */ point) => point.size);
  const all = [...sizes, ...limits];
  const low = all.reduce((one, other) => Math.min(one, other));
  const high = all.reduce((one, other) => Math.max(one, other));
  const scale = (FLOOR - TOP - 24) / (high - low || 1);
  const y = (/** @type {number} */ size) =>
    high === low
      ? (FLOOR + TOP) / 2
      : FLOOR - 12 - (Math.min(high, Math.max(low, size)) - low) * scale;
  const numbers = numbersOf([...limits, high, low], y, decimals);
  const left = 12 + SIGN * Math.max(2, ...numbers.map(({ says }) => says.length));
  return {
    left,
    numbers,
    limits: limits.map(y),
    marks: marksOf(points, left, y, high === low ? 0 : scale),
  };
}

/** Numbers at the axis: limits first, then the ends, none over another. @param {number[]} sizes @param {(size: number) => number} y @param {number} decimals */
function numbersOf(sizes, y, decimals) {
  /** @type {{y: number, says: string}[]} */
  const shown = [];
  for (const size of sizes) {
    const at = y(size);
    if (shown.some((other) => Math.abs(other.y - at) < LEAST_GAP)) continue;
    shown.push({ y: at, says: figure(size, decimals) });
  }
  return shown;
}

/**
 * Each inspection has its place in time, whatever lies between two of them.
 * @param {any[]} points @param {number} left @param {(size: number) => number} y @param {number} scale
 * @returns {Mark[]}
 */
function marksOf(points, left, y, scale) {
  const turns = new Map([...new Set(points.map(({ entry }) => entry))].map((id, at) => [id, at]));
  const [first, last] = [left + RIGHT, WIDE - RIGHT];
  const step = turns.size > 1 ? (last - first) / (turns.size - 1) : 0;
  const from = turns.size > 1 ? first : (first + last) / 2;
  return points.map(({ entry, size, uncertainty, verdict, struck }) => ({
    x: from + (turns.get(entry) ?? 0) * step,
    y: y(size),
    bar: uncertainty * scale,
    verdict,
    struck,
  }));
}

/** @param {Mark} mark */
const shapeOf = ({ verdict, struck }) => {
  if (struck) return 'struck';
  return verdict === 'outside' ? 'outside' : verdict === 'too-close' ? 'close' : 'inside';
};

const fixed = (/** @type {number} */ number) => number.toFixed(1);
const dot = (/** @type {Mark} */ { x, y }) => `M${fixed(x)} ${fixed(y)}h.01`;
const ring = (/** @type {Mark} */ { x, y }) =>
  `M${fixed(x - 6)} ${fixed(y)}a6 6 0 1 0 12 0a6 6 0 1 0 -12 0`;
const cross = (/** @type {Mark} */ { x, y }) =>
  `M${fixed(x - 6)} ${fixed(y - 6)}l12 12m0 -12l-12 12`;
const upright = (/** @type {Mark} */ { x, y, bar }) =>
  `M${fixed(x)} ${fixed(y - bar)}v${fixed(2 * bar)}m-4 0h8m-8 ${fixed(-2 * bar)}h8`;

/** @type {Record<string, (mark: Mark) => string>} */
const PATHS = { inside: dot, close: ring, outside: cross, struck: ring };
const SHAPES = ['inside', 'close', 'outside', 'struck'];

/** @param {Mark[]} marks */
const bars = (marks) =>
  marks.length <= MOST_BARS ? marks.filter(({ bar, struck }) => bar >= LEAST_BAR && !struck) : [];

/** All marks of one shape are one path: two thousand are drawn as fast as two. @param {{marks: Mark[]}} props */
const Marks = ({ marks }) =>
  html`<path class="ot-bar" d=${bars(marks).map(upright).join('')} />${SHAPES.map(
    (shape) =>
      html`<path key=${shape} class=${`ot-${shape}`} d=${marks
        .filter((mark) => shapeOf(mark) === shape)
        .map((mark) => PATHS[shape]?.(mark))
        .join('')} />`,
  )}`;

/** @type {Record<string, string>} */
const WORDS = {
  close: 'history.lies.too-close',
  outside: 'history.lies.outside',
  struck: 'history.struck',
};

/** What the shapes mean that are there; a plain dot needs no word. @param {{marks: Mark[], limits: number[]}} props */
function Legend({ marks, limits }) {
  const there = SHAPES.filter((shape) => WORDS[shape] && marks.some((m) => shapeOf(m) === shape));
  const bar = bars(marks).length > 0;
  if (!there.length && !bar && !limits.length) return null;
  const middle = { x: 16, y: 16, bar: 9, verdict: null, struck: false };
  return html`<ul class="set-legend">${limits.length > 0 && html`<li><svg viewBox="0 0 32 32" aria-hidden="true"><path class="ot-limit" d="M0 16H32" /></svg>${t('history.mark.limit', { n: limits.length })}</li>`}${there.map(
    (shape) =>
      html`<li key=${shape}><svg viewBox="0 0 32 32" aria-hidden="true"><path class=${`ot-${shape}`} d=${PATHS[shape]?.(middle)} /></svg>${t(String(WORDS[shape]))}</li>`,
  )}${bar && html`<li><svg viewBox="0 0 32 32" aria-hidden="true"><path class="ot-bar" d=${upright(middle)} /></svg>${t('history.mark.bar')}</li>`}</ul>`;
}
