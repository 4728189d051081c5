/** Part record: what it is, may I use it, how is it tightened, what has been done to it. */
import { measured } from '../../views/measured.js';
import { part as partView } from '../../views/part.js';
import { Counted } from '../counted/counted.js';
import { day } from '../dates.js';
import { Asks } from '../frame/asks.js';
import { Away, Fact, Places, Standing } from '../frame/facts.js';
import { Act, Code, Dock, html, Missing, Page, useStore, Verdict, Wait } from '../frame/index.js';
import { Inspections } from '../frame/inspections.js';
import { JointCard, passCount } from '../frame/joint_card.js';
import { History, Notes } from '../frame/notes.js';
import { useSlice } from '../frame/store.js';
import { PartWays } from '../frame/ways.js';
import { Readings } from '../inspect/read.js';
import { CameBack } from '../shelf/came_back.js';
import { t } from '../texts/index.js';
import { capital, inSentence } from '../words.js';

/** @param {any} part @param {any} next */
function actWords(part, next) {
  const joint = part.joints.find((/** @type {any} */ one) => one.id === next.joint);
  const name = inSentence(next.name ?? joint?.name ?? part.name);
  const noun = joint?.noun ?? t('card.noun');
  const facts = {
    name,
    pass: next.pass_number,
    of: joint ? passCount(joint.passes) : '',
    noun,
    number: next.number,
    n: joint?.count ?? 0,
  };
  const second = next.do === 'inspect' ? inspectWords(part.verdict) : secondWords(next, facts);
  return { label: t(`act.${next.do}`, facts), second };
}

/** Why it is to be inspected; with a verdict that stands it came back from the machine shop. @param {any} verdict */
function inspectWords({ ask, word }) {
  if (ask) return t('act.inspect.ask');
  return t(word ? 'act.inspect.back' : 'act.inspect.second');
}

/** @param {any} next @param {Record<string, any>} facts */
function secondWords(next, facts) {
  if (next.do !== 'go-on') return t(`act.${next.do}.second`, facts);
  return t(next.pass_number ? 'act.go-on.second' : 'act.go-on.hand', facts);
}

/** @type {Record<string, (part: any) => string>} */
const aims = {
  'go-on': (part) => `/joint/${part.next.joint}`,
  begin: (part) => `/joint/${part.next.joint}`,
  inspect: (part) => `/inspect/${part.id}`,
  'put-away': (part) => `/move/${part.id}`,
};

/** @param {{part: any}} props */
function Next({ part }) {
  const aim = aims[part.next.do];
  if (!aim) return null;
  return html`<${Dock}><${Act} href=${aim(part)} ...${actWords(part, part.next)} /></${Dock}>`;
}

/** Whether the part is only called what its kind is called. @param {any} part */
const sameName = ({ kind, name }) => kind?.name.toLowerCase() === name?.toLowerCase();

/** @param {any} part */
function whereWords(part) {
  const { build, name } = part.for;
  const pieces = part.quantity === null ? '' : t('record.pieces', { n: Number(part.quantity) });
  return [sameName(part) ? '' : part.kind?.name, build ? name : '', pieces]
    .filter(Boolean)
    .join(', ');
}

/** @param {{part: any}} props */
function Head({ part }) {
  const given = part.verdict.standing[0];
  return html`<section class="id"><h1 tabindex="-1">${part.name || t('record.nameless')}</h1><p class="where">${capital(whereWords(part))}</p>
    <div class="about"><${Verdict} verdict=${part.verdict.ask ? 'ask' : part.verdict.word} day=${given && !part.verdict.ask ? day(given.made) : ''} />
    ${part.codes[0] && html`<${Code} code=${part.codes[0]} />`}</div></section>`;
}

