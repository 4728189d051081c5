/** The spares of all builds and donors, by kind; the scrap is one line, not forgotten. */
import { useMemo, useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { folded } from '../../views/find.js';
import { shelf as shelfView } from '../../views/shelf.js';
import { day } from '../dates.js';
import { feedback } from '../feedback.js';
import { TextField } from '../forms_fields.js';
import { html, Key, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { hasIcon } from '../icons.js';
import { useLater } from '../later.js';
import { useKeep } from '../run/keeping.js';
import { readKind } from '../shelf/read.js';
import { moreSays, spareSays } from '../shelf/says.js';
import { useWholeShelf } from '../shelf/whole.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';
import { capital } from '../words.js';

const BACK = { to: '/more', says: t('form.back') };

/** With more rows than these each kind shows its first few, and the way to all of them. */
const ROWS = 60;
const FEW = 3;
const MOST = 120;
/** So many kinds are in the first frame. */
const FIRST = 4;

/** @param {{params: Record<string, string>, store: any}} props */
export const screen = (props) =>
  props.params.kind
    ? html`<${OfKind} key=${props.params.kind} ...${props} />`
    : html`<${Whole} key="" ...${props} />`;

/** @param {any} props */
function OfKind(props) {
  const { workshop } = useSlice(props.store, (one) => readKind(one, props.params.kind), []);
  const shelf = useMemo(
    () =>
      workshop && {
        ...shelfView(workshop),
        builds: workshop.all('build'),
        whole: true,
        parted: false,
      },
    [workshop],
  );
  return html`<${Shelf} ...${props} shelf=${shelf} />`;
}

/** @param {any} props */
function Whole(props) {
  const shelf = useWholeShelf(props.store);
  return html`<${Shelf} ...${props} shelf=${props.params.scrap && !shelf?.whole ? null : shelf} />`;
}

/** @param {any} props */
function Shelf({ params, store, shelf }) {
  const [query, setQuery] = useState('');
  const { keep, trouble } = useKeep(store);
  const title = t(params.scrap ? 'shelf.scrap' : 'shelf.title');
  const back = params.scrap || params.kind ? { to: '/shelf', says: t('form.back') } : BACK;
  if (!shelf)
    return html`<${Page} title=${title} back=${back} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const body = params.scrap
    ? html`<${Scrap} lines=${shelf.scrap} />`
    : html`<${Spares} ...${{ shelf, keep, query, setQuery, kind: params.kind ?? '' }} />`;
  return html`<${Page} title=${title} back=${back} now="more" className="list"><div class="left">
    <div class="id"><h1 tabindex="-1">${title}</h1>${!params.scrap && html`<p class="where">${countSays(shelf)}</p>`}</div>${body}</div>${trouble}</${Page}>`;
}

/** How many there are, once all of them are known. @param {any} shelf */
function countSays({ groups, free, whole }) {
  if (!whole) return t('wait.reading');
  const n = groups.reduce(
    (/** @type {number} */ sum, /** @type {any} */ one) => sum + one.count,
    0,
  );
  return `${t('shelf.count', { n })}, ${t('shelf.free', { n: free })}`;
}

/** @param {any} props */
function Spares({ shelf, keep, query, setQuery, kind }) {
  const later = useLater();
  const all = shelf.groups.filter((/** @type {any} */ one) => !kind || one.kind?.id === kind);
  const groups = query.trim() ? found(all, query) : all;
  const most = mostOf(groups, shelf.parted && !query.trim());
  const builds = shelf.builds.map((/** @type {any} */ one) => ({
    id: one.id,
    name: value(one, 'name') ?? t('fact.build'),
  }));
  const shown = later ? groups : groups.slice(0, FIRST);
  return html`${all.length > 0 && html`<${TextField} id="shelf-find" label=${t('shelf.find')} value=${query} onChange=${setQuery} />`}
    ${shelf.whole && html`<${Nothing} ...${{ all, groups, query }} />`}
    <div class="stack" aria-busy=${String(!later || !shelf.whole)}>${shown.map(
      (/** @type {any} */ group) => html`<section key=${group.kind?.id ?? ''}>
      <div class="sect"><h2>${group.name ?? t('shelf.no-kind')}</h2><span class="soft">${t('shelf.count', { n: group.count })}</span></div>
      <ul class="sheet">${group.rows.slice(0, most).map((/** @type {any} */ row) => html`<${Spare} key=${row.id} ...${{ row, builds, keep }} />`)}
      ${group.rows.length > most && html`<li><${More} group=${group} most=${most} /></li>`}</ul></section>`,
    )}
    ${kind ? html`<${Key} href="/shelf" icon="i-tray" label=${t('shelf.all')} />` : later && shelf.whole && html`<${Scrapped} n=${shelf.scrap.length} />`}</div>`;
}

/** The rows each word of the search is in. @param {any[]} groups @param {string} query */
const found = (groups, query) =>
  groups
    .map((one) => ({ ...one, rows: one.rows.filter((/** @type {any} */ row) => fits(row, query)) }))
    .filter((one) => one.rows.length > 0);

/** How many of each kind; parted: as if of many, so that what is shown does not grow later. @param {any[]} groups @param {boolean} parted */
function mostOf(groups, parted) {
  const many = groups.reduce((sum, { rows }) => sum + rows.length, 0);
  return parted || (many > ROWS && groups.length > 1) ? FEW : MOST;
}

/** @param {{all: any[], groups: any[], query: string}} props */
function Nothing({ all, groups, query }) {
  if (all.length === 0) return html`<${Missing} says=${t('shelf.none')} />`;
  if (groups.length > 0) return null;
  return html`<p class="soft" role="status">${t('shelf.nothing', { query })}</p>`;
}

/** @param {{n: number}} props */
const Scrapped = ({ n }) =>
  n > 0 &&
  html`<ul class="sheet"><li><${Row} href="/shelf?scrap=1" icon="v-scrap" name=${t('shelf.scrapped', { n })} /></li></ul>`;

/** All of a kind; of one kind alone, that the rest is found by its words. @param {{group: any, most: number}} props */
function More({ group, most }) {
  const n = group.rows.length;
  if (most === MOST || !group.kind)
    return html`<p class="row plain soft">${t('shelf.more.find', { n: n - most })}</p>`;
  const href = `/shelf?kind=${encodeURIComponent(group.kind.id)}`;
  return html`<${Row} href=${href} icon="i-shelf" name=${t('shelf.more', { n })} />`;
}

/** Whether each word is somewhere in what is said of it. @param {any} row @param {string} query */
function fits(row, query) {
  const kind = [row.kind?.name, row.plural, row.name, row.for].join(' ');
  const words = folded(`${kind} ${spareSays(row)} ${moreSays(row)}`);
  return folded(query)
    .split(' ')
    .every((/** @type {string} */ word) => words.includes(word));
}

/** @param {string} mark */
const iconOf = (mark) => (hasIcon(`v-${mark}`) ? `v-${mark}` : 'i-part');

/** One spare; its row opens to the readings and to what it may be used for. @param {any} props */
function Spare({ row, builds, keep }) {
  const [open, setOpen] = useState(false);
  const use = async (/** @type {any} */ build) => {
    const body = { fields: { build: build.id } };
    if (!(await keep([{ heading: 'part', about: row.id, body }]))) return;
    feedback('kept');
    say(t('shelf.used', { name: row.name ?? '', build: build.name }));
  };
  const others = builds.filter((/** @type {any} */ one) => one.id !== row.build);
  return html`<li><${Row} icon=${iconOf(row.verdict)} name=${row.name || t('record.nameless')} says=${spareSays(row)} figure=${row.quantity} onPress=${() => setOpen(!open)} />
    ${
      open &&
      html`<div class="stack"><p>${capital(moreSays(row))}</p><div class="chips">
      ${others.map((/** @type {any} */ one) => html`<${Key} key=${one.id} className="press" label=${t('shelf.use', { build: one.name })} onPress=${() => use(one)} />`)}
      <${Key} className="press" href=${`/part/${row.id}`} icon="i-part" label=${t('shelf.open')} /></div>
      ${builds.length === 0 && html`<p class="soft">${t('shelf.no-build')}</p>`}</div>`
    }</li>`;
}

/** @param {{lines: any[]}} props */
function Scrap({ lines }) {
  return html`<ul class="sheet">${lines.map((line) => {
    const says = [line.reason ?? t('shelf.no-reason'), day(line.made)].filter(Boolean).join(', ');
    return html`<li key=${line.id}><${Row} href=${`/part/${line.id}`} icon="v-scrap" name=${line.name || t('record.nameless')} says=${says} figure=${line.quantity} /></li>`;
  })}</ul>`;
}
