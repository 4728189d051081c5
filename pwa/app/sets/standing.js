/** A set as it stands: its pieces in their places, what they span, spares, what changed since. */
import { Caution, html, Key, Page } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { t } from '../texts/index.js';
import { figure, namesSay, othersOf } from './says.js';

const MARKED = ['use', 'spare', 'machine', 'scrap'];

/** @param {{set: any, back: any}} props */
export function Standing({ set, back }) {
  const { name, hidden, says, build, kind, pieces, spares, changed } = set;
  const title = name ?? t('set.title');
  return html`<${Page} title=${title} back=${back} demo=${set.invented} className="choosing" quiet><div class="left">
    <div class="id"><h1 tabindex="-1">${title}</h1><p class="soft">${[build?.name, says].filter(Boolean).join(' · ')}</p></div>
    ${hidden && html`<${Caution} word="notice" says=${t('set.struck')} />`}
    ${!hidden && changed.length > 0 && html`<${Caution} says=${t('set.changed', { n: changed.length })} />`}
    ${!hidden && html`<${Claimed} set=${set} />`}
    <ul class="sheet set-spread">${set.spread.map((/** @type {any} */ one) => html`<${Spread} key=${one.id} one=${one} />`)}</ul>
    <div class="pair">${kind && html`<${Key} className="press" href=${`/set/new?kind=${encodeURIComponent(kind.id)}`} label=${t('set.again')} />`}
      ${!hidden && html`<${Key} className="press" href=${`/set/${set.id}?strike=1`} icon="i-strike" label=${t('set.strike')} />`}</div></div>
    <div class="right form"><section class="stack"><h2>${t('set.places')}</h2><ol class="sheet">${pieces.map(
      (/** @type {any} */ piece) =>
        html`<li key=${`${piece.id} ${piece.place}`}><${Row} href=${`/part/${piece.id}`} icon=${iconOf(piece)} name=${piece.name ?? piece.id} says=${changesSay(piece)} figure=${piece.place ?? ''} /></li>`,
    )}</ol></section>
    ${
      spares.length > 0 &&
      html`<section class="stack"><h2>${t('set.spares')}</h2><ol class="sheet">${spares.map(
        (/** @type {any} */ piece) =>
          html`<li key=${piece.id}><${Row} href=${`/part/${piece.id}`} icon=${iconOf(piece)} name=${piece.name ?? piece.id} says=${changesSay(piece)} figure=${String(piece.rank)} /></li>`,
      )}</ol></section>`
    }</div></${Page}>`;
}

/** @param {any} piece */
const iconOf = ({ verdict }) => (MARKED.includes(verdict) ? `v-${verdict}` : 'i-find');

/** @param {any} piece */
const changesSay = ({ verdict, changes, also = [] }) =>
  [
    MARKED.includes(verdict) && t(`verdict.${verdict}`),
    ...changes.map((/** @type {string} */ word) => t(`set.change.${word}`)),
    also.length > 0 && t('set.also', { set: namesSay(also) }),
  ]
    .filter(Boolean)
    .join(' · ');

/** Pieces that another set holds, too: which set keeps them is for a person to say. @param {{set: any}} props */
function Claimed({ set: { pieces, claimed } }) {
  if (!claimed.length) return null;
  const held = (/** @type {string} */ id) =>
    pieces.filter((/** @type {any} */ { also }) =>
      also.some((/** @type {any} */ one) => one.id === id),
    );
  return html`<${Caution} says=${t('set.claimed', { n: new Set(claimed).size })} /><ul class="sheet">${othersOf(
    pieces,
  ).map(
    ({ id, name }) =>
      html`<li key=${id}><${Row} href=${`/set/${id}`} icon="i-set-of" name=${name ?? id} says=${t('set.claimed.holds', { pieces: namesSay(held(id)) })} /></li>`,
  )}</ul>`;
}

/** @param {{one: any}} props */
function Spread({ one }) {
  const { name, unit, spread, low, high, decimals } = one;
  if (spread === null)
    return html`<li class="row plain"><b>${name}</b><span class="fig">–</span></li>`;
  const range = `${figure(low, decimals)} – ${figure(high, decimals)} ${unit ?? ''}`;
  return html`<li class="row plain"><span class="says"><b>${name}</b><span class="soft">${range}</span></span>
    <span class="fig">${figure(spread, decimals)} ${unit ?? ''}</span></li>`;
}
