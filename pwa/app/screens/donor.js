/** A donor: what came from it, how it was judged, what was paid, and the way to strip on. */

import { donor as donorView } from '../../views/donor.js';
import { Fact } from '../frame/facts.js';
import { Act, Dock, html, Key, Missing, Page, useSlice, Wait } from '../frame/index.js';
import { countWords, Many } from '../frame/many.js';
import { Notes } from '../frame/notes.js';
import { Row } from '../frame/row.js';
import { hasIcon } from '../icons.js';
import '../texts/strip.js';
import { t } from '../texts/index.js';
import { local } from '../values.js';

const BACK = { to: '/donors', says: t('form.back') };

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { workshop } = useSlice(store, (s) => s.donorSlice(params.id), [params.id]);
  if (!workshop)
    return html`<${Page} title=${t('donor.list')} back=${BACK} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const donor = donorView(workshop, params.id);
  if (donor.heading !== 'donor' || donor.hidden)
    return html`<${Page} title=${t('donor.not-here')} back=${BACK}><div class="left"><h1 tabindex="-1" class="gone">${t('donor.not-here')}</h1><${Missing} says=${t('donor.not-here')} then=${t('run.not-here.then')} /></div></${Page}>`;
  const n = donor.counts.parts;
  const unseen = donor.rows.flatMap((row) => row.parts).find(({ mark }) => mark === 'look');
  return html`<${Page} title=${donor.name ?? ''} back=${BACK} now="more"><div class="left">
    <section class="id"><h1 tabindex="-1">${donor.name || t('record.nameless')}</h1><p class="where">${[t('donor.parts', { n }), countWords(donor.counts)].filter(Boolean).join(': ')}</p></section>
    <${Facts} donor=${donor} />
    <${Dock}><${Act} href=${`/strip?donor=${donor.id}`} label=${t('donor.strip')} second=${t('donor.strip.second', { n })} /></${Dock}></div>
    <div class="right"><div class="sect"><h2>${t('donor.came')}</h2></div><${Came} rows=${donor.rows} />
    <${Notes} of=${donor} />
    <div class="pair">${unseen && html`<${Key} className="second-act press wide" href=${`/inspect/${unseen.id}`} icon="i-find" label=${t('donor.inspect', { name: unseen.name ?? '' })} />`}<${Key} href=${`/history/donor/${donor.id}`} icon="i-history" label=${t('way.history')} /><${Key} href=${`/edit/${donor.id}`} icon="i-type" label=${t('way.edit')} /></div></div></${Page}>`;
}

/** @param {{donor: any}} props */
function Facts({ donor }) {
  const { engine, bought, note, paid } = donor;
  const prices = paid.map((/** @type {any} */ one) =>
    one.price
      ? [`${local(one.price.value)} ${one.price.unit}`, one.seller].filter(Boolean).join(', ')
      : t('donor.paid.none'),
  );
  const rows = [
    engine && html`<${Fact} says=${t('donor.engine')} name=${engine} />`,
    bought && html`<${Fact} says=${t('donor.bought')} name=${bought} />`,
    ...paid.map(
      (/** @type {any} */ one, /** @type {number} */ at) =>
        html`<${Fact} key=${one.id} says=${t('donor.paid')} name=${prices[at]} rest=${one.name} />`,
    ),
    note && html`<${Fact} says=${t('fact.note')} rest=${note} />`,
  ].filter(Boolean);
  return rows.length > 0 && html`<dl class="sheet facts">${rows}</dl>`;
}

/** @param {{rows: any[]}} props */
function Came({ rows }) {
  if (!rows.length) return html`<p class="soft">${t('donor.came.none')}</p>`;
  return html`<ul class="sheet">${rows.map((row) =>
    row.id
      ? html`<li key=${row.id}><${Row} href=${`/part/${row.id}`} icon=${iconOf(row)} name=${row.name} says=${partWords(row.parts[0], row.from[0])} figure=${row.quantity} /></li>`
      : html`<${Many} key=${row.kind} row=${row} says=${countWords(row.verdicts)} iconOf=${iconOf} partSays=${(/** @type {any} */ one, /** @type {number} */ at) => partWords(one, row.from[at])} />`,
  )}</ul>`;
}

/** @param {any} one @param {string | null} from */
const partWords = (one, from) =>
  [t(`mark.${one.mark}`), from && t('donor.from', { places: from })].filter(Boolean).join(', ');

/** @param {any} row */
const iconOf = (row) => (hasIcon(`v-${row.mark}`) ? `v-${row.mark}` : 'i-part');
