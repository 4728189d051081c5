/** Every piece on one measure or two: chosen solid, spares hollow with their rank, left out crossed. */
import { hexagon } from '../drawing/heads.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';
import { decimalsOf, figure } from './says.js';

const WIDE = 360;
const EDGE = 30;
const STEP = 30;
const SIZE = 13;
const TALL = 300;
const FOOT = 44;

/** Where a size lies between two edges. @param {number[]} sizes @param {number} from @param {number} to */
function scale(sizes, from, to) {
  const low = Math.min(...sizes);
  const span = Math.max(...sizes) - low || 1;
  return (/** @type {number} */ size) => from + ((size - low) / span) * (to - from);
}

/** Marks that would lie on each other are stacked. @param {number[]} places from small to large */
function rows(places) {
  /** @type {number[]} */
  const ends = [];
  return places.map((x) => {
    const free = ends.findIndex((end) => x - end >= STEP);
    const row = free === -1 ? ends.length : free;
    ends[row] = x;
    return row;
  });
}

const IN = ['in', 'pinned'];
const OUT = ['out', 'outside'];

/** @typedef {{piece: any, x: number, y: number}} Spot */
/** @type {Record<string, (spot: Spot) => string>} */
const PATHS = {
  head: ({ x, y }) => `M${hexagon(x, y, SIZE)}Z`,
  cross: ({ x, y }) => `M${x - 5} ${y - 5}l10 10M${x + 5} ${y - 5}l-10 10`,
  pin: ({ x, y }) => `M${x - 4} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0`,
};

/** @param {Spot} spot */
const sortOf = ({ piece: { state } }) =>
  IN.includes(state) ? 'in' : OUT.includes(state) ? 'out' : 'spare';

/** All marks of one shape are one path: hundreds are drawn as fast as two. @param {{spots: Spot[]}} props */
function Marks({ spots }) {
  const of = (/** @type {string} */ word) => spots.filter((spot) => sortOf(spot) === word);
  const draw = (
    /** @type {string} */ name,
    /** @type {string} */ shape,
    /** @type {Spot[]} */ some,
  ) =>
    some.length > 0 &&
    html`<path class=${name} d=${some.map((spot) => PATHS[shape]?.(spot)).join('')} />`;
  const ranked = of('spare').filter(({ piece }) => piece.rank && piece.rank < 10);
  return html`${draw('set-out', 'head', of('out'))}${draw('set-cross', 'cross', of('out'))}
    ${draw('set-spare', 'head', of('spare'))}${ranked.map(({ piece, x, y }) => html`<text key=${piece.rank} class="set-rank" x=${x} y=${y + 5.5}>${piece.rank}</text>`)}
    ${draw('set-in', 'head', of('in'))}${draw(
      'set-pin',
      'pin',
      spots.filter(({ piece }) => piece.state === 'pinned'),
    )}`;
}

/** @param {{pieces: any[], asked: any}} props */
export function Plot({ pieces, asked }) {
  const { measures } = asked;
  const shown = pieces.filter(({ state }) => state !== 'missing');
  if (!shown.length || !measures.length) return null;
  return measures.length === 1
    ? html`<${Strip} shown=${shown} measure=${measures[0]} asked=${asked} />`
    : html`<${Scatter} shown=${shown} measures=${measures} />`;
}

/** @param {any[]} shown @param {number} at */
const sizesOf = (shown, at) => shown.map(({ sizes }) => sizes[at].size);

