/** The arrows of a photo as lines that can be read and struck out, and the panel that makes one. */

import { TextField } from '../forms_fields.js';
import { html, Key } from '../frame/index.js';
import { StrikeLink, Struck } from '../frame/inspections.js';
import { madeSays } from '../frame/maker.js';
import { t } from '../texts/index.js';

/** @param {{marks: any[], about: string}} props */
export function Marks({ marks, about }) {
  if (!marks.length) return null;
  return html`<div class="sect"><h2>${t('photo.marks')}</h2><span class="soft">${marks.filter((one) => one.number).length}</span></div>
    <ul class="sheet notes">${marks.map(
      (
        one,
      ) => html`<li key=${one.id}><p class=${one.struck ? 'out' : ''}>${one.number && html`<b class="fig">${one.number}</b> `}${one.note ?? t('photo.arrow')} <time class="soft" datetime=${one.made}>${madeSays(one)}</time></p>
      ${one.struck ? html`<${Struck} struck=${one.struck} />` : html`<${StrikeLink} entry=${one.id} about=${about} what=${[t('photo.arrow'), one.number, one.note].filter(Boolean).join(' ')} />`}</li>`,
    )}</ul>`;
}

/** What it points at, and the way out. @param {{mark: any}} props */
export const Marking = ({ mark }) =>
  html`<div class="points"><${TextField} id="points-at" label=${t('photo.mark.note')} value=${mark.note} onChange=${mark.write} />
    <${Key} label=${t('photo.mark.leave')} onPress=${mark.leave} /></div>`;
