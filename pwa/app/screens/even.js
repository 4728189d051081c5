/** Even weights: pistons, pins and rods put together place by place so that the totals agree. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, Count } from '../forms_fields.js';
import { Act, Dock, html, Key, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { useKeep } from '../run/keeping.js';
import { entriesOf } from '../sets/even_entries.js';
import { askedOf, elsewhere, evened, FRESH, remaining, weighedKinds } from '../sets/even_model.js';
import { EvenPlaces } from '../sets/even_places.js';
import { Elsewhere, ForBuild, onlyBuild } from '../sets/for_build.js';
import { readSets } from '../sets/read.js';
import { figure } from '../sets/says.js';
import { t } from '../texts/index.js';
import '../texts/sets.js';
import '../texts/even.js';

const BACK = { to: '/sets', says: t('form.back') };

/** @param {any} props */
export function screen({ store, go }) {
  const { workshop } = useSlice(store, readSets, []);
  const [draft, change, forget] = useDraft(store, 'even', FRESH);
  const title = t('even.title');
  const kinds = useMemo(() => (workshop ? weighedKinds(workshop) : []), [workshop]);
  const asked = useMemo(
    () => (workshop && draft ? askedOf(workshop, kinds, draft) : null),
    [workshop, kinds, draft],
  );
  const found = useEvened(asked);
  const page = { title, back: BACK, quiet: true };
  if (!asked || !draft || (asked.enough && !found))
    return html`<${Page} ...${page} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  if (!kinds.length)
    return html`<${Page} ...${page}><div class="left"><div class="id"><h1 tabindex="-1">${title}</h1></div>
      <${Missing} says=${t('even.none')} then=${t('even.none.then')} /><${Key} href="/kinds" icon="i-kind" label=${t('more.kinds')} /></div></${Page}>`;
  const shown = asked.enough ? found : null;
  const facts = { store, go, workshop, kinds, asked, found: shown, draft, change, forget };
  return html`<${Page} ...${page} className="choosing"><div class="left form"><div class="id"><h1 tabindex="-1">${title}</h1></div>
    <${Which} ...${facts} /><${Says} ...${facts} /><${Keep} ...${facts} /></div>
    <div class="right form">${shown && html`<${EvenPlaces} found=${shown} asked=${asked} change=${change} /><${Elsewhere} n=${elsewhere(shown.rows).length} ...${{ draft, change }} /><${ForBuild} ...${{ workshop, change }} build=${buildOf(workshop, asked, draft)} />`}</div></${Page}>`;
}

/** Reckoned after the screen is painted, so that no tap waits for it. @param {ReturnType<typeof askedOf> | null} asked */
function useEvened(asked) {
  const [found, setFound] = useState(/** @type {ReturnType<typeof evened> | null} */ (null));
  useEffect(() => {
    if (!asked?.enough) return undefined;
    const turn = setTimeout(() => setFound(evened(asked)));
    return () => clearTimeout(turn);
  }, [asked?.key]);
  return found;
}

/** @param {any} props */
function Which({ kinds, asked, draft, change }) {
  const toggle = (/** @type {string} */ id) =>
    change((/** @type {any} */ was) => ({
      kinds: was.kinds.includes(id)
        ? was.kinds.filter((/** @type {string} */ one) => one !== id)
        : [...was.kinds, id],
    }));
  return html`<fieldset><legend>${t('even.kinds')}</legend><div class="chips">${kinds.map(
    (/** @type {any} */ kind) =>
      html`<${Key} key=${kind.id} className="press" label=${kind.name} pressed=${draft.kinds.includes(kind.id)} onPress=${() => toggle(kind.id)} />`,
  )}</div></fieldset>
  ${asked.columns.map((/** @type {any} */ one) => html`<${From} key=${one.id} ...${{ one, draft, change }} />`)}
  ${asked.enough && html`<${Count} label=${t('even.count')} value=${asked.count} least=${1} most=${asked.most} onChange=${(/** @type {number} */ count) => change({ count })} />`}`;
}

/** From which set, by which weight; only where there is more than one. @param {any} props */
function From({ one, draft, change }) {
  const { id, name, sets, from, measures, measure } = one;
  const put = (/** @type {string} */ field) => (/** @type {string} */ word) =>
    change({ [field]: { ...draft[field], [id]: word } });
  const sources = [
    ...sets.map((/** @type {any} */ set) => ({ value: set.id, says: set.name })),
    { value: '', says: t('even.from.free') },
  ];
  const weights = measures.map((/** @type {any} */ each) => ({
    value: each.id,
    says: each.name ?? each.id,
  }));
  return html`${sets.length > 0 && html`<${Chips} label=${t('even.from', { kind: name })} value=${from} words=${sources} onChange=${put('from')} />`}
    ${measures.length > 1 && html`<${Chips} label=${t('even.measure', { kind: name })} value=${measure?.id ?? ''} words=${weights} onChange=${put('measure')} />`}`;
}

/** @param {any} found */
function spanSays({ low, high, unit, decimals }) {
  const facts = {
    span: figure(high - low, decimals),
    low: figure(low, decimals),
    high: figure(high, decimals),
    unit,
  };
  return t(facts.low === facts.high ? 'even.equal' : 'even.span', facts);
}

/** @param {any} props */
function Says({ asked, found }) {
  if (!found) return html`<p class="set-says" role="status">${wants(asked)}</p>`;
  const notes = asked.columns.flatMap((/** @type {any} */ one) => {
    const { name, pieces, off, sets, from } = one;
    const kind = name;
    const rest = from ? remaining(one).length : 0;
    const set = sets.find((/** @type {any} */ { id }) => id === from)?.name;
    return [
      pieces.length > asked.count &&
        t('even.taken', { count: asked.count, n: pieces.length, kind }),
      off > 0 && t('even.off', { n: off, kind }),
      rest > 0 && t('even.keeps', { n: rest, name: set || kind }),
    ];
  });
  const how =
    found.key !== asked.key ? 'even.working' : found.proved ? 'even.proved' : 'even.found';
  return html`<p class="set-says" role="status">${spanSays(found)}</p><p class="soft">${t(how)}</p>
    ${notes.filter(Boolean).map((/** @type {string} */ note) => html`<p key=${note}>${note}</p>`)}`;
}

/** @param {any} asked */
function wants({ columns }) {
  const empty = columns.filter((/** @type {any} */ { pieces }) => !pieces.length);
  if (!empty.length) return t('even.two');
  return t('even.empty', { kinds: empty.map((/** @type {any} */ { name }) => name).join(', ') });
}

/** Which build it is for: as said, as the sets say, or the only one. @param {any} workshop @param {any} asked @param {any} draft */
function buildOf(workshop, asked, draft) {
  if (draft.build !== null) return draft.build;
  const said = asked.columns
    .map((/** @type {any} */ { from }) => value(workshop.subject(from), 'build'))
    .find(Boolean);
  return said ?? onlyBuild(workshop);
}

/** @param {any} props */
function Keep({ store, go, workshop, asked, found, draft, forget }) {
  const { keep, trouble } = useKeep(store);
  const apart = found ? elsewhere(found.rows) : [];
  const stale = found?.key !== asked.key;
  const why = !found ? wants(asked) : apart.length && !draft.why.trim() ? t('set.place.wants') : '';
  const act = async () => {
    const kinds = asked.columns.map((/** @type {any} */ { name }) => name).join(', ');
    const says = t('even.set-says', { kinds, says: spanSays(found) });
    const build = buildOf(workshop, asked, draft) || null;
    if (!(await keep(entriesOf({ asked, found, draft, build, says, apart })))) return false;
    await forget();
    feedback('kept');
    say(t('even.kept', { n: asked.count }));
    go('/sets', { replace: true });
    return true;
  };
  return html`<${Dock}><${Act} confirm disabled=${Boolean(why) || stale} onPress=${act} label=${t('even.act')} second=${why || (stale ? t('even.working') : undefined)} /></${Dock}>${trouble}`;
}
