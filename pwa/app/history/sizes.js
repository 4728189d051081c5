/** All measures of a part or kind over time; those nobody read are named in one line. */
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';
import { Measured } from './plot.js';

/** @param {{measures: any[], many?: boolean}} props */
export function Sizes({ measures, many = false }) {
  const read = measures.filter(({ points }) => points.length);
  const names = measures.filter(({ points }) => !points.length).map(({ name }) => name ?? '');
  return html`<div class="sect"><h2>${t('history.sizes')}</h2></div>
    ${measures.length === 0 && html`<p class="soft">${t('history.measure.none')}</p>`}
    <div class="over-times">${read.map((measure) => html`<${Measured} key=${measure.id} measure=${measure} many=${many} />`)}</div>
    ${names.length > 0 && html`<p class="soft">${t('history.sizes.none', { names: names.join(', ') })}</p>`}`;
}
