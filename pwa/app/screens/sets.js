/** The sets of the workshop, and the kinds another can be chosen from. */
import { html, Missing, Page, useAnswer, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { useLater } from '../later.js';
import { listFrom, readList } from '../sets/read.js';
import { warm } from '../sets/ready.js';
import { namesSay, othersOf } from '../sets/says.js';
import { t } from '../texts/index.js';
import '../texts/sets.js';

const BACK = { to: '/more', says: t('form.back') };
const BACK_TO_SETS = { to: '/sets', says: t('form.back') };

/** So many rows fill a phone: sets first, then kinds; the others follow the first frame. */
const FIRST = 7;

/** @typedef {import('../sets/listed.js').KindLine} KindLine */

/** @param {{params: Record<string, string>}} props */
export function screen({ params }) {
  const { value: told } = useAnswer(readList, [], listFrom);
  const later = useLater(told);
  const title = t(params.more ? 'sets.more' : 'sets.title');
  const back = params.more ? BACK_TO_SETS : BACK;
  if (!told)
    return html`<${Page} title=${title} back=${back} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  warm();
  return html`<${Page} title=${title} back=${back} now="more" className="list"><div class="left" aria-busy=${String(!later)}>
    <div class="id"><h1 tabindex="-1">${title}</h1></div>${
      params.more
        ? html`<${Kinds} kinds=${later ? told.others : told.others.slice(0, FIRST)} />`
        : html`<${Sets} ...${told} later=${later} />`
    }</div></${Page}>`;
}

/** @param {import('../sets/listed.js').Listed & {later: boolean}} props */
function Sets({ sets, ready, others, later }) {
  const first = (/** @type {any[]} */ rows, took = 0) =>
    later ? rows : rows.slice(0, Math.max(0, FIRST - took));
  const kinds = first(ready.length ? ready : others, sets.length);
  const more = later && ready.length ? others.length : 0;
  return html`${sets.length ? html`<ul class="sheet">${first(sets).map((one) => html`<li key=${one.id}><${Row} href=${`/set/${one.id}`} icon="i-set-of" name=${one.name ?? ''} says=${saysOf(one)} /></li>`)}</ul>` : html`<${Missing} says=${t('sets.none')} />`}
    ${(later || kinds.length > 0) && html`<section class="stack"><h2>${t('sets.of')}</h2>${kinds.length ? html`<${Kinds} ...${{ kinds, more }} />` : html`<p class="soft">${t('sets.no-kinds')}</p>`}</section>`}
    ${
      later &&
      html`<section class="stack"><h2>${t('sets.together')}</h2><ul class="sheet"><li><${Row} href="/even" icon="i-even" name=${t('sets.even')} says=${t('sets.even.says')} /></li>
      <li><${Row} href="/shells" icon="i-fit" name=${t('sets.shells')} says=${t('sets.shells.says')} /></li></ul></section>`
    }`;
}

/** Kinds, each with how many pieces there are; behind the last row those without. @param {{kinds: KindLine[], more?: number}} props */
const Kinds = ({ kinds, more = 0 }) =>
  html`<ul class="sheet">${kinds.map(({ id, name, n }) => html`<li key=${id}><${Row} href=${`/set/new?kind=${encodeURIComponent(id)}`} icon="i-kind" name=${name} says=${t('sets.pool', { n })} /></li>`)}
    ${more > 0 && html`<li><${Row} href="/sets?more=1" icon="i-kind" name=${t('sets.more')} says=${t('sets.more.says', { n: more })} /></li>`}</ul>`;

/** @param {any} set */
const saysOf = (set) =>
  [
    t('sets.row', { n: set.pieces.length }),
    set.build?.name,
    set.changed.length && t('sets.changed', { n: set.changed.length }),
    set.claimed.length &&
      t('sets.claimed', {
        n: new Set(set.claimed).size,
        sets: namesSay(othersOf(set.pieces)),
      }),
  ]
    .filter(Boolean)
    .join(' · ');
