/** A preload beside the proof load of its bolt: the band it may lie in, and where proof ends. */
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const HIGH = 118;
const EDGE = 20;
const PROOF = 100;

/** @param {{told: any}} props */
export function PreloadDrawing({ told }) {
  const line = told.lines.find((/** @type {any} */ each) => each.name === 'share-of-proof');
  if (!line) return null;
  const most = Math.max(PROOF * 1.25, line.high * 1.1);
  const x = (/** @type {number} */ share) => EDGE + (share / most) * (WIDE - 2 * EDGE);
  const [low, high] = line.between;
  const says = t('work.preload.drawn', { value: `${line.shown} %`, low, high });
  return html`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${says}>
    <defs><pattern id="wd-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(38)"><path d="M0 0V7" /></pattern></defs>
    <rect class="wd-window" x=${EDGE} y="38" width=${x(PROOF) - EDGE} height="40" />
    <rect class="wd-guard" x=${x(PROOF)} y="38" width=${WIDE - EDGE - x(PROOF)} height="40" />
    <path class="wd-limit" d=${`M${x(PROOF)} 30V86`} />
    <path class="wd-sure" d=${`M${x(line.low)} 58H${x(line.high)}M${x(line.low)} 49v18M${x(line.high)} 49v18`} />
    <circle class="wd-point" cx=${x(line.value)} cy="58" r="9" />
    <text class="fig" x=${x(line.value)} y="24">${line.shown} %</text>
    <text class="fig" x=${x(PROOF)} y="108">100 %</text></svg>`;
}
