/** The chance of enough good ones by how many are brought: a column each, the least that will do full. */
import { chance, chanceLearned } from '../../trade/yields.js';
import { html } from '../frame/index.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const HIGH = 220;
const EDGE = 8;
const TOP = 34;
const FLOOR = 180;
const BEFORE = 10;
const AFTER = 4;
/** Beyond so many a column more or less is none. */
const MOST = 2000;

/** How many → the chance. @param {any} given @returns {(many: number) => number} */
function chanceOf(given) {
  const needed = Number(given.needed);
  const good = given['share-good'];
  if (good) return (many) => chance(many, needed, Number(good.value) / 100);
  const [inspected, rejected] = [Number(given.inspected), Number(given.rejected)];
  return (many) => chanceLearned(many, needed, inspected, rejected);
}

/** @param {{told: any}} props */
export function BringDrawing({ told }) {
  const many = told.lines[0].value;
  if (many > MOST) return null;
  const first = Math.max(Number(told.given.needed), many - BEFORE);
  const brought = Array.from({ length: many + AFTER + 1 - first }, (_, at) => first + at);
  const chances = brought.map(chanceOf(told.given));
  const step = (WIDE - 2 * EDGE) / brought.length;
  const x = (/** @type {number} */ each) => EDGE + (each - first + 0.5) * step;
  const y = (/** @type {number} */ part) => FLOOR - part * (FLOOR - TOP);
  const wanted = Number(told.given.chance.value) / 100;
  const reached = told.lines[1];
  const says = t('work.bring.drawn', { n: many, chance: `${reached.shown} %` });
  return html`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${says}>
    ${brought.map((each, at) => html`<rect key=${each} class=${each === many ? 'wd-in' : 'wd-out'} x=${x(each) - step * 0.36} y=${y(chances[at] ?? 0)} width=${step * 0.72} height=${FLOOR - y(chances[at] ?? 0)} />`)}
    <path class="measure" d=${`M0 ${FLOOR}H${WIDE}`} />
    <path class="wd-limit" stroke-dasharray="6 5" d=${`M0 ${y(wanted)}H${WIDE}`} />
    <text class="fig" x=${Math.min(WIDE - 40, x(many))} y="22">${local(reached.shown)} %</text>
    ${marked(brought, many).map((each) => html`<text key=${each} class="fig" x=${x(each)} y=${FLOOR + 28}>${each}</text>`)}</svg>`;
}

/** The numbers written under their columns: the one to bring, and both ends where they are apart. @param {number[]} brought @param {number} many */
function marked(brought, many) {
  const ends = [brought[0] ?? many, brought.at(-1) ?? many];
  return [...new Set([many, ...ends.filter((each) => Math.abs(each - many) >= AFTER)])];
}
