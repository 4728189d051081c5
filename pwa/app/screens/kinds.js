/** The kinds of the workshop, each with how many parts are of it. */

import { value } from '../../log/workshop.js';
import { Act, Dock, html, Missing, Page, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { t } from '../texts/index.js';

const BACK = { to: '/more', says: t('form.back') };

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop: kinds } = useSlice(store, (s) => s.allOf('kind'), []);
  const { workshop: parts } = useSlice(store, (s) => s.allOf('part'), []);
  if (!kinds || !parts)
    return html`<${Page} title=${t('kind.list')} back=${BACK} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const counts = countsOf(parts.all('part'));
  const rows = kinds
    .all('kind')
    .map((/** @type {any} */ kind) => rowOf(kind, counts))
    .sort((/** @type {any} */ a, /** @type {any} */ b) => a.name.localeCompare(b.name));
  return html`<${Page} title=${t('kind.list')} back=${BACK} now="more" className="list"><div class="left">
    <div class="id"><h1 tabindex="-1">${t('kind.list')}</h1></div>
    ${
      rows.length
        ? html`<ul class="sheet">${rows.map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/kind/${one.id}`} icon="i-kind" name=${one.name} says=${one.says} /></li>`)}</ul>`
        : html`<${Missing} says=${t('kind.none')} />`
    }
    <${Dock}><${Act} href="/kind/new" label=${t('kind.new')} /></${Dock}></div></${Page}>`;
}

/** How many parts are of each kind. @param {any[]} parts @returns {Map<string, number>} */
export function countsOf(parts) {
  /** @type {Map<string, number>} */
  const counts = new Map();
  for (const part of parts) {
    const kind = value(part, 'kind');
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return counts;
}

/** @param {any} kind @param {Map<string, number>} counts */
function rowOf(kind, counts) {
  const looks = value(kind, 'criteria') ?? [];
  const says = [
    t('kind.parts', { n: counts.get(kind.id) ?? 0 }),
    t('kind.looks', { n: looks.length }),
  ].join(' · ');
  return { id: kind.id, name: value(kind, 'name') ?? '', says };
}
