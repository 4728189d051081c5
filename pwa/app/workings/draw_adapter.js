/** Wrench and adapter from above, to scale and at their angle, with the lever the hand has. */
import { convert } from '../../trade/units.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const EDGE = 26;

/** @param {any} typed @param {string} unit */
const size = (typed, unit) => convert(Number(typed.value), typed.unit, unit);

/**
 * Where grip, square drive and bolt are, in millimetres; the wrench lies along the line.
 * @param {any} given
 */
function placesOf(given) {
  const wrench = size(given['wrench-length'], 'mm');
  const adapter = size(given['adapter-length'], 'mm');
  const angle = (size(given.angle, '°') * Math.PI) / 180;
  const bolt = { x: wrench + adapter * Math.cos(angle), y: adapter * Math.sin(angle) };
  return { grip: { x: 0, y: 0 }, drive: { x: wrench, y: 0 }, bolt };
}

/** @param {{told: any}} props */
export function AdapterDrawing({ told }) {
  const { drive, bolt } = placesOf(told.given);
  const right = Math.max(drive.x, bolt.x, 1);
  const scale = (WIDE - 2 * EDGE) / right;
  const up = Math.max(0, bolt.y) * scale;
  const down = Math.max(0, -bolt.y) * scale;
  const line = EDGE + up + 16;
  const high = line + down + 74;
  const at = (/** @type {{x: number, y: number}} */ { x, y }) => ({
    x: EDGE + x * scale,
    y: line - y * scale,
  });
  const [d, b] = [at(drive), at(bolt)];
  const lever = told.lines.find((/** @type {any} */ each) => each.name === 'lever');
  const foot = line + down + 44;
  const says = t('work.adapter.drawn', {
    angle: told.given.angle.value,
    lever: `${lever.shown} ${lever.unit}`,
  });
  return html`<svg viewBox=${`0 0 ${WIDE} ${high}`} role="img" aria-label=${says}>
    <rect class="wd-bar" x=${EDGE} y=${line - 7} width=${Math.max(4, d.x - EDGE)} height="14" rx="7" />
    <rect class="wd-grip" x=${EDGE - 12} y=${line - 11} width="56" height="22" rx="11" />
    <path class="wd-arm" d=${`M${d.x} ${d.y}L${b.x} ${b.y}`} />
    <rect class="wd-drive" x=${d.x - 8} y=${d.y - 8} width="16" height="16" rx="2" />
    <polygon class="wd-head" points=${hexagon(b.x, b.y, 15)} />
    <path class="measure" d=${`M${EDGE} ${line + 16}V${foot + 8}M${b.x} ${b.y + 20}V${foot + 8}M${EDGE} ${foot}H${b.x}`} />
    <path class="measure" d=${`M${EDGE + 8} ${foot - 5}L${EDGE} ${foot}L${EDGE + 8} ${foot + 5}M${b.x - 8} ${foot - 5}L${b.x} ${foot}L${b.x - 8} ${foot + 5}`} />
    <text class="fig" x=${(EDGE + b.x) / 2} y=${foot + 22}>${lever.shown} ${lever.unit}</text></svg>`;
}

/** @param {number} x @param {number} y @param {number} r */
const hexagon = (x, y, r) =>
  [0, 60, 120, 180, 240, 300]
    .map((turn) => (turn * Math.PI) / 180)
    .map((turn) => `${(x + r * Math.cos(turn)).toFixed(1)},${(y + r * Math.sin(turn)).toFixed(1)}`)
    .join(' ');
