/** How the fasteners stand: pattern, count, the drawing as preview, and the order of tightening. */

import { JointDrawing } from '../drawing/joint_drawing.js';
import { Chips, Count, TextField } from '../forms_fields.js';
import { html, Icon, Key } from '../frame/index.js';
import { t } from '../texts/index.js';
import { fastenersOf } from './fasteners.js';
import { orderIsWhole } from './model.js';

const PATTERNS = ['rows', 'circle', 'line', 'points'];
/** Where the next free point is put when a key, not the drawing, is pressed. */
const GRID = { columns: 8, x: 120, y: 160, left: 80, top: 90 };

/** @param {{form: any, change: (part: any) => void}} props */
export function Shape({ form, change }) {
  // Another shape means other fasteners; those of the old one keep their pulls under their own ids.
  const reshape = (/** @type {any} */ part) => change({ ...part, fasteners: null, order: '' });
  const fasteners = fastenersOf(form);
  const pattern = (/** @type {string} */ word) =>
    reshape({
      pattern: word,
      points:
        word === 'points'
          ? fasteners.map((/** @type {any} */ { x, y }) => ({ x, y }))
          : form.points,
    });
  return html`<section class="stack">
    <${Chips} label=${t('joint.pattern')} value=${form.pattern} onChange=${pattern} words=${PATTERNS.map((word) => ({ value: word, says: t(`joint.pattern.${word}`) }))} />
    ${
      form.pattern === 'points'
        ? html`<${Points} form=${form} reshape=${reshape} />`
        : html`<${Count} label=${t('joint.count')} value=${form.count} onChange=${(/** @type {number} */ count) => reshape({ count, rows: Math.min(form.rows, count) })} />`
    }
    ${
      form.pattern === 'rows' &&
      html`<${Count} label=${t('joint.rows')} value=${form.rows} most=${Math.min(form.count, 6)} onChange=${(/** @type {number} */ rows) => reshape({ rows })} />
      <${Chips} label=${t('joint.casting')} value=${form.casting} onChange=${(/** @type {string} */ casting) => change({ casting })}
        words=${['plain', 'head'].map((word) => ({ value: word, says: t(`joint.casting.${word}`) }))} />`
    }
    <div class="sheet preview"><${JointDrawing} fasteners=${fasteners} pattern=${form.pattern} casting=${form.casting} noun=${form.noun} /></div>
    <${TextField} id="order" label=${t('joint.order.own')} value=${form.order} hint=${t('joint.order.hint')} onChange=${(/** @type {string} */ order) => change({ order })} />
    ${!orderIsWhole(form) && html`<p class="wrong"><${Icon} name="i-caution" />${t('joint.order.wrong', { n: fasteners.length })}</p>`}
  </section>`;
}

/** @param {any} props */
function Points({ form, reshape }) {
  const { points } = form;
  const press = (/** @type {MouseEvent} */ event) => {
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    const x = Math.round(((event.clientX - box.left) / box.width) * 1000);
    const y = Math.round(((event.clientY - box.top) / box.height) * 500);
    reshape({ points: [...points, { x, y }] });
  };
  const add = () => {
    const n = points.length;
    const x = GRID.left + (n % GRID.columns) * GRID.x;
    const y = Math.min(GRID.top + Math.floor(n / GRID.columns) * GRID.y, 500);
    reshape({ points: [...points, { x, y }] });
  };
  return html`<p class="hint">${t('joint.points.hint')}</p>
    <svg class="plate points" viewBox="0 0 1000 500" aria-hidden="true" onClick=${press}>${points.map(
      (/** @type {any} */ p, /** @type {number} */ i) =>
        html`<circle class="todo-h" cx=${p.x} cy=${p.y} r="34" /><text x=${p.x} y=${p.y + 18} class="point-n">${i + 1}</text>`,
    )}</svg>
    <div class="pair"><${Key} className="press" label=${t('joint.points.less')} disabled=${!points.length} onPress=${() => reshape({ points: points.slice(0, -1) })} />
      <${Key} className="press" label=${t('form.more')} onPress=${add} /></div>`;
}
