/** Send parts out: label after label or by name, to whom, for what, due when; one keep. */
import { useEffect, useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { away } from '../../views/away.js';
import { code as codeView } from '../../views/code.js';
import { today } from '../dates.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, TextField } from '../forms_fields.js';
import { Act, Dock, html, Key, Page, Scanner, say, Top, useSlice, Wait } from '../frame/index.js';
import { PartFinder } from '../joint_form/parts.js';
import { useKeep } from '../run/keeping.js';
import { priceOf, sendingEntries } from '../shelf/entries.js';
import { readAway } from '../shelf/read.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';

const HOME = { to: '/away', says: t('form.back') };
const WORKS = ['grind', 'polish', 'bore', 'hone', 'deck', 'balance', 'pressure', 'crack', 'tank'];

/** @type {import('../shelf/entries.js').Sending} */
const NOTHING = { parts: [], to: '', for: '', due: '', note: '', price: '', currency: 'EUR' };

/** @param {any} props */
export function screen({ params, store, back }) {
  const { workshop } = useSlice(store, readAway, []);
  const [draft, change, forget] = useDraft(store, 'send', NOTHING);
  const { keep, trouble } = useKeep(store);
  const [scanning, setScanning] = useState(false);
  useEffect(() => {
    if (draft && params.part) add(change, params.part);
  }, [draft === null, params.part]);
  if (!workshop || !draft)
    return html`<${Page} title=${t('send.title')} back=${HOME} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const { out, back: returned, ready } = away(workshop);
  const gone = out.map((/** @type {any} */ one) => one.part);
  const parts = draft.parts.filter((id) => workshop.subject(id) && !gone.includes(id));
  const facts = { ...{ store, workshop, gone, ready }, draft: { ...draft, parts }, change };
  if (scanning) return html`<${ByLabel} ...${facts} done=${() => setScanning(false)} />`;
  const tos = [...new Set([...out, ...returned].map(({ to }) => to))].filter(Boolean).slice(0, 6);
  const act = async () => {
    if (!(await keep(sendingEntries(workshop, facts.draft)))) return false;
    await forget();
    feedback('kept');
    say(t('send.kept', { n: parts.length, to: draft.to.trim() }));
    back(HOME.to);
    return true;
  };
  const why = whyNot(facts.draft);
  return html`<${Page} title=${t('send.title')} back=${HOME} quiet><div class="left form"><div class="id"><h1 tabindex="-1">${t('send.title')}</h1></div>
    <${Which} ...${facts} onScan=${() => setScanning(true)} /><${What} ...${{ draft, change, tos }} />
    <${Dock}><${Act} confirm disabled=${Boolean(why)} onPress=${act} label=${t('send.act', { n: parts.length })} second=${why} /></${Dock}></div>${trouble}</${Page}>`;
}

/** @param {import('../shelf/entries.js').Sending} draft */
function whyNot(draft) {
  if (draft.parts.length === 0) return t('send.wants-part');
  if (!draft.to.trim()) return t('send.wants-to');
  const { currency } = draft;
  return priceOf(draft) === undefined ? t('send.price.wrong', { currency }) : undefined;
}

/** @param {any} change @param {string} id */
const add = (change, id) =>
  change((/** @type {any} */ was) => ({ parts: [...new Set([...was.parts, id])] }));

/** @param {any} change @param {string} id */
const drop = (change, id) =>
  change((/** @type {any} */ was) => ({
    parts: was.parts.filter((/** @type {string} */ one) => one !== id),
  }));

/** @param {any} workshop @param {string} id */
const nameOf = (workshop, id) => value(workshop.subject(id), 'name') ?? t('record.nameless');

/** @param {any} props */
function Which({ workshop, draft, change, gone, ready, store, onScan }) {
  const [rows, setRows] = useState(/** @type {any[]} */ ([]));
  useEffect(() => {
    Promise.resolve(store.findRows()).then(setRows);
  }, []);
  const more = ready.filter((/** @type {any} */ one) => !draft.parts.includes(one.part));
  return html`<section class="stack"><h2>${t('send.parts')}</h2>
    <ul class="sheet">${draft.parts.map(
      (
        /** @type {string} */ id,
      ) => html`<li key=${id} class="row plain"><b>${nameOf(workshop, id)}</b>
      <${Key} className="small-press press" label=${t('form.remove')} onPress=${() => drop(change, id)} /></li>`,
    )}${draft.parts.length === 0 && html`<li class="row plain soft">${t('send.none')}</li>`}</ul>
    <${Key} icon="i-scan" label=${t('send.scan')} onPress=${onScan} />
    ${more.length > 0 && html`<fieldset><legend>${t('away.ready')}</legend><div class="chips">${more.length > 1 && html`<${Key} className="press" label=${t('send.all', { n: more.length })} onPress=${() => more.forEach((/** @type {any} */ one) => void add(change, one.part))} />`}${more.map((/** @type {any} */ one) => html`<${Key} key=${one.part} className="press" label=${one.name || t('record.nameless')} onPress=${() => add(change, one.part)} />`)}</div></fieldset>`}
    <${PartFinder} id="send-part" label=${t('send.add')} rows=${rows} has=${[...draft.parts, ...gone]} pick=${(/** @type {string} */ id) => add(change, id)} /></section>`;
}

/** @param {any} props */
function What({ draft, change, tos }) {
  const chips = (/** @type {string[]} */ list) => list.map((one) => ({ value: one, says: one }));
  const works = WORKS.map((word) => t(`send.work.${word}`));
  /** @param {string} name @param {Record<string, any>} [more] */
  const field = (name, more) =>
    html`<${TextField} id=${`send-${name}`} label=${t(`send.${name}`)} value=${draft[name]} onChange=${(/** @type {string} */ one) => change({ [name]: one })} ...${more} />`;
  return html`${tos.length > 0 && html`<${Chips} label=${t('send.to')} value=${draft.to} words=${chips(tos)} onChange=${(/** @type {string} */ to) => change({ to })} />`}
    ${field('to', tos.length > 0 ? { label: t('send.to.other') } : {})}
    <${Chips} label=${t('send.for')} value=${draft.for} words=${chips(works)} onChange=${(/** @type {string} */ one) => change({ for: one })} />
    ${field('for', { label: t('send.for.text') })}${field('due', { type: 'date', ...(draft.due && draft.due < today() ? { hint: t('send.due.past') } : {}) })}${field('price', { hint: t('form.optional'), ...(draft.parts.length > 1 ? { label: t('send.price.each') } : {}) })}
    ${draft.price.trim() && field('currency', { hint: t('send.currency.hint') })}${field('note', { area: true, hint: t('form.optional') })}`;
}

/** Label after label; each part is chosen as it is read. @param {any} props */
function ByLabel({ store, workshop, draft, change, gone, done }) {
  const [says, setSays] = useState('');
  const hear = async (/** @type {string[]} */ codes) => {
    for (const code of codes) {
      const [thing] = codeView(await store.codeSlice(code), code).things;
      const wrong = troubleOf(thing, gone);
      feedback(wrong ? 'wrong' : 'read');
      if (!wrong) add(change, /** @type {any} */ (thing).id);
      const heard = wrong || nameOf(workshop, thing?.id ?? '');
      setSays(heard);
      say(heard);
    }
  };
  const names = draft.parts.map((/** @type {string} */ id) => nameOf(workshop, id));
  const top = html`<${Top} back=${{ to: '/send', says: t('form.back') }} />`;
  return html`<${Scanner} onCodes=${hear} title=${t('send.scan')} hint=${t('send.scan.hint')} found=${names.length > 0} top=${top}>
    <div class="sheet hit"><p class="tell" role="status">${says || names.join(', ') || t('send.none')}</p>
    <${Act} onPress=${done} label=${t('send.list', { n: names.length })} /></div></${Scanner}>`;
}

/** Why a part cannot be sent, or nothing. @param {any} thing @param {string[]} gone */
function troubleOf(thing, gone) {
  if (thing?.heading !== 'part') return t('send.no-part');
  return gone.includes(thing.id) ? t('send.out-already', { name: thing.name ?? '' }) : '';
}
