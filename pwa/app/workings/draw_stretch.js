/** A bolt by its sections, to scale: lengths along it, diameters across. */

import { parse } from '../../trade/thread_text.js';
import { convert } from '../../trade/units.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';

const WIDE = 360;
const EDGE = 16;
const HEAD = 26;

/** @param {any} typed */
const mm = (typed) => convert(Number(typed.value), typed.unit, 'mm');

/** @param {any} given @returns {{length: number, across: number, thread: boolean}[]} */
function sectionsOf(given) {
  const plain = (given.length ?? []).map((/** @type {any} */ each, /** @type {number} */ at) => ({
    length: mm(each),
    across: mm(given.diameter[at]),
    thread: false,
  }));
  if (!given['free-thread']) return plain;
  const across = parse(given.thread).diameter_mm;
  return [...plain, { length: mm(given['free-thread']), across, thread: true }];
}

/** @param {{told: any}} props */
export function StretchDrawing({ told }) {
  const sections = sectionsOf(told.given);
  const long = sections.reduce((sum, each) => sum + each.length, 0);
  const thick = Math.max(...sections.map((each) => each.across));
  const scale = Math.min((WIDE - 2 * EDGE - 2 * HEAD) / long, 90 / thick);
  const head = thick * scale * 1.6;
  const high = head + 24;
  const middle = high / 2;
  const start = (WIDE - long * scale) / 2;
  let x = start;
  const drawn = sections.map((each, at) => {
    const [wide, deep] = [each.length * scale, each.across * scale];
    const from = x;
    x += wide;
    return html`<rect key=${at} class=${each.thread ? 'wd-bar wd-thread' : 'wd-bar'} x=${from} y=${middle - deep / 2} width=${wide} height=${deep} />`;
  });
  return html`<svg viewBox=${`0 0 ${WIDE} ${high}`} role="img" aria-label=${t('work.stretch.drawn', { n: sections.length })}>
    <rect class="wd-grip" x=${start - HEAD} y=${middle - head / 2} width=${HEAD} height=${head} rx="3" />${drawn}
    <rect class="wd-grip" x=${x} y=${middle - head / 2} width=${HEAD} height=${head} rx="3" /></svg>`;
}
