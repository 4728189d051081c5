/** The plate above an inspection: what good looks like and what does not, of the question in hand. */

import { Worn } from '../drawing/worn.js';
import { WORN } from '../drawing/worn_paths.js';
import { html, Icon } from '../frame/index.js';
import { t } from '../texts/index.js';

/**
 * The question the plate is about: the first that is not answered, else the last one before it that has
 * something to show, so that nothing moves under a finger.
 * @param {any} kind
 * @param {any[]} criteria
 * @param {Record<string, boolean>} looks
 */
export function inHand(kind, criteria, looks) {
  const telling = criteria.filter((one) => (one.good && one.bad) || drawingOf(kind, criteria, one));
  const at = criteria.findIndex((one) => looks[one.id] === undefined);
  const now = at < 0 ? criteria.length : at;
  return telling.filter((one) => criteria.indexOf(one) <= now).at(-1) ?? telling[0] ?? null;
}

/** @param {{kind: any, criteria: any[], shown: any}} props */
export function Plate({ kind, criteria, shown }) {
  if (!shown) return null;
  const drawing = drawingOf(kind, criteria, shown);
  if (!drawing) return html`<${Worded} criterion=${shown} />`;
  const words = [t('inspect.plate.good'), shown.good].filter(Boolean).join(': ');
  const label = `${words}; ${[t('inspect.plate.bad'), shown.bad].filter(Boolean).join(': ')}`;
  return html`<figure class="plate"><${Worn} word=${drawing} label=${label} />
    <figcaption><b>${shown.good || t('inspect.plate.good')}</b><b>${shown.bad || t('inspect.plate.bad')}</b></figcaption></figure>`;
}

/** Its own drawing; a drawing of the whole kind belongs to the first question told in words. @param {any} kind @param {any[]} criteria @param {any} one */
function drawingOf(kind, criteria, one) {
  const first = criteria.find((each) => each.good && each.bad);
  const word = kind?.drawings?.[one.id] ?? (one === first ? kind?.drawing : null);
  return WORN.includes(word) ? word : null;
}

/** @param {{criterion: any}} props */
function Worded({ criterion }) {
  return html`<figure class="plate words"><p><${Icon} name="v-use" /><span><span class="soft">${t('inspect.plate.good')}</span><b>${criterion.good}</b></span></p>
    <p><${Icon} name="v-scrap" /><span><span class="soft">${t('inspect.plate.bad')}</span><b>${criterion.bad}</b></span></p></figure>`;
}
