/** The donors of the workshop, each with how many parts came from it. */

import { value } from '../../log/workshop.js';
import { quantity } from '../../views/how_many.js';
import { Act, Dock, html, Missing, Page, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import '../texts/strip.js';
import { t } from '../texts/index.js';

const BACK = { to: '/more', says: t('form.back') };

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop: donors } = useSlice(store, (s) => s.allOf('donor'), []);
  const { workshop: parts } = useSlice(store, (s) => s.allOf('part'), []);
  if (!donors || !parts)
    return html`<${Page} title=${t('donor.list')} back=${BACK} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const counts = countsOf(parts.all('part'));
  const rows = donors
    .all('donor')
    .map((/** @type {any} */ one) => ({
      id: one.id,
      name: value(one, 'name') ?? '',
      says: [value(one, 'engine'), t('donor.parts', { n: counts.get(one.id) ?? 0 })]
        .filter(Boolean)
        .join(' · '),
    }))
    .sort((/** @type {any} */ a, /** @type {any} */ b) => a.name.localeCompare(b.name));
  return html`<${Page} title=${t('donor.list')} back=${BACK} now="more" className="list"><div class="left">
    <div class="id"><h1 tabindex="-1">${t('donor.list')}</h1></div>
    ${
      rows.length
        ? html`<ul class="sheet">${rows.map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/donor/${one.id}`} icon="i-apart" name=${one.name} says=${one.says} /></li>`)}</ul>`
        : html`<${Missing} says=${t('donor.none')} />`
    }
    <${Dock}><${Act} href="/strip" label=${t('donor.strip.new')} /></${Dock}></div></${Page}>`;
}

/** How many pieces came from each donor. @param {any[]} parts @returns {Map<string, number>} */
function countsOf(parts) {
  /** @type {Map<string, number>} */
  const counts = new Map();
  for (const part of parts) {
    const donor = value(part, 'donor');
    counts.set(donor, (counts.get(donor) ?? 0) + (quantity(part) ?? 0));
  }
  return counts;
}
