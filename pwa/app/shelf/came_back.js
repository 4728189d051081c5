/** What came back from the machine shop, in the record of its part: from whom, what was done, what it measures. */
import { away } from '../../views/away.js';
import { day } from '../dates.js';
import { html } from '../frame/html.js';
import { StrikeLink } from '../frame/inspections.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';

/** @param {{workshop: any, part: string, readings: (one: any) => any}} props readings: what one of them read */
export function CameBack({ workshop, part, readings }) {
  const lines = away(workshop).back.filter((one) => one.part === part);
  if (!lines.length) return null;
  return html`<div class="sect"><h2>${t('away.back')}</h2></div><ul class="sheet notes">${lines.map(
    (one) => {
      const from = t('away.from', { to: one.to ?? '', day: day(one.made) });
      return html`<li key=${one.id}><p>${from} <span class="soft">${[one.for, one.note].filter(Boolean).join('. ')}</span></p>${readings({ ...one, struck: null })}<${StrikeLink} entry=${one.id} about=${part} what=${from} /></li>`;
    },
  )}</ul>`;
}
