/** Choosing a set: how many, by what, which pieces, which places, and what becomes of the rest. */
import { useMemo } from 'preact/hooks';
import { pool as poolOf } from '../../views/pool.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, Count } from '../forms_fields.js';
import { Act, Dock, html, Key, Missing, Page, say, Wait } from '../frame/index.js';
import { useLater } from '../later.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';
import { entriesOf } from './accept.js';
import { Elsewhere, ForBuild, onlyBuild } from './for_build.js';
import { FRESH, reckon, stated, weightOf, withoutWish } from './model.js';
import { HeldOff, Pieces } from './pieces.js';
import { Places, seated } from './places.js';
import { Legend, Plot } from './plot.js';
import { setSays, spreadSays } from './says.js';

/** @type {WeakMap<object, any>} a pool is told once for a workshop */
const pools = new WeakMap();

/** @param {any} workshop @param {string} kind */
function poolOnce(workshop, kind) {
  const had = pools.get(workshop) ?? poolOf(workshop, kind);
  pools.set(workshop, had);
  return had;
}

/** @param {any} props */
export function Choose({ store, go, workshop, kind, back }) {
  const [draft, change, forget] = useDraft(store, `set:${kind}`, FRESH);
  const pool = poolOnce(workshop, kind);
  const title = t('set.choose', { kind: pool.plural ?? pool.name ?? '' });
  const page = { title, back, quiet: true };
  if (!draft)
    return html`<${Page} ...${page} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const nothing = nothingToChoose(pool);
  if (nothing)
    return html`<${Page} ...${page}><div class="left"><div class="id"><h1 tabindex="-1">${title}</h1></div>
      <${Missing} says=${t(nothing)} then=${t(`${nothing}.then`)} /><${Key} href=${`/kind/${kind}`} label=${t('set.kind')} /><${HeldOff} off=${pool.off} /></div></${Page}>`;
  return html`<${Chosen} ...${{ store, go, workshop, pool, page, draft, change, forget }} />`;
}

/** @param {any} pool */
function nothingToChoose(pool) {
  if (!pool.measures.length) return 'set.no-measure';
  return pool.pieces.length ? null : 'set.empty';
}

/** @param {any} props */
function Chosen({ store, go, workshop, pool, page, draft, change, forget }) {
  const { keep, trouble } = useKeep(store);
  const asked = useMemo(
    () => reckon(pool, draft),
    [pool, draft.count, draft.weights, draft.pinned, draft.excluded],
  );
  const pieces = stated(pool, asked);
  const later = useLater();
  const inSet = new Set(asked.found?.chosen ?? []);
  const seats = seated(
    pieces.filter(({ id }) => inSet.has(id)),
    draft.places,
  );
  const names = new Map(pieces.map(({ id, name }) => [id, name ?? id]));
  const says = asked.found ? setSays(asked, names) : '';
  const build = draft.build ?? onlyBuild(workshop);
  const name = t('set.name', { n: asked.count, kind: pool.plural ?? pool.name ?? '' });
  const act = async () => {
    const told = { workshop, pool, asked, seats, draft, build: build || null, name, says };
    const entries = entriesOf(told);
    if (!(await keep(entries))) return false;
    await forget();
    feedback('kept');
    say(t('set.kept', { name }));
    go(`/set/${entries[0].about}`, { replace: true });
    return true;
  };
  const why = whyNot(asked, seats, draft);
  return html`<${Page} ...${page} className="choosing"><div class="left form">
    <div class="id"><h1 tabindex="-1">${page.title}</h1></div>
    <${HowMany} ...${{ pool, asked, change }} />
    <div class="sheet set-plot"><${Plot} pieces=${pieces} asked=${asked} /><${Legend} /></div>
    <${Weights} ...${{ pool, draft, change }} />
    <p class="set-says" role="status">${says || asked.trouble || t('set.no-measure-chosen')}</p>
    <${WishCost} asked=${asked} />
    <${Dock}><${Act} confirm disabled=${Boolean(why)} onPress=${act} label=${t('set.keep')} second=${why || name} /></${Dock}></div>
    <div class="right form" aria-busy=${String(!later)}>${
      later &&
      html`<${Pieces} ...${{ pieces, asked, draft, change }} />
    ${asked.found && html`<${Places} ...${{ seats, draft, change }} /><${Elsewhere} n=${away(seats)} ...${{ draft, change }} /><${Rest} ...${{ asked, draft, change, workshop, build }} />`}
    <${HeldOff} off=${pool.off} />`
    }</div>${trouble}</${Page}>`;
}

/** How many pieces would go elsewhere than to their own place. @param {any[]} seats */
const away = (seats) => seats.filter(({ elsewhere }) => elsewhere).length;

/** @param {any} asked @param {any[]} seats @param {any} draft */
function whyNot({ found, trouble }, seats, draft) {
  if (!found) return trouble || t('set.no-measure-chosen');
  const held = away(seats) > 0 && !draft.why.trim();
  return held ? t('set.place.wants') : '';
}

/** @param {any} props */
function HowMany({ pool, asked, change }) {
  const { count } = asked;
  const most = Math.max(1, pool.pieces.length);
  const put = (/** @type {number} */ to) => change({ count: Math.min(most, Math.max(1, to)) });
  return html`<${Count} label=${t('set.count')} value=${count} most=${most} onChange=${put} />
    <div class="pair"><${Key} className="press" label=${t('set.fewer')} onPress=${() => put(count - 4)} />
      <${Key} className="press" label=${t('set.more')} onPress=${() => put(count + 4)} /></div>`;
}

/** What counts how much; under the picture, which keeps its height while they are pressed. @param {any} props */
function Weights({ pool, draft, change }) {
  const weigh = (/** @type {any} */ measure) => (/** @type {string} */ word) =>
    change((/** @type {any} */ was) => ({ weights: { ...was.weights, [measure.id]: word } }));
  const words = ['0', '1', '2', '4'].map((word) => ({
    value: word,
    says: t(word === '0' ? 'set.weight.off' : `set.weight.${word}`),
  }));
  return pool.measures.map(
    (/** @type {any} */ one, /** @type {number} */ at) =>
      html`<${Chips} key=${one.id} label=${one.name ?? one.id} value=${String(weightOf(draft, one, at))} words=${words} onChange=${weigh(one)} />`,
  );
}

/** What pins and exclusions cost. @param {any} props */
function WishCost({ asked }) {
  if (!asked.found || !(asked.wish.pinned.length + asked.wish.excluded.length)) return null;
  const free = withoutWish(asked);
  if (!free.found) return null;
  const spread = spreadSays(asked, free.found.spreads);
  const same = spread === spreadSays(asked, asked.found.spreads);
  return html`<p role="status">${same ? t('set.wish.free') : t('set.wish', { spread })}</p>`;
}

/** @param {any} props */
function Rest({ asked, draft, change, workshop, build }) {
  const rest = ['leave', 'spare'].map((word) => ({ value: word, says: t(`set.rest.${word}`) }));
  const n = asked.found.spares.length;
  return html`<${ForBuild} ...${{ workshop, build, change }} />
    ${n > 0 && html`<${Chips} label=${t('set.rest', { n })} value=${draft.rest} words=${rest} onChange=${(/** @type {string} */ word) => change({ rest: word })} />`}`;
}
