/** The ends of a ring in its bore, the gap between them to scale, what is to be filed, what is usual. */
import { convert } from '../../trade/units.js';
import { html } from '../frame/index.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const HIGH = 196;
const END = 62;
const RING = { y: 54, high: 54 };
const USUAL = { y: 128, high: 26 };

/** @param {any} told @param {string} name */
const lineOf = (told, name) => told.lines.find((/** @type {any} */ each) => each.name === name);

/** Everything that is drawn, in the unit of the gap. @param {any} told */
function sizesOf(told) {
  const gap = lineOf(told, 'gap');
  const wanted = told.given['wanted-gap'];
  return {
    gap,
    filed: wanted ? Math.max(gap.value, convert(Number(wanted.value), wanted.unit, gap.unit)) : 0,
    filing: lineOf(told, 'to-file'),
    usual: lineOf(told, 'usual'),
  };
}

/** @param {{told: any}} props */
export function RingGapDrawing({ told }) {
  const { gap, filed, filing, usual } = sizesOf(told);
  const scale = (WIDE - 2 * END) / Math.max(gap.value, filed, usual.high);
  const x = (/** @type {number} */ size) => END + size * scale;
  const [left, right] = [x(0), x(gap.value)];
  const middle = RING.y + RING.high / 2;
  const off = filing?.value > 0 && x(filed) - right;
  const figure = Math.min(WIDE - END, Math.max(END, (left + right) / 2));
  return html`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${saysOf(gap, filing)}>
    <defs><pattern id="wd-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(38)"><path d="M0 0V7" /></pattern></defs>
    <rect class="wd-grip" x="0" y=${RING.y - 14} width=${WIDE} height="10" />
    <path class="wd-bar" d=${`M0 ${RING.y}H${left}V${RING.y + RING.high}H0`} />
    <path class="wd-bar" d=${`M${WIDE} ${RING.y}H${right}V${RING.y + RING.high}H${WIDE}`} />
    ${off && html`<rect class="wd-guard" x=${right} y=${RING.y} width=${off} height=${RING.high} /><path class="wd-limit" stroke-dasharray="6 5" d=${`M${x(filed)} ${RING.y - 4}v${RING.high + 8}`} />`}
    <path class="measure" d=${`M${left} ${middle}H${right}M${left + 7} ${middle - 5}L${left} ${middle}L${left + 7} ${middle + 5}M${right - 7} ${middle - 5}L${right} ${middle}L${right - 7} ${middle + 5}`} />
    <text class="fig" x=${figure} y="26">${local(gap.shown)} ${gap.unit}</text>
    <rect class="wd-window" x=${x(usual.low)} y=${USUAL.y} width=${x(usual.high) - x(usual.low)} height=${USUAL.high} />
    <path class="wd-limit" d=${`M${x(usual.low)} ${USUAL.y - 4}v${USUAL.high + 8}M${x(usual.high)} ${USUAL.y - 4}v${USUAL.high + 8}`} />
    <path class="measure" d=${`M${left} ${USUAL.y + USUAL.high / 2}H${x(usual.low)}M${left} ${USUAL.y + 4}v18`} />
    <text class="fig" x=${(x(usual.low) + x(usual.high)) / 2} y=${USUAL.y + USUAL.high + 28}>${local(usual.shown)}</text></svg>`;
}

/** @param {any} gap @param {any} filing */
function saysOf(gap, filing) {
  const drawn = t('work.ring-gap.drawn', { gap: `${gap.shown} ${gap.unit}` });
  if (!filing?.value) return drawn;
  return `${drawn} ${t('work.ring-gap.drawn.file', { file: `${filing.shown} ${filing.unit}` })}`;
}
