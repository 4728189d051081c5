/** The sets of the workshop, and the kinds another can be chosen from. */
import { value } from '../../log/workshop.js';
import { chosen } from '../../views/chosen.js';
import { html, Missing, Page, useAnswer, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { useLater } from '../later.js';
import { warm } from '../sets/ready.js';
import { t } from '../texts/index.js';
import { natural } from '../words.js';
import '../texts/sets.js';

const BACK = { to: '/more', says: t('form.back') };

/** So many kinds are in the first frame. */
const FIRST = 8;

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop } = useSlice(store, (one) => one.setsSlice(), []);
  const { value: counts } = useAnswer(() => store.countsByKind(), []);
  const later = useLater(workshop && counts);
  if (!workshop || !counts)
    return html`<${Page} title=${t('sets.title')} back=${BACK} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  warm();
  const sets = byName(workshop, 'set').map(({ id }) => chosen(workshop, id));
  const kinds = byName(workshop, 'kind');
  return html`<${Page} title=${t('sets.title')} back=${BACK} now="more" className="list"><div class="left">
    <div class="id"><h1 tabindex="-1">${t('sets.title')}</h1></div>
    ${sets.length ? html`<ul class="sheet">${sets.map((one) => html`<li key=${one.id}><${Row} href=${`/set/${one.id}`} icon="i-set-of" name=${one.name ?? ''} says=${saysOf(one)} /></li>`)}</ul>` : html`<${Missing} says=${t('sets.none')} />`}
    <section class="stack"><h2>${t('sets.of')}</h2>${
      kinds.length
        ? html`<ul class="sheet">${(later ? kinds : kinds.slice(0, FIRST)).map((kind) => html`<li key=${kind.id}><${Row} href=${`/set/new?kind=${encodeURIComponent(kind.id)}`} icon="i-kind" name=${value(kind, 'name') ?? ''} says=${t('sets.pool', { n: counts.get(kind.id) ?? 0 })} /></li>`)}</ul>`
        : html`<p class="soft">${t('sets.no-kinds')}</p>`
    }</section>
    ${
      later &&
      html`<section class="stack"><h2>${t('sets.together')}</h2><ul class="sheet"><li><${Row} href="/even" icon="i-even" name=${t('sets.even')} says=${t('sets.even.says')} /></li>
      <li><${Row} href="/shells" icon="i-fit" name=${t('sets.shells')} says=${t('sets.shells.says')} /></li></ul></section>`
    }</div></${Page}>`;
}

/** @param {any} workshop @param {string} heading @returns {any[]} */
const byName = (workshop, heading) =>
  workshop
    .all(heading)
    .sort((/** @type {any} */ one, /** @type {any} */ other) =>
      natural(String(value(one, 'name') ?? ''), String(value(other, 'name') ?? '')),
    );

/** @param {any} set */
const saysOf = (set) =>
  [
    t('sets.row', { n: set.pieces.length }),
    set.build?.name,
    set.changed.length && t('sets.changed', { n: set.changed.length }),
  ]
    .filter(Boolean)
    .join(' · ');
