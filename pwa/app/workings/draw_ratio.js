/** A cylinder in section with its volumes to scale, each as a column of the bore. */
import { deckVolume, gasketVolume } from '../../trade/geometry.js';
import { convert } from '../../trade/units.js';
import { html } from '../frame/index.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const HIGH = 330;
const TOP = 14;
const COLUMN = 150;
const LEFT = 30;

/** @param {any} typed @param {string} unit */
const size = (typed, unit) => (typed ? convert(Number(typed.value), typed.unit, unit) : 0);

/** Columns above the piston, in cubic centimetres, from the top. @param {any} given */
function columnsOf(given) {
  const gasketBore = size(given['gasket-bore'] ?? given.bore, 'mm');
  return [
    ['chamber', size(given.chamber, 'cm³')],
    ['gasket', gasketVolume(gasketBore, size(given['gasket-thickness'], 'mm'))],
    ['deck', deckVolume(size(given.bore, 'mm'), size(given['piston-below-deck'], 'mm'))],
    ['dish', size(given.dish, 'cm³') + size(given['ring-land'], 'cm³')],
  ];
}

/** @param {any} told @param {string} name */
const lineOf = (told, name) => told.lines.find((/** @type {any} */ each) => each.name === name);

/** @param {{told: any}} props */
export function RatioDrawing({ told }) {
  const swept = lineOf(told, 'swept');
  const room = lineOf(told, 'clearance-volume');
  const whole = convert(swept.value + room.value, swept.unit, 'cm³');
  const scale = (HIGH - 2 * TOP - 34) / whole;
  const [text, above] = [swept, room].map((line) => `${local(line.shown)} ${line.unit}`);
  let y = TOP;
  const shown = columnsOf(told.given).filter(([, volume]) => Number(volume) > 0);
  const drawn = shown.map(([name, volume]) => {
    const high = Number(volume) * scale;
    const from = y;
    y += high;
    return html`<rect key=${name} class=${`wd-room wd-${name}`} x=${LEFT} y=${from} width=${COLUMN} height=${high} />`;
  });
  const middle = TOP + convert(room.value, room.unit, 'cm³') * scale;
  const foot = TOP + whole * scale;
  const beside = LEFT + COLUMN + 34;
  return html`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${t('work.ratio.drawn', { swept: text, room: above })}>
    <rect class="wd-swept" x=${LEFT} y=${middle} width=${COLUMN} height=${foot - middle} />${drawn}
    <path class="wd-limit" d=${`M${LEFT} ${TOP}V${HIGH - 8}M${LEFT + COLUMN} ${TOP}V${HIGH - 8}M${LEFT} ${TOP}H${LEFT + COLUMN}`} />
    <rect class="wd-bar" x=${LEFT + 3} y=${foot} width=${COLUMN - 6} height="30" rx="4" />
    <path class="measure" d=${`M${beside - 20} ${TOP}h16V${middle}h-16M${beside - 20} ${middle + 3}h16V${foot}h-16`} />
    <text class="fig wd-beside" x=${beside + 4} y=${Math.max(TOP + 18, (TOP + middle) / 2 + 7)}>${above}</text>
    <text class="fig wd-beside" x=${beside + 4} y=${(middle + foot) / 2 + 7}>${text}</text></svg>`;
}
