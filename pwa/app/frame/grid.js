/** A sheet's grid in millimetres: its numbers, and a picture of the first page. */
import { t } from '../texts/index.js';
import { html } from './html.js';

/** @typedef {{page_width: number, page_height: number, left: number, top: number, columns: number, rows: number, width: number, height: number, pitch_x: number, pitch_y: number}} Grid */

/** A grid to begin with: A4 with 3 × 8 labels of 70 × 37 mm. @returns {Grid} */
export const ownGrid = () => ({
  page_width: 210,
  page_height: 297,
  left: 0,
  top: 0.5,
  columns: 3,
  rows: 8,
  width: 70,
  height: 37,
  pitch_x: 70,
  pitch_y: 37,
});

/** @type {(keyof Grid)[]} */
const names = [
  'page_width',
  'page_height',
  'columns',
  'rows',
  'width',
  'height',
  'left',
  'top',
  'pitch_x',
  'pitch_y',
];

/** How many labels a page takes. @param {any} layout */
export const placesOf = (layout) => (layout ? (layout.places ?? layout.columns * layout.rows) : 0);

/** A typed length; both separators are read. @param {string} typed */
const lengthOf = (typed) => Number(typed.replace(',', '.').replace(/[^\d.]/g, '')) || 0;

/** @param {{grid: Grid, onChange: (grid: Grid) => void}} props */
export function GridFields({ grid, onChange }) {
  return html`<div class="form-two grid-fields also">${names.map(
    (name) => html`<label key=${name} class="field"><span>${t(`labels.grid.${name}`)}</span>
    <input type="text" inputmode="decimal" autocomplete="off" value=${grid[name]} onChange=${(/** @type {any} */ event) => onChange({ ...grid, [name]: lengthOf(event.target.value) })} /></label>`,
  )}</div>`;
}

/** @param {any} layout @returns {layout is Grid} */
const drawable = (layout) =>
  Boolean(layout?.page_width > 0 && layout.page_height > 0 && layout.columns * layout.rows <= 500);

/**
 * The first page: places left empty, places printed.
 * @param {{layout: any, start: number, count: number}} props
 */
export function GridPlan({ layout, start, count }) {
  if (!drawable(layout)) return null;
  const places = Array.from({ length: layout.columns * layout.rows }, (_, n) => n);
  const printed = Math.min(count, Math.max(0, places.length - start + 1));
  const used = (/** @type {number} */ n) => n < start - 1 || n >= start - 1 + count;
  return html`<svg class="grid-plan also" viewBox=${`0 0 ${layout.page_width} ${layout.page_height}`} role="img" aria-label=${t('labels.plan', { n: start - 1, printed })}>
    ${places.map(
      (
        n,
      ) => html`<rect key=${n} class=${used(n) ? 'used' : ''} x=${layout.left + (n % layout.columns) * layout.pitch_x + 1} y=${layout.top + Math.floor(n / layout.columns) * layout.pitch_y + 1}
      width=${Math.max(1, layout.width - 2)} height=${Math.max(1, layout.height - 2)} rx="1.5" />`,
    )}</svg>`;
}
