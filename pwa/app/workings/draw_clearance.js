/** A clearance against its window: where the reading lies, how sure it is, what would prove it. */
import { convert } from '../../trade/units.js';
import { html } from '../frame/index.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';
import { wordSays } from './words.js';

const WIDE = 360;
const HIGH = 150;
const EDGE = 34;
const MIDDLE = 78;

/** @param {any} typed @param {string} unit */
const inUnit = (typed, unit) => (typed ? convert(Number(typed.value), typed.unit, unit) : null);

/** @param {{told: any}} props */
export function ClearanceDrawing({ told }) {
  const { line, sign, least, most } = readOf(told);
  const sure = (line.high - line.low) / 2;
  const room = sign * line.value;
  const known = [least, most].filter((each) => each !== null);
  const ends = [...known.flatMap((each) => [each - sure, each + sure]), room - sure, room + sure];
  const low = Math.min(...ends);
  const span = Math.max(...ends) - low || 1;
  const x = (/** @type {number} */ at) => EDGE + ((at - low) / span) * (WIDE - 2 * EDGE);
  const [from, to] = [least === null ? 0 : x(least), most === null ? WIDE : x(most)];
  const wide = x(low + sure) - x(low);
  return html`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${saysOf(told, line)}>
    <defs><pattern id="wd-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(38)"><path d="M0 0V7" /></pattern></defs>
    ${known.length > 0 && html`<rect class="wd-window" x=${from} y=${MIDDLE - 26} width=${Math.max(0, to - from)} height="52" />`}
    ${known.map((each) => html`<g key=${each}><rect class="wd-guard" x=${x(each) - wide} y=${MIDDLE - 26} width=${2 * wide} height="52" /><path class="wd-limit" d=${`M${x(each)} ${MIDDLE - 34}V${MIDDLE + 34}`} /></g>`)}
    <path class="measure" d=${`M0 ${MIDDLE}H${WIDE}`} />
    <path class="wd-sure" d=${`M${x(room - sure)} ${MIDDLE}H${x(room + sure)}M${x(room - sure)} ${MIDDLE - 9}v18M${x(room + sure)} ${MIDDLE - 9}v18`} />
    <circle class="wd-point" cx=${x(room)} cy=${MIDDLE} r="9" />
    <text class="fig" x=${held(x(room))} y="26">${local(line.shown)}</text>
    ${known.map((each, at) => html`<text key=${at} class="fig" x=${held(x(each))} y=${MIDDLE + 60}>${local(endText(told, each === least ? 'least' : 'most'))}</text>`)}</svg>`;
}

/** A figure stays on the paper. @param {number} x */
const held = (x) => Math.min(WIDE - EDGE, Math.max(EDGE, x));

/** @param {any} told */
function readOf(told) {
  const line = told.lines.find((/** @type {any} */ each) =>
    ['clearance', 'interference'].includes(each.name),
  );
  const { least, most } = told.given;
  return {
    line,
    sign: line.name === 'clearance' ? 1 : -1,
    least: inUnit(least, line.unit),
    most: inUnit(most, line.unit),
  };
}

/** @param {any} told @param {string} name */
const endText = (told, name) => told.given[name].value;

/** @param {any} told @param {any} line */
function saysOf(told, line) {
  const verdict = told.lines.find((/** @type {any} */ each) => each.name === 'verdict');
  const [low, high] = line.between;
  const facts = { value: `${line.shown} ${line.unit}`, low, high };
  return [
    t('work.clearance.drawn', facts),
    verdict && t('work.clearance.drawn.window', { verdict: wordSays(verdict.value) }),
  ]
    .filter(Boolean)
    .join(' ');
}
