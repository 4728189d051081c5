/** The joint drawn: its casting, its numbered fasteners in their states, and a list of them for screen readers. */

import { html } from '../frame/html.js';
import { t } from '../texts/index.js';
import { Casting } from './casting.js';
import { Head, hexagon } from './heads.js';
import { HEIGHT, WIDTH } from './place.js';
import { layOut } from './window.js';

/**
 * @typedef {{id: string, number: number, x: number, y: number, mark?: string}} Drawn
 * @typedef {{fasteners: Drawn[], pattern?: string, casting?: string | null, noun?: string,
 *   next?: string | null, label?: string, list?: boolean}} DrawingProps
 */

/** @param {DrawingProps} props */
export function JointDrawing(props) {
  const { fasteners, pattern = 'points', casting, label, list = true } = props;
  if (!fasteners.length) return null;
  const next = props.next ?? fasteners.find((f) => f.mark === 'next')?.id ?? fasteners[0]?.id ?? '';
  const { heads, plan, area } = layOut(fasteners, pattern, next);
  const ordered = [...heads].sort((a, b) => Number(a.id === next) - Number(b.id === next));
  return html`<svg class="drawing" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role="img"
      aria-label=${label ?? describe(fasteners)}>
      <${Casting} pattern=${pattern} casting=${casting} heads=${heads} area=${area} whole=${!plan} />
      ${ordered.map(
        (head) =>
          html`<${Head} key=${head.id} ...${head} mark=${markOf(head)} index=${head.number} />`,
      )}
      ${plan ? html`<${Plan} ...${plan} />` : null}
    </svg>
    ${list ? html`<${Listed} fasteners=${fasteners} noun=${props.noun} />` : null}`;
}

/** @param {any} head */
const markOf = (head) => head.mark ?? 'todo';

/** @param {any} props */
function Plan({ spots, box, shown }) {
  const window = spots.filter((/** @type {Drawn} */ s) => shown.has(s.id));
  const xs = window.map((/** @type {Drawn} */ s) => s.x);
  const ys = window.map((/** @type {Drawn} */ s) => s.y);
  const [x, y] = [Math.min(...xs) - 5, Math.min(...ys) - 5];
  return html`<g class="plan"><rect class="cast" x=${box.x} y=${box.y} width=${box.w} height=${box.h} rx="8" />
    ${spots.map((/** @type {Drawn} */ s) => html`<polygon points=${hexagon(s.x, s.y, 3.4)} class=${isDone(s) ? 'done-h' : 'plan-h'} />`)}
    <rect class="plan-w" x=${x} y=${y} width=${Math.max(...xs) - x + 5} height=${Math.max(...ys) - y + 5} rx="4" /></g>`;
}

/** @param {Drawn} fastener */
const isDone = (fastener) => fastener.mark === 'done' || fastener.mark === 'flagged';

/** @param {{fasteners: Drawn[], noun?: string}} props */
function Listed({ fasteners, noun }) {
  return html`<ul class="gone">${fasteners.map(
    (f) =>
      html`<li key=${f.id}>${t('draw.one', { noun: noun ?? t('draw.fastener'), number: f.number, state: t(`draw.mark.${markOf(f)}`) })}</li>`,
  )}</ul>`;
}

/**
 * The drawing in one sentence.
 * @param {Drawn[]} fasteners
 */
export function describe(fasteners) {
  const done = fasteners.filter(isDone).length;
  const says = [t('draw.done', { done, of: fasteners.length })];
  const out = fasteners.filter((f) => f.mark === 'out').map((f) => f.number);
  const doubt = fasteners.filter((f) => f.mark === 'doubt').map((f) => f.number);
  const next = fasteners.find((f) => f.mark === 'next');
  if (out.length) says.push(t('draw.out', { numbers: out.join(', ') }));
  if (doubt.length) says.push(t('draw.doubt', { numbers: doubt.join(', ') }));
  if (next) says.push(t('draw.next', { number: next.number }));
  return says.join(' ');
}
