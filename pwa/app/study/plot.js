/** Every reading as a mark, off the mean of its piece: what one person scatters, where two differ. */
import { hexagon } from '../drawing/heads.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';
import { figure } from './says.js';

const WIDE = 360;
const HIGH = 200;
const FOOT = 34;
const EDGE = 10;
const MOST_LABELS = 10;
const SIZE = 6.5;
const LEAST_SIZE = 4.6;
/** The limits are drawn where the picture would not shrink below a quarter for them. */
const ROOM = 4;

/** @param {number[]} list */
const mean = (list) => list.reduce((sum, one) => sum + one, 0) / list.length;

/** Each piece with what was read of it, off its mean. @param {any} study */
function offMeans({ rows }) {
  return rows.map((/** @type {any} */ { piece, people }) => {
    const read = people.map((/** @type {any[]} */ cells) =>
      cells.flatMap((cell) => cell?.size ?? []),
    );
    const all = read.flat();
    const middle = all.length ? mean(all) : 0;
    return {
      piece,
      people: read.map((/** @type {number[]} */ list) => list.map((one) => one - middle)),
    };
  });
}

/** A mark of its own for each person: solid, hollow, solid and hollow diamond. @param {{who: number, x: number, y: number, size?: number}} props */
export function Mark({ who, x, y, size = SIZE }) {
  const kind = who % 2 ? 'set-spare' : 'set-in';
  const wide = size + 1;
  const diamond = `${x},${y - wide} ${x + wide},${y} ${x},${y + wide} ${x - wide},${y}`;
  return html`<polygon class=${kind} points=${who % 4 > 1 ? diamond : hexagon(x, y, size)} />`;
}

/** @param {{study: any}} props */
export function Plot({ study }) {
  const pieces = offMeans(study);
  const all = pieces.flatMap((/** @type {any} */ one) => one.people.flat());
  const most = Math.max(...all.map(Math.abs)) || 1;
  const half = (study.figures?.width ?? 0) / 2;
  const drawn = half > 0 && half <= most * ROOM;
  const reach = drawn ? Math.max(most, half) : most;
  const y = (/** @type {number} */ off) => HIGH / 2 - (off / reach) * (HIGH / 2 - SIZE - 4);
  const step = (WIDE - 2 * EDGE) / pieces.length;
  const each = Math.ceil(pieces.length / MOST_LABELS);
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const says = t('study.plot.says', {
    n: all.length,
    pieces: pieces.length,
    unit: study.unit,
    low: figure(low),
    high: figure(high),
  });
  return html`<figure class="sheet set-plot"><figcaption><b>${t('study.plot')}</b></figcaption>
    <svg viewBox=${`0 0 ${WIDE} ${HIGH + FOOT}`} role="img" aria-label=${says}>
      <path class="set-line" d=${`M0 ${y(0)}H${WIDE}`} />
      ${drawn && html`<path class="set-window" d=${`M0 ${y(half)}H${WIDE}M0 ${y(-half)}H${WIDE}`} />`}
      ${pieces.map((/** @type {any} */ one, /** @type {number} */ at) => html`<${Piece} key=${one.piece} ...${{ one, y, step, from: EDGE + at * step, named: at % each === 0 }} />`)}</svg>
    <p>${t('study.plot.order')}</p>
    <ul class="set-legend">${study.people.map((/** @type {string} */ name, /** @type {number} */ who) => html`<li key=${name}><svg viewBox="0 0 32 32" aria-hidden="true"><g transform="translate(16 16) scale(1.7)"><${Mark} who=${who} x=${0} y=${0} /></g></svg>${name}</li>`)}</ul>
    <p class="soft">${limitsNote(half, drawn, reach)}</p></figure>`;
}

/** @param {number} half @param {boolean} drawn @param {number} reach */
function limitsNote(half, drawn, reach) {
  if (!half) return '';
  return drawn ? t('study.plot.limits') : t('study.plot.wide', { times: figure(half / reach) });
}

/** Like readings stand side by side. @param {number} at @param {number} n @param {number} lane */
const fan = (at, n, lane) => (n < 2 ? 0 : (at / (n - 1) - 0.5) * lane * 0.55);

/** @param {any} props */
function Piece({ one, y, step, from, named }) {
  const lane = step / (one.people.length + 1);
  const size = Math.min(SIZE, Math.max(LEAST_SIZE, lane * 0.5));
  return html`<g>${one.people.map((/** @type {number[]} */ list, /** @type {number} */ who) => {
    const x = from + lane * (who + 1);
    const bar = list.length
      ? html`<path class="set-line" d=${`M${x - lane * 0.42} ${y(mean(list))}h${lane * 0.84}`} />`
      : null;
    return html`<g key=${who}>${bar}${list.map((off, at) => html`<${Mark} key=${at} who=${who} x=${x + fan(at, list.length, lane)} y=${y(off)} size=${size} />`)}</g>`;
  })}
    ${named && html`<text class="fig" x=${from + step / 2} y=${HIGH + 26}>${one.piece}</text>`}</g>`;
}
