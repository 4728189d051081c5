/** Holder record: what is in here, and where does it stand. */
import { holder as holderView } from '../../views/holder.js';
import { day } from '../dates.js';
import { Asks } from '../frame/asks.js';
import { placeWords, Standing } from '../frame/facts.js';
import { Act, Code, Dock, Empty, html, Missing, Page, Wait } from '../frame/index.js';
import { countWords, Many } from '../frame/many.js';
import { History, Notes } from '../frame/notes.js';
import { Row } from '../frame/row.js';
import { useSlice } from '../frame/store.js';
import { FormMark, formIcon, HolderWays } from '../frame/ways.js';
import { t } from '../texts/index.js';
import { capital, inSentence } from '../words.js';

/** The mark before a row, and before one part of it. @param {any} row */
function iconOf(row) {
  if (row.heading === 'holder') return formIcon(row.form);
  return (
    { use: 'v-use', spare: 'v-spare', machine: 'v-machine', scrap: 'v-scrap' }[
      /** @type {string} */ (row.mark)
    ] ?? 'i-bag'
  );
}

/** @param {any} row */
const rowWords = (row) =>
  [
    row.heading === 'holder' ? t('row.holder') : countWords(row.verdicts),
    row.gone > 0 ? t('count.gone', { n: row.gone }) : '',
    row.id && row.parts[0]?.own_place ? t('row.own', { place: row.parts[0].own_place }) : '',
  ]
    .filter(Boolean)
    .join(', ');

/** @param {any} one */
const pieceWords = (one) =>
  [one.gone || t(`mark.${one.mark}`), one.own_place && t('row.own', { place: one.own_place })]
    .filter(Boolean)
    .join(', ');

/** Holders inside it with their form, so that a tray looks like one. @param {any} holder @param {any} workshop */
const withForms = (holder, workshop) => ({
  ...holder,
  rows: holder.rows.map((/** @type {any} */ row) => ({
    ...row,
    form: workshop.subject(row.id)?.fields.form?.value ?? null,
  })),
});

/** @param {{holder: any}} props */
function Content({ holder }) {
  if (holder.rows.length === 0)
    return html`<${Empty} icon=${formIcon(holder.form)} says=${t('holder.empty', { form: t(`form.${holder.form ?? 'other'}`) })} />`;
  const here = holder.rows.filter((/** @type {any} */ row) => !awayWhole(row));
  const away = holder.rows.filter(awayWhole);
  return html`${here.length > 0 && html`<${Rows} rows=${here} />`}
    ${away.length > 0 && html`<div class="sect"><h2>${t('holder.away')}</h2></div><${Rows} rows=${away} />`}`;
}

/** Everything of this row is somewhere else for now. @param {any} row */
const awayWhole = (row) => row.gone > 0 && row.gone === row.parts.length;

/** @param {{rows: any[]}} props */
function Rows({ rows }) {
  return html`<ul class="sheet">${rows.map((row) =>
    row.id
      ? html`<li key=${row.id}><${Row} href=${`/${row.heading}/${row.id}`} icon=${iconOf(row)} name=${row.name} says=${rowWords(row)} figure=${row.quantity} /></li>`
      : html`<${Many} key=${row.kind} row=${row} says=${rowWords(row)} iconOf=${iconOf} partSays=${pieceWords} />`,
  )}</ul>`;
}

/** Where it went: into something, or away in words of their own. @param {any} one */
function aim({ gone, to_name: to, where, made }) {
  const inside = to && !gone;
  const place = gone || to || where || t('place.unknown');
  return t(inside ? 'left.to' : 'left.gone', { place, day: day(made) });
}

/** @param {{holder: any}} props */
function Left({ holder }) {
  if (holder.lately.length === 0) return null;
  return html`<div class="sect"><h2>${t('holder.left')}</h2></div><ul class="sheet">${holder.lately.map(
    (/** @type {any} */ one) =>
      html`<li key=${one.id}><${Row} href=${`/part/${one.id}`} icon="i-move" name=${one.name} says=${aim(one)} /></li>`,
  )}</ul>`;
}

/** @param {{left: number, of: number}} facts */
const leftWords = (facts) =>
  t(facts.of > 1 ? 'holder.inspect.second' : 'holder.inspect.only', facts);

/** @param {{holder: any}} props */
function Next({ holder }) {
  const { next } = holder;
  if (next.do === 'none')
    return holder.rows.length > 0
      ? null
      : html`<${Dock}><${Act} href="/scan" label=${t('doors.scan')} second=${t('holder.empty.second')} /></${Dock}>`;
  const facts = { name: inSentence(next.name ?? ''), left: next.left, of: next.of };
  const inspect = next.do === 'inspect';
  const href = inspect
    ? `/inspect/${holder.id}${next.kind ? `?kind=${next.kind}` : ''}`
    : `/${next.heading}/${next.id}`;
  return html`<${Dock}><${Act} href=${href} label=${t(inspect ? 'holder.inspect' : 'holder.open', facts)} second=${inspect ? leftWords(facts) : ''} /></${Dock}>`;
}

/** @param {{holder: any}} props */
function Head({ holder }) {
  const place = holder.lies[0] && placeWords({ ...holder.lies[0], chain: holder.chain.slice(1) });
  const where = [place && [place.name, place.rest].filter(Boolean).join(', '), holder.note]
    .filter(Boolean)
    .join('. ');
  const { counts } = holder;
  const count = [
    t('holder.parts', { n: counts.parts - counts.gone }),
    counts.holders > 0 ? t('holder.holders', { n: counts.holders }) : '',
    counts.gone > 0 ? t('count.more-gone', { n: counts.gone }) : '',
  ];
  return html`<section class="id"><h1 tabindex="-1">${holder.name || t('record.nameless')}</h1><p class="where">${capital(where || t('place.unknown'))}</p>
    <div class="about"><p class="verdict small"><${FormMark} form=${holder.form} /><span>${count.filter(Boolean).join(', ')}</span></p>
    ${holder.codes[0] && html`<${Code} code=${holder.codes[0]} />`}</div></section>`;
}

/** @param {{holder: any, store: any}} props */
const Record = ({
  holder,
  store,
}) => html`<div class="left"><${Head} holder=${holder} /><${Asks} of=${holder} store=${store} /><${Next} holder=${holder} /></div>
  <div class="right"><div class="sect first"><h2>${t('holder.in-it')}</h2></div><${Content} holder=${holder} /><${Left} holder=${holder} />
  <${Notes} of=${holder} /><${Standing} of=${holder} /><${HolderWays} holder=${holder} /><${History} of=${holder} /></div>`;

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { state, workshop } = useSlice(
    store,
    (s) => s.holderSlice(params.id),
    [params.id],
    (s) => s.known('holder', params.id),
  );
  const holder = workshop && withForms(holderView(workshop, params.id), workshop);
  const missing = holder && (holder.hidden || !holder.here);
  return html`<${Page} title=${holder?.name ?? ''} code=${holder?.codes?.[0]} back=${{ to: '/scan', says: t('doors.scan') }} ready=${state === 'ready'}>
    ${!holder && html`<div class="left"><${Wait} /></div>`}
    ${missing && html`<div class="left"><section class="id"><h1 tabindex="-1">${t(holder.hidden ? 'hidden' : 'here')}</h1></section><${Missing} says=${holder.hidden ? holder.name : t('here.holder')} /><${Dock}><${Act} href="/sync" label=${t('sync')} second=${t('here.sync')} /></${Dock}></div>`}
    ${holder && !missing && html`<${Record} holder=${holder} store=${store} />`}</${Page}>`;
}
