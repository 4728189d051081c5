/** The plate above an inspection: what good looks like and what does not, drawn or in words. */

import { html, Icon } from '../frame/index.js';
import { t } from '../texts/index.js';

/** @param {{kind: any, criteria: any[]}} props */
export function Plate({ kind, criteria }) {
  const shown = criteria.find((one) => one.good && one.bad);
  if (!shown) return null;
  const Drawing = DRAWINGS[kind?.drawing ?? ''];
  if (!Drawing) return html`<${Worded} criterion=${shown} />`;
  const label = `${t('inspect.plate.good')}: ${shown.good}; ${t('inspect.plate.bad')}: ${shown.bad}`;
  return html`<figure class="plate"><svg viewBox="0 12 358 56" role="img" aria-label=${label}><g class="plate-line"><${Drawing} /></g></svg>
    <figcaption><b>${shown.good}</b><b>${shown.bad}</b></figcaption></figure>`;
}

/** @param {{criterion: any}} props */
function Worded({ criterion }) {
  return html`<figure class="plate words"><p><${Icon} name="v-use" /><span><span class="soft">${t('inspect.plate.good')}</span><b>${criterion.good}</b></span></p>
    <p><${Icon} name="v-scrap" /><span><span class="soft">${t('inspect.plate.bad')}</span><b>${criterion.bad}</b></span></p></figure>`;
}

/** A ball end, round beside worn flat with a step. */
const BallEnd =
  () => html`<path class="steel-fill" d="M24 26h96v26H24z" /><path class="hole-fill" d="M120 26c8 -10 30 -8 34 13c-4 21 -26 23 -34 13z" />
  <path class="dashed" d="M24 39h112" /><path class="steel-fill" d="M204 26h96v26h-96z" />
  <path class="hole-fill" d="M300 26c6 -8 16 -9 24 -5l5 8v19l-5 8c-8 4 -18 3 -24 -4z" /><path class="dashed" d="M204 39h112" />
  <path class="thin" d="M318 28l8 3M318 36l10 2M318 44l9 1" />`;

/** Kinds whose `drawing` names one of these get it. @type {Record<string, () => any>} */
const DRAWINGS = { 'ball-end': BallEnd };