/** @param {any} props */
function Strip({ shown, measure, asked }) {
  const { at, unit, name } = measure;
  const order = [...shown].sort((one, other) => one.sizes[at].size - other.sizes[at].size);
  const place = scale(sizesOf(shown, at), EDGE, WIDE - EDGE);
  const xs = order.map((piece) => place(piece.sizes[at].size));
  const stacked = rows(xs);
  const floor = (Math.max(...stacked) + 1) * STEP + 8;
  const inside = order.filter(({ state }) => IN.includes(state)).map(({ sizes }) => sizes[at].size);
  const decimals = decimalsOf(asked.measured, at);
  const [low, high] = inside.length ? [inside[0], inside[inside.length - 1]] : [null, null];
  const ends = {
    low: low === null ? '' : figure(low, decimals),
    high: high === null ? '' : figure(high, decimals),
  };
  const says = t('set.plot.one', {
    n: shown.length,
    measure: name ?? '',
    unit: unit ?? '',
    ...ends,
  });
  return html`<svg viewBox=${`0 0 ${WIDE} ${floor + FOOT}`} role="img" aria-label=${says}>
    ${low !== null && html`<${Window} from=${place(low) - SIZE - 3} to=${place(high) + SIZE + 3} floor=${floor} />`}
    <path class="set-line" d=${`M0 ${floor}H${WIDE}`} />
    <${Marks} spots=${order.map((piece, i) => ({ piece, x: xs[i], y: floor - 18 - Number(stacked[i]) * STEP }))} />
    ${low !== null && html`<text class="fig" x=${WIDE / 2} y=${floor + 32}>${`${ends.low} – ${ends.high} ${unit ?? ''}`}</text>`}</svg>`;
}

/** @param {any} props */
const Window = ({ from, to, floor }) =>
  html`<rect class="set-window" x=${from} y="2" width=${to - from} height=${floor - 2} />`;

/** @param {{shown: any[], measures: any[]}} props */
function Scatter({ shown, measures }) {
  const [across, up] = measures;
  const x = scale(sizesOf(shown, across.at), EDGE, WIDE - EDGE);
  const y = scale(sizesOf(shown, up.at), TALL - EDGE, EDGE);
  const points = shown.map((/** @type {any} */ piece) => ({
    piece,
    x: x(piece.sizes[across.at].size),
    y: y(piece.sizes[up.at].size),
  }));
  const inside = points.filter((/** @type {Spot} */ { piece }) => IN.includes(piece.state));
  const says = t('set.plot.two', { n: shown.length, one: across.name ?? '', other: up.name ?? '' });
  const [left, top] = [Math.min(...inside.map((p) => p.x)), Math.min(...inside.map((p) => p.y))];
  const [right, low] = [Math.max(...inside.map((p) => p.x)), Math.max(...inside.map((p) => p.y))];
  const pad = SIZE + 3;
  return html`<svg viewBox=${`0 0 ${WIDE} ${TALL + FOOT + 10}`} role="img" aria-label=${says}>
    <path class="set-line" d=${`M2 0V${TALL}H${WIDE}`} />
    ${inside.length > 0 && html`<rect class="set-window" x=${left - pad} y=${top - pad} width=${right - left + 2 * pad} height=${low - top + 2 * pad} />`}
    <${Marks} spots=${points} />
    <${Ends} sizes=${sizesOf(shown, across.at)} decimals=${decimalsOf(shown, across.at)} places=${[
      [EDGE, TALL + 22],
      [WIDE - EDGE, TALL + 22],
    ]} />
    <${Ends} sizes=${sizesOf(shown, up.at)} decimals=${decimalsOf(shown, up.at)} places=${[
      [EDGE, TALL - 5],
      [EDGE, 13],
    ]} />
    <text class="set-axis" x=${WIDE / 2} y=${TALL + 46}>${`→ ${axisSays(across)} · ↑ ${axisSays(up)}`}</text></svg>`;
}

/** What is measured along an axis, and in which unit. @param {any} measure */
const axisSays = ({ name, unit }) => [name, unit].filter(Boolean).join(', ');

/** The least and the most of an axis. @param {{sizes: number[], decimals: number, places: number[][]}} props */
const Ends = ({ sizes, decimals, places }) =>
  html`${[Math.min(...sizes), Math.max(...sizes)].map(
    (size, at) =>
      html`<text key=${at} class="set-end" x=${places[at]?.[0]} y=${places[at]?.[1]}>${figure(size, decimals)}</text>`,
  )}`;

/** What the marks mean, in words. */
export const Legend = () =>
  html`<ul class="set-legend">${['in', 'spare', 'out'].map(
    (word) =>
      html`<li key=${word}><svg viewBox="0 0 32 32" aria-hidden="true"><${Marks} spots=${[{ piece: { state: word, rank: 1 }, x: 16, y: 16 }]} /></svg>${t(`set.legend.${word}`)}</li>`,
  )}</ul>`;
