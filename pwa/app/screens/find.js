/** Find: where is that thing? Words or a code, hits while typing, from this device alone. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { find as findView, prepare } from '../../views/find.js';
import { VERDICTS } from '../../views/things.js';
import { pathOf } from '../frame/code_found.js';
import { Act, Dock, Empty, html, Icon, Page, say, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { useAnswer } from '../frame/store.js';
import { codeGroups } from '../frame/told.js';
import { t } from '../texts/index.js';

/** The last words, so that coming back finds the same list. */
let lastQuery = '';

/** @type {Record<string, string>} */
const icons = {
  holder: 'i-bin',
  joint: 'i-star',
  wrench: 'i-wrench',
  instrument: 'i-gauge',
  step: 'i-hold',
  donor: 'i-box',
  build: 'i-box',
};

const RECORDED = ['part', 'holder', 'joint', 'wrench', 'instrument'];

/** Things without a record of their own open the form that changes them. @param {any} hit */
function aimOf(hit) {
  if (RECORDED.includes(hit.heading)) return pathOf(hit);
  return ['donor', 'build'].includes(hit.heading) ? `/edit/${hit.id}` : undefined;
}

/** What is said of a hit: its verdict, and where it is. @param {any} hit */
function saysOf({ verdict, at }) {
  const word = VERDICTS.includes(verdict) ? t(`verdict.${verdict}`) : '';
  return [word, at].filter(Boolean).join(' · ');
}

/** @param {any} hit */
const iconOf = ({ verdict, heading }) =>
  VERDICTS.includes(verdict) ? `v-${verdict}` : (icons[heading] ?? 'i-part');

/** @param {{hit: any}} props */
function Hit({ hit }) {
  return html`<${Row} href=${aimOf(hit) ?? '/find'} icon=${iconOf(hit)} name=${hit.name || t('record.nameless')} says=${saysOf(hit)} />`;
}

/** @param {{view: any}} props */
function Hits({ view }) {
  return html`${view.groups.map(
    (
      /** @type {any} */ group,
    ) => html`<section key=${group.heading} class="hits"><div class="sect"><h2>${t(`find.group.${group.heading}`)}</h2><span class="soft">${group.count}</span></div>
    <ul class="sheet">${group.hits.map((/** @type {any} */ hit) => html`<li key=${hit.id}><${Hit} hit=${hit} /></li>`)}</ul>${group.count > group.hits.length && html`<p class="soft also">${t('find.more', { n: group.count - group.hits.length })}</p>`}</section>`,
  )}`;
}

/** @param {{view: any}} props */
function None({ view }) {
  const near = view.near.length;
  return html`<div class="also"><${Empty} icon="i-find" says=${t('find.none', { query: view.query })} then=${near ? t('find.none.near', { n: near }) : t('find.none.then')} /></div>
    ${near > 0 && html`<ul class="sheet hits">${view.near.map((/** @type {any} */ hit) => html`<li key=${hit.id}><${Hit} hit=${hit} /></li>`)}</ul>`}`;
}

/** @param {any} view */
function firstAct(view) {
  const hit = view.groups[0]?.hits[0];
  if (view.code && view.count === 0)
    return html`<${Act} href=${`/L/${view.code}`} label=${t('find.code', { code: codeGroups(view.code) })} />`;
  const aim = hit && aimOf(hit);
  return aim
    ? html`<${Act} href=${aim} label=${t('find.open', { name: hit.name })} second=${t('find.count', { n: view.count })} />`
    : null;
}

/** @param {{store: any}} props */
export function screen({ store }) {
  const { value: rows } = useAnswer(() => store.findRows(), []);
  const ready = useMemo(() => rows && prepare(rows), [rows]);
  const [query, setQuery] = useState(lastQuery);
  const asked = query.trim();
  const view = ready && asked ? findView(ready, asked) : null;
  useEffect(() => {
    lastQuery = query;
  }, [query]);
  useEffect(() => {
    const told = setTimeout(() => view && say(t('find.count', { n: view.count })), 700);
    return () => clearTimeout(told);
  }, [view?.count, asked]);
  const act = view && firstAct(view);
  return html`<${Page} title=${t('find')} now="find" className=${act ? '' : 'list'}><div class="left"><section class="hello"><h1 tabindex="-1">${t('find')}</h1></section>
    <label class="find-field"><${Icon} name="i-find" /><span><span class="gone">${t('find.what')}</span>
    <input type="search" id="find-words" value=${query} placeholder=${t('find.what')} autocomplete="off" spellcheck=${false} enterkeyhint="search" onInput=${(/** @type {any} */ event) => setQuery(event.target.value)} /></span></label>
    ${!asked && html`<p class="soft also">${rows?.length === 0 ? t('find.empty') : t('find.how')}</p>`}${asked && !view && html`<${Wait} />`}
    ${act && html`<${Dock}>${act}</${Dock}>`}</div>
    <div class="right">${view && (view.count > 0 ? html`<${Hits} view=${view} />` : html`<${None} view=${view} />`)}</div></${Page}>`;
}