/** @param {{part: any}} props */
function Facts({ part }) {
  const { from, lies, fitted, thread, single_use: once } = part;
  const fitting = fitted.map(
    (/** @type {any} */ one) =>
      html`<${Fact} key=${one.id} says=${t('fact.fitted')} name=${one.build ? one.name || t('fact.build') : t('stands.off')} rest=${[one.place, one.reason].filter(Boolean).join(': ')} />`,
  );
  return html`<dl class="sheet facts">
    ${(from.name || from.text) && html`<${Fact} says=${t('fact.from')} name=${from.name || from.text} rest=${from.name ? from.text : ''} />`}
    ${lies.length > 0 ? html`<${Places} lies=${lies} />` : html`<${Fact} says=${t('fact.where')} name=${t('place.unknown')} />`}
    <${Away} away=${part.away} />
    ${part.own_place && html`<${Fact} says=${t('fact.own')} name=${part.own_place} />`}
    ${part.for.place && html`<${Fact} says=${t('fact.for')} name=${part.for.place} rest=${part.for.name} />`}${fitting}
    ${thread && html`<${Fact} says=${t('fact.thread')} name=${thread} />`}
    ${once && html`<${Fact} says=${t('fact.once')} name=${t('fact.once.says')} />`}
    ${part.note && html`<${Fact} says=${t('fact.note')} rest=${part.note} />`}</dl>`;
}

/** What is under way comes first, what is done last. */
const ranks = ['running', 'not-whole', 'not-begun', 'no-value', 'done'];

/** @param {any[]} joints */
const inOrder = (joints) =>
  [...joints].sort((a, b) => ranks.indexOf(a.state) - ranks.indexOf(b.state));

/** @param {{part: any}} props */
function Tightened({ part }) {
  const { state } = useStore();
  const n = part.joints.length;
  // In the first fetch a part may be here before the joints it belongs to.
  const coming = n === 0 && state.progress.value !== null;
  return html`<div class="sect"><h2>${t('record.tightened')}</h2><span class="soft">${coming ? '' : t('record.joints', { n })}</span></div>
    ${n === 0 && html`<p class="soft">${t(coming ? 'record.joints.coming' : 'record.joints.none')}</p>`}
    ${inOrder(part.joints).map((joint) => html`<${JointCard} key=${joint.id} joint=${joint} />`)}`;
}

/** @param {{part: any, store: any, workshop: any}} props */
function Record({ part, store, workshop }) {
  const sizes = measured(workshop, part.id);
  const readings = (/** @type {any} */ one) =>
    html`<${Readings} one=${one} measured=${sizes} workshop=${workshop} />`;
  return html`<div class="left"><${Head} part=${part} /><${Facts} part=${part} /><${Asks} of=${part} store=${store} /><${Next} part=${part} /></div>
    <div class="right"><${Counted} part=${part} workshop=${workshop} store=${store} /><${Tightened} part=${part} /><${Inspections} part=${part} readings=${readings} /><${CameBack} workshop=${workshop} part=${part.id} readings=${readings} /><${Notes} of=${part} /><${Standing} of=${part} />
    <${PartWays} part=${part} /><${History} of=${part} /></div>`;
}

/** @param {{part: any}} props */
const NotHere = ({
  part,
}) => html`<div class="left"><section class="id"><h1 tabindex="-1">${t(part.hidden ? 'hidden' : 'here')}</h1></section>
  <${Missing} says=${part.hidden ? part.name : t('here.part')} /><${Dock}><${Act} href="/sync" label=${t('sync')} second=${t('here.sync')} /></${Dock}></div>`;

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { state, workshop } = useSlice(
    store,
    (s) => s.partSlice(params.id),
    [params.id],
    (s) => s.known('part', params.id),
  );
  const part = workshop && partView(workshop, params.id);
  const shown =
    part &&
    (part.here && !part.hidden
      ? html`<${Record} part=${part} store=${store} workshop=${workshop} />`
      : html`<${NotHere} part=${part} />`);
  return html`<${Page} title=${part?.name ?? ''} code=${part?.codes?.[0]} back=${{ to: '/scan', says: t('doors.scan') }} demo=${part?.invented} ready=${state === 'ready'}>
    ${shown ?? html`<div class="left"><${Wait} /></div>`}</${Page}>`;
}
