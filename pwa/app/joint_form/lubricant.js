/** The lubricant a joint's values are for: one of the known states, or the owner's own words. */

import { STATES } from '../../trade/lubricant.js';
import { Chips, TextField } from '../forms_fields.js';
import { html } from '../frame/index.js';
import { lubricantSays } from '../lubricants.js';
import { t } from '../texts/index.js';

/** @param {{form: any, change: (part: any) => void}} props */
export function Lubricant({ form, change }) {
  const set = (/** @type {string} */ lubricant) => change({ lubricant });
  const words = STATES.map((value) => ({ value, says: lubricantSays(value) }));
  return html`<div class="stack"><${Chips} label=${t('joint.lubricant')} value=${form.lubricant.trim()} words=${words} onChange=${set} />
    <${TextField} id="lubricant" label=${t('joint.lubricant.own')} value=${form.lubricant} onChange=${set} /></div>`;
}
