/** The pieces of a set as dots by their size: the chosen ones full, the spares hollow. */
import { convert } from '../../trade/units.js';
import { html } from '../frame/index.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const EDGE = 22;
const STEP = 19;
const BASE = 40;

/** Dots that would lie on each other are stacked. @param {number[]} places in px, from small to large */
function stacked(places) {
  /** @type {number[]} */
  const ends = [];
  return places.map((x) => {
    const free = ends.findIndex((end) => x - end >= STEP);
    const row = free === -1 ? ends.length : free;
    ends[row] = x;
    return { x, row };
  });
}

/** @param {{told: any}} props */
export function SetDrawing({ told }) {
  const unit = told.given.size[0].unit;
  const sizes = told.given.size.map((/** @type {any} */ each) =>
    convert(Number(each.value), each.unit, unit),
  );
  const low = Math.min(...sizes);
  const span = Math.max(...sizes) - low || 1;
  const chosen = new Set(told.lines[0].value);
  const order = sizes
    .map((/** @type {number} */ size, /** @type {number} */ at) => ({ size, n: at + 1 }))
    .sort((/** @type {any} */ one, /** @type {any} */ other) => one.size - other.size);
  const dots = stacked(
    order.map((/** @type {any} */ each) => EDGE + ((each.size - low) / span) * (WIDE - 2 * EDGE)),
  );
  const rows = Math.max(...dots.map(({ row }) => row)) + 1;
  const high = rows * STEP + BASE + 16;
  const floor = high - BASE;
  const spread = told.lines.find((/** @type {any} */ each) => each.name === 'spread');
  const inside = dots.filter((_, at) => chosen.has(order[at].n)).map(({ x }) => x);
  const [from, to] = [Math.min(...inside), Math.max(...inside)];
  const says = t('work.set.drawn', { n: chosen.size, spread: `${spread.shown} ${spread.unit}` });
  return html`<svg viewBox=${`0 0 ${WIDE} ${high}`} role="img" aria-label=${says}>
    <path class="measure" d=${`M0 ${floor}H${WIDE}M${from} ${floor + 10}v-6M${to} ${floor + 10}v-6M${from} ${floor + 7}H${to}`} />
    ${dots.map(({ x, row }, at) => html`<circle key=${order[at].n} class=${chosen.has(order[at].n) ? 'wd-in' : 'wd-out'} cx=${x} cy=${floor - 12 - row * STEP} r="7.500" />`)}
    <text class="fig" x=${Math.min(WIDE - 50, Math.max(50, (from + to) / 2))} y=${floor + 32}>${local(spread.shown)} ${spread.unit}</text></svg>`;
}
