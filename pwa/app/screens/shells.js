/** Shells, shims, washers: which of those in stock go where, so that the clearance is what the owner wants. */
import { useMemo } from 'preact/hooks';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Act, Dock, html, Key, Page, say, useSlice, Wait } from '../frame/index.js';
import { useKeep } from '../run/keeping.js';
import { readSets } from '../sets/read.js';
import { entriesOf } from '../sets/shells_entries.js';
import { GoesWhere, PlacesForm, StockForm, WindowForm } from '../sets/shells_form.js';
import { chosenFrom, FRESH, typedOf } from '../sets/shells_model.js';
import { stockOf } from '../sets/shells_stock.js';
import { t } from '../texts/index.js';
import '../texts/sets.js';
import '../texts/shells.js';

const BACK = { to: '/sets', says: t('form.back') };

/** @param {any} props */
export function screen({ store, go }) {
  const { workshop } = useSlice(store, readSets, []);
  const [draft, change, forget] = useDraft(store, 'shells', FRESH);
  const { keep, trouble } = useKeep(store);
  const title = t('shells.title');
  const stock = useMemo(
    () => (workshop && draft ? stockOf(workshop, draft) : null),
    [workshop, draft?.kind, draft?.stock, draft?.unit],
  );
  const found = useMemo(() => (stock && draft ? chosenFrom(draft, stock) : null), [stock, draft]);
  if (!workshop || !draft || !stock || !found)
    return html`<${Page} title=${title} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const facts = { workshop, draft, change, stock, found };
  const placed = found.places.filter((/** @type {any} */ { piece }) => piece !== null);
  const why = found.wants
    ? t(`shells.wants.${found.wants}`)
    : draft.kind
      ? ''
      : t('shells.keep.typed');
  const act = async () => {
    if (!(await keep(entriesOf(workshop, draft, found)))) return false;
    await forget();
    feedback('kept');
    say(t('shells.kept', { n: placed.length }));
    go('/sets', { replace: true });
    return true;
  };
  return html`<${Page} title=${title} back=${BACK} className="choosing" quiet><div class="left form"><div class="id"><h1 tabindex="-1">${title}</h1></div>
    <${PlacesForm} ...${facts} />
    <${Dock}><${Act} confirm disabled=${Boolean(why) || !placed.length} onPress=${act} label=${t('shells.keep')} second=${why || undefined} /></${Dock}></div>
    <div class="right form"><${WindowForm} ...${facts} /><${StockForm} ...${facts} />
    <p class="set-says" role="status">${saysOf(draft, found)}</p>
    ${found.places.length > 0 && html`<${GoesWhere} ...${facts} />`}
    ${!draft.kind && placed.length > 0 && html`<p>${t('shells.typed')}</p><${Key} href="/scan" icon="i-scan" label=${t('shells.typed.scan')} />`}</div>${trouble}</${Page}>`;
}

/** @param {any} draft @param {any} found */
function saysOf({ unit }, found) {
  const { wants, trouble, places, target } = found;
  if (wants || trouble) return trouble || t(`shells.wants.${wants}`);
  const missing = places.filter((/** @type {any} */ { piece }) => piece === null);
  if (missing.length) {
    const names = missing.map((/** @type {any} */ { name }) => name).join(', ');
    const facts = { n: missing.length, places: names };
    return found.lacks > 0
      ? `${t('shells.says.lacks', { n: found.lacks })} ${t('shells.says.without', facts)}`
      : t('shells.says.missing', facts);
  }
  const worst = Math.max(...places.map((/** @type {any} */ one) => Math.abs(one.deviation_mm)));
  return t('shells.says', {
    n: places.length,
    worst: typedOf(worst, unit),
    target: typedOf(target, unit),
    unit,
  });
}
