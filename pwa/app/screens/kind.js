/** One kind: what to look at, what to measure, why not, what it goes with; new ones start ready. */
import { useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { lost } from '../../views/things.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Before } from '../frame/before.js';
import { Act, Dock, html, Key, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { changes, shownFields, wantingMeasure } from '../kinds/fields.js';
import { Form } from '../kinds/form.js';
import { useKeep } from '../run/keeping.js';
import { OnShelf } from '../shelf/on_shelf.js';
import { t } from '../texts/index.js';

const BACK = { to: '/kinds', says: t('form.back') };

/** @type {Record<string, any>} */
const NOTHING = {};

/** Once kept it stays here and shows what stands now. @param {any} props */
export function screen(props) {
  const [kept, setKept] = useState(0);
  const anew = () => setKept((n) => n + 1);
  return html`<${Kind} key=${kept} ...${props} kept=${kept} anew=${anew} />`;
}

/** @param {any} props */
function Kind({ params, store, go, kept, anew }) {
  const { workshop } = useSlice(store, (s) => s.allOf('kind'), []);
  // Only what was typed lies in the draft: what another device changed meanwhile is not overwritten.
  const [draft, change, forget] = useDraft(store, `kind:${params.id}`, NOTHING);
  const fresh = params.id === 'new';
  const title = t(fresh ? 'kind.title.new' : 'kind.title');
  if (!workshop || !draft)
    return html`<${Page} title=${title} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const subject = fresh ? null : workshop.subject(params.id);
  if (!fresh && subject?.heading !== 'kind')
    return html`<${Page} title=${title} back=${BACK}><div class="left"><h1 tabindex="-1" class="gone">${title}</h1><${Missing} says=${t('kind.not-here')} /></div></${Page}>`;
  const kinds = workshop
    .all('kind')
    .map((/** @type {any} */ one) => ({ id: one.id, name: value(one, 'name') ?? '' }));
  return html`<${Edit} key=${params.id} ...${{ title, subject, kinds, store, go, kept, anew, draft, change, forget }} />`;
}

/** @param {any} props */
function Edit({ title, subject, kinds, store, go, kept, anew, draft, change, forget }) {
  const { keep, trouble } = useKeep(store);
  /** @type {Record<string, any>} */
  const shown = { ...shownFields(subject), ...draft };
  const fields = changes(subject, shown);
  const name = shown.name.trim();
  const act = async () => {
    const about = subject?.id ?? freshId();
    const entry = { heading: 'kind', about, body: { fields } };
    if (!(await keep([entry]))) return false;
    await forget();
    feedback('kept');
    say(t('form.kept', { name }));
    if (subject) anew();
    else go(`/kind/${about}`, { replace: true });
    return true;
  };
  const why = whyNot(name, fields, shown, kept);
  return html`<${Page} title=${title} back=${BACK} quiet><div class="left form">
    <h1 tabindex="-1">${title}</h1>
    ${subject && html`<${Key} href=${`/set/new?kind=${encodeURIComponent(subject.id)}`} icon="i-set-of" label=${t('kind.set')} /><${OnShelf} store=${store} kind=${subject.id} /><${Key} href=${`/history/kind/${subject.id}`} icon="i-history" label=${t('way.history')} />`}
    <${Form} ...${{ subject, kinds, shown, change }} />
    ${subject && html`<${Before} heading="kind" lost=${lost(subject)} />`}
    <${Dock}><${Act} confirm disabled=${Boolean(why)} onPress=${act} label=${t('form.keep')} second=${why} /></${Dock}>
  </div>${trouble}</${Page}>`;
}

/** @param {string} name @param {Record<string, any>} fields @param {Record<string, any>} shown @param {number} kept how often it was kept here */
function whyNot(name, fields, shown, kept) {
  if (!name) return t('form.wants-name');
  const wanting = wantingMeasure(shown.measures);
  if (wanting)
    return t(`kind.wants-${wanting.wants}`, { name: wanting.name || t('kind.measure.new') });
  return Object.keys(fields).length ? undefined : t(kept ? 'kept' : 'edit.nothing');
}
