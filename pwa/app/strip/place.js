/** Where the part was: chips that go on where the last one of its kind stopped, or own words. */

import { useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { nextPlaces } from '../../views/next_place.js';
import { TextField } from '../forms_fields.js';
import { html, Key } from '../frame/index.js';
import { t } from '../texts/index.js';

const AT_HAND = 6;

/**
 * What is offered: places after the last one of the kind; where that has no number, the usual
 * ones, too; where the kind has none yet, the last one of all, and the usual ones.
 * @param {any} workshop
 * @param {any[]} lines what was bagged this evening, the newest first
 * @param {string} kind
 * @returns {string[]}
 */
export function offered(workshop, lines, kind) {
  const parts = workshop
    .all('part')
    .map(placed)
    .filter((/** @type {any} */ one) => one.from);
  const mine = parts.filter((/** @type {any} */ one) => one.kind === kind);
  const used = mine.map((/** @type {any} */ one) => one.from);
  const last = lastOf(lines, mine);
  const next = nextPlaces(last, used);
  if (last && /[0-9]/.test(last)) return next;
  const before = lastOf(lines, parts);
  const usual = [
    ...(before && before !== last ? [before] : []),
    ...t('strip.place.start').split('|'),
  ];
  const free = usual.filter((one) => !used.includes(one));
  return [...new Set([...next, ...free])].slice(0, AT_HAND);
}

/** @param {any} part */
const placed = (part) => ({ id: part.id, kind: value(part, 'kind'), from: value(part, 'from') });

/** The place of the part that was bagged last. @param {any[]} lines @param {any[]} parts */
function lastOf(lines, parts) {
  const found = lines.map(({ id }) => parts.find((one) => one.id === id)).find(Boolean);
  return (found ?? parts.at(-1))?.from ?? null;
}

/** @param {{places: string[], place: string, label: string, onChange: (place: string) => void}} props */
export function PlaceChips({ places, place, label, onChange }) {
  const own = place !== '' && !places.includes(place);
  const [typing, setTyping] = useState(own);
  const pick = (/** @type {string} */ one) => {
    setTyping(false);
    onChange(one === place ? '' : one);
  };
  return html`<fieldset><legend>${label}</legend><div class="chips">
    ${places.map((one) => html`<${Key} key=${one} className="press" label=${one} pressed=${one === place} onPress=${() => pick(one)} />`)}
    <${Key} className="press" label=${t('strip.place.other')} pressed=${typing} onPress=${() => setTyping(!typing)} /></div>
    ${typing && html`<${TextField} id="own-place" label=${t('strip.place.own')} value=${own ? place : ''} onChange=${onChange} />`}</fieldset>`;
}
