/** The plate above an inspection: what good looks like and what does not, of the question in hand. */

import { useMemo } from 'preact/hooks';
import { Worn } from '../drawing/worn.js';
import { WORN } from '../drawing/worn_paths.js';
import { html, Icon, Photo } from '../frame/index.js';
import '../texts/photo.js';
import { t } from '../texts/index.js';

/**
 * The question the plate is about: the first that is not answered, else the last one before it that has
 * something to show, so that nothing moves under a finger.
 * @param {any} kind
 * @param {any[]} criteria
 * @param {Record<string, boolean>} looks
 */
export function inHand(kind, criteria, looks) {
  const telling = criteria.filter(
    (one) =>
      (one.good && one.bad) ||
      drawingOf(kind, criteria, one) ||
      exampleOf(kind, one, 'good', 'bad'),
  );
  const at = criteria.findIndex((one) => looks[one.id] === undefined);
  const now = at < 0 ? criteria.length : at;
  return telling.filter((one) => criteria.indexOf(one) <= now).at(-1) ?? telling[0] ?? null;
}

/** Drawn once for each question: a verdict or the next piece changes nothing in it. @param {{kind: any, criteria: any[], shown: any}} props */
export function Plate({ kind, criteria, shown }) {
  return useMemo(() => plateOf(kind, criteria, shown), [kind, criteria, shown]);
}

/** @param {any} kind @param {any[]} criteria @param {any} shown */
function plateOf(kind, criteria, shown) {
  if (!shown) return null;
  const drawing = drawingOf(kind, criteria, shown);
  // As high for a question without photos, so that nothing moves when the next one is in hand.
  const look = `plate ${kind?.examples?.length ? 'pictured' : ''}`;
  if (!drawing) return html`<${Worded} kind=${kind} criterion=${shown} look=${look} />`;
  const words = [t('inspect.plate.good'), shown.good].filter(Boolean).join(': ');
  const label = `${words}; ${[t('inspect.plate.bad'), shown.bad].filter(Boolean).join(': ')}`;
  const side = (/** @type {string} */ one) =>
    html`<span><${Example} line=${exampleOf(kind, shown, one)} /><b>${shown[one] || t(`inspect.plate.${one}`)}</b></span>`;
  return html`<figure class=${look}><${Worn} word=${drawing} label=${label} />
    <figcaption>${side('good')}${side('bad')}</figcaption></figure>`;
}

/** The owner's own photo of a question. @param {any} kind @param {any} one @param {string[]} sides */
const exampleOf = (kind, one, ...sides) =>
  kind?.examples?.find(
    (/** @type {any} */ each) => each.criterion === one.id && sides.includes(each.side),
  );

/** @param {{line: any}} props */
const Example = ({ line }) =>
  line &&
  html`<${Photo} sha=${line.photo} about=${line.about} says=${t('photo.example', { ...line, side: t(`photo.side.${line.side}`) })} />`;

/** Its own drawing; a drawing of the whole kind belongs to the first question told in words. @param {any} kind @param {any[]} criteria @param {any} one */
function drawingOf(kind, criteria, one) {
  const first = criteria.find((each) => each.good && each.bad);
  const word = kind?.drawings?.[one.id] ?? (one === first ? kind?.drawing : null);
  return WORN.includes(word) ? word : null;
}

/** @param {{kind: any, criterion: any, look: string}} props */
function Worded({ kind, criterion, look }) {
  const side = (/** @type {string} */ one, /** @type {string} */ icon) => {
    const line = exampleOf(kind, criterion, one);
    return html`<p>${line ? html`<${Example} line=${line} />` : html`<${Icon} name=${icon} />`}<span><span class="soft">${t(`inspect.plate.${one}`)}</span><b>${criterion[one]}</b></span></p>`;
  };
  return html`<figure class=${`${look} words`}>${side('good', 'v-use')}${side('bad', 'v-scrap')}</figure>`;
}
