/** The lubricant a joint's values are for: one of the known states, or the owner's own words. */

import { find } from '../../trade/lubricant.js';
import { Chips, TextField } from '../forms_fields.js';
import { html } from '../frame/index.js';
import { hasText, t } from '../texts/index.js';

/** As the record names them; the last two have no nut factor that everybody would sign. */
const KNOWN = ['dry', 'zinc plated', 'oiled', 'moly', 'anti-seize', 'sealant', 'locking compound'];

/** The choice of the working that a lubricant in the owner's words comes to. @param {string} words */
export function stateOf(words) {
  const plain = words.trim();
  const state = find(plain)?.state ?? (KNOWN.includes(plain) ? plain : 'unknown');
  return state.replace(' ', '-');
}

/** @param {{form: any, change: (part: any) => void}} props */
export function Lubricant({ form, change }) {
  const set = (/** @type {string} */ lubricant) => change({ lubricant });
  const words = KNOWN.map((value) => ({ value, says: says(value) }));
  return html`<div class="stack"><${Chips} label=${t('joint.lubricant')} value=${form.lubricant.trim()} words=${words} onChange=${set} />
    <${TextField} id="lubricant" label=${t('joint.lubricant.own')} value=${form.lubricant} onChange=${set} /></div>`;
}

/** @param {string} word */
const says = (word) => (hasText(`lubricant.${word}`) ? t(`lubricant.${word}`) : word);
