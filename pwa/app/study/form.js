/** The plan of a study: what, by which instrument, for which limit, who measures and how often. */
import { value } from '../../log/workshop.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, Count, NumberField, signedOf, TextField } from '../forms_fields.js';
import { Act, Dock, html, Key, Page, say, Wait } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { benchUnits, QUANTITIES, unitsOf } from '../quantities.js';
import { useKeep } from '../run/keeping.js';
import { settings } from '../settings.js';
import { t } from '../texts/index.js';
import '../texts/quantities.js';
import '../texts/study.js';

const MOST = 25;
const MOST_REPEATS = 10;
/** Seconds a reading takes, with laying down and taking up: ours, no source. */
const SECONDS = 20;

/** @param {any} subject null for a new one @param {any} instrument what a new one begins with */
function startOf(subject, instrument) {
  const own = (/** @type {string} */ name) => value(subject, name);
  return {
    name: own('name') ?? '',
    instrument: own('instrument') ?? '',
    quantity: own('quantity') ?? 'length',
    unit: own('unit') ?? 'mm',
    least: own('least') ?? '',
    most: own('most') ?? '',
    pieces: own('pieces') ?? 3,
    people: own('people') ?? [settings.by.value, ''],
    repeats: own('repeats') ?? 3,
    ...(instrument ? { instrument: instrument.id, ...shownBy(instrument) } : {}),
  };
}

/** @param {{id: string, subject: any, workshop: any, store: any, go: any, back: any, params: Record<string, string>}} props */
export function Plan({ id, subject, workshop, store, go, back, params }) {
  const of = subject ? null : workshop.subject(params.instrument ?? '');
  const [draft, change, forget] = useDraft(
    store,
    `study:${id}${of?.id ?? ''}`,
    startOf(subject, of),
  );
  const { keep, trouble } = useKeep(store);
  const home = { to: subject ? `/study/${id}` : '/studies', says: t('form.back') };
  const title = subject ? (draft?.name ?? '') : t('study.new');
  if (!draft)
    return html`<${Page} title=${title} back=${home} quiet ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const fields = fieldsOf(draft);
  const why = whyNot(draft, fields);
  const n = fields.pieces * fields.people.length * fields.repeats;
  const act = async () => {
    const about = subject ? id : freshId();
    const body = { fields: changed(fields, subject) };
    if (!(await keep([{ heading: 'study', about, body }]))) return false;
    await forget();
    feedback('kept');
    say(t('study.kept', { name: fields.name ?? t('study.nameless') }));
    if (subject) back(home.to);
    else go(`/study/${about}`, { replace: true });
    return true;
  };
  const minutes = Math.max(1, Math.round((n * SECONDS) / 60));
  return html`<${Page} title=${title} back=${home} quiet><div class="left form"><h1 tabindex="-1">${title}</h1>
    <${What} ...${{ draft, change, workshop }} /><${Who} ...${{ draft, change }} begun=${Boolean(subject)} />
    <${Dock}><${Act} confirm disabled=${Boolean(why)} onPress=${act} label=${t('study.keep')} second=${why || t('study.keep.says', { n, minutes })} /></${Dock}></div>${trouble}</${Page}>`;
}

/** @param {any} props */
function What({ draft, change, workshop }) {
  const listed = workshop.all('instrument').map((/** @type {any} */ one) => ({
    value: one.id,
    says: value(one, 'name') ?? t('study.nameless'),
  }));
  const units = benchUnits(draft.quantity, draft.unit);
  const take = (/** @type {string} */ id) =>
    change({ instrument: id, ...shownBy(workshop.subject(id)) });
  const sort = (/** @type {string} */ quantity) =>
    change({ quantity, unit: unitsOf(quantity)[0] ?? '' });
  const set = (/** @type {string} */ name) => (/** @type {string} */ text) =>
    change({ [name]: text });
  return html`<${TextField} id="study-name" label=${t('study.name')} value=${draft.name} onChange=${set('name')} hint=${t('study.name.hint')} />
    ${listed.length > 0 && html`<${Chips} label=${t('study.instrument')} value=${draft.instrument} words=${[...listed, { value: '', says: t('study.instrument.none') }]} onChange=${take} />`}
    <${Chips} label=${t('study.quantity')} value=${draft.quantity} words=${QUANTITIES.map((word) => ({ value: word, says: t(`quantity.${word}`) }))} onChange=${sort} />
    <${Chips} label=${t('study.unit')} value=${draft.unit} words=${units.map((word) => ({ value: word, says: word }))} onChange=${set('unit')} />
    <div class="in-row"><${NumberField} id="study-least" signed label=${t('study.least')} value=${draft.least} onChange=${set('least')} />
      <${NumberField} id="study-most" signed label=${t('study.most')} value=${draft.most} onChange=${set('most')} /></div><p class="hint">${t('study.limits.hint')}</p>`;
}

/** The unit an instrument shows, where it says one. @param {any} instrument */
function shownBy(instrument) {
  const [quantity, unit] = ['quantity', 'unit'].map((name) => value(instrument, name));
  return QUANTITIES.includes(quantity) && unit ? { quantity, unit } : {};
}

/** @param {any} props */
function Who({ draft, change, begun }) {
  const name = (/** @type {number} */ at) => (/** @type {string} */ text) =>
    change((/** @type {any} */ was) => ({
      people: was.people.map((/** @type {string} */ one, /** @type {number} */ place) =>
        place === at ? text : one,
      ),
    }));
  const more = () => change((/** @type {any} */ was) => ({ people: [...was.people, ''] }));
  return html`<fieldset class="stack"><legend>${t('study.people')}</legend>${draft.people.map((/** @type {string} */ one, /** @type {number} */ at) => html`<${TextField} key=${at} id=${`study-person-${at}`} label=${t('study.person', { n: at + 1 })} value=${one} onChange=${name(at)} />`)}
      ${begun && html`<p class="hint">${t('study.people.hint')}</p>`}<${Key} label=${t('study.person.more')} onPress=${more} disabled=${draft.people.length >= MOST} /></fieldset>
    <${Count} label=${t('study.pieces')} value=${draft.pieces} least=${2} most=${MOST} onChange=${(/** @type {number} */ pieces) => change({ pieces })} />
    <${Count} label=${t('study.repeats')} value=${draft.repeats} least=${2} most=${MOST_REPEATS} onChange=${(/** @type {number} */ repeats) => change({ repeats })} />`;
}

/** @param {any} draft */
function fieldsOf(draft) {
  return {
    ...draft,
    name: draft.name.trim() || null,
    instrument: draft.instrument || null,
    least: signedOf(draft.least),
    most: signedOf(draft.most),
    people: draft.people.map((/** @type {string} */ one) => one.trim()).filter(Boolean),
  };
}

/** @param {any} draft @param {any} fields */
function whyNot(draft, { name, people, unit, least, most }) {
  if (!name) return t('form.wants-name');
  if (!unit) return t('study.wants-unit');
  const wrong = [
    [draft.least, least],
    [draft.most, most],
  ].some(([typed, kept]) => typed.trim() && kept === null);
  if (wrong) return t('study.limits.wrong');
  if (least !== null && most !== null && Number(least) >= Number(most))
    return t('study.limits.crossed');
  if (people.length < 2) return t('study.wants-people');
  return new Set(people).size < people.length ? t('study.people.twice') : '';
}

/** Only what is different is written. @param {any} fields @param {any} subject */
const changed = (fields, subject) =>
  Object.fromEntries(
    Object.entries(fields).filter(
      ([name, now]) => JSON.stringify(now) !== JSON.stringify(value(subject, name) ?? null),
    ),
  );
