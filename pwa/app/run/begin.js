/** Before the first pass: values, lubricant, wrench, cautions, the parts and what holds them back. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { STATES, stateOf } from '../../trade/lubricant.js';
import { day } from '../dates.js';
import { JointDrawing } from '../drawing/joint_drawing.js';
import { Act, Caution, html, Icon, Key, Source } from '../frame/index.js';
import { lubricantSays } from '../lubricants.js';
import { t } from '../texts/index.js';
import { inSentence } from '../words.js';
import { capital, countSays, passSays, written } from './figures.js';
import { RunFrame, RunTitle } from './frame.js';
import { adapterSays } from './setting_now.js';

/**
 * @param {any} props view, casting, wrench, draft, change, begin(facts), leave
 */
export function Begin(props) {
  const { view, casting, draft, change, leave } = props;
  const lubricant = draft.lubricant ?? draft.usual ?? view.programme.lubricant ?? '';
  const [box, seen, show] = useSeen([view.id, view.held.length]);
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave} className="before">
    <div class="scroller"><section class="view begin" ref=${box}>
      <${RunTitle} name=${view.name} right=${countSays(view)} />
      ${view.loosened?.all && html`<p class="tell">${loosenedSays(view.loosened)}</p>`}
      <${JointDrawing} fasteners=${view.fasteners} pattern=${view.pattern} casting=${casting} noun=${view.noun} next=${view.programme.sequence[0]} />
      <${Values} view=${view} />
      ${view.programme.cautions.map((/** @type {any} */ c) => html`<${Caution} ...${c} />`)}
      ${view.held.length > 0 && html`<${Held} view=${view} draft=${draft} change=${change} />`}
      <${Parts} view=${view} />
    </section>
    <section class="begin asked">
      <${Lubricant} view=${view} lubricant=${lubricant} change=${change} />
    </section>
    <${WrenchDoor} view=${view} wrench=${props.wrench} />
    <div class="stack"><${Key} label=${t('begin.edit')} href=${`/joint/${view.id}/edit`} />
      <${Key} icon="i-workings" label=${t('way.work-out')} href=${`/workings?about=${view.id}`} /></div></div>
    <${BeginAct} ...${props} lubricant=${lubricant} seen=${seen} show=${show} />
  </${RunFrame}>`;
}

/** @param {any} loosened */
const loosenedSays = ({ reason, made }) => t('run.loosened.says', { reason, day: day(made) });

/** @param {any} props */
const WrenchDoor = ({
  view,
  wrench,
}) => html`<a class="tool press" id="tool" href=${`/joint/${view.id}/wrench`}
  aria-label=${t('run.change.spoken')}><${Icon} name="i-wrench" /><span><b>${capital(wrench?.name ?? t('run.no-wrench'))}</b>
  ${view.adapter && html`<span class="soft-line">${adapterSays(view)}</span>`}</span><em>${t('run.change')}</em></a>`;

/** Begin works once every danger and warning has been in view, and what holds back was overruled. @param {any} props */
function BeginAct({ view, draft, begin, lubricant, seen, show, go }) {
  const held = view.held.length > 0;
  const overruled = (draft.overruled ?? '').trim();
  const free = Boolean(lubricant) && (!held || overruled !== '');
  if (held && !overruled && wantsInspecting(view))
    return html`<${InspectAct} view=${view} go=${go} />`;
  if (held && !overruled)
    return html`<${Act} confirm onPress=${showWhy} label=${t('begin.act.held')} second=${t('begin.act.held.then')} />`;
  if (free && !seen) return html`<${Act} confirm onPress=${show} label=${t('begin.act.read')} />`;
  const act = () => begin({ lubricant, overruled: held ? overruled : undefined });
  return html`<${Act} confirm disabled=${!free} onPress=${act} ...${words(view)} />`;
}

/** @param {any} view whether nothing but verdicts is missing */
export const wantsInspecting = (view) =>
  view.held.length > 0 && view.held.every((/** @type {any} */ one) => one.why === 'not-inspected');

/** The first part without a verdict, as the next thing to do. @param {any} props */
export const InspectAct = ({ view, go }) =>
  html`<${Act} confirm onPress=${() => go(`/inspect/${view.held[0].part}`)}
    label=${t('begin.inspect', { name: inSentence(view.held[0].name ?? '') })} second=${t('begin.act.held')} />`;

/** Brings what holds the joint back into view, with the field for the reason. */
function showWhy() {
  document.querySelector('.begin .caution.danger')?.scrollIntoView({ block: 'start' });
  document.getElementById('overrule')?.focus({ preventScroll: true });
}

/** @param {any} view */
function words(view) {
  const hand = view.passes[0]?.how === 'hand';
  const second = hand ? t('begin.act.then', { many: countSays(view) }) : undefined;
  return { label: t('begin.act'), second };
}

/** @param {{view: any}} props */
function Values({ view }) {
  return html`<div><ul class="values-list">${view.passes.map(
    (/** @type {any} */ pass) => html`<li key=${pass.id}>
      <span>${passSays(view, pass.id)}</span>
      <span class="fig">${pass.values.length ? pass.values.map(valueSays).join(' · ') : ''}</span></li>`,
  )}</ul><${Source} text=${view.programme.source} /></div>`;
}

/** @param {any} value */
const valueSays = (value) => [value.group, written(value)].filter(Boolean).join(' ');

/** @param {{view: any}} props */
function Parts({ view }) {
  if (!view.parts.length) return null;
  return html`<div><h2 class="group-says">${t('begin.parts')}</h2><ul class="held-parts">${view.parts.map(
    (
      /** @type {any} */ part,
    ) => html`<li key=${part.id}><${Icon} name=${part.verdict.length === 1 ? `v-${part.verdict[0]}` : 'i-find'} />
      <a href=${part.held === 'not-inspected' ? `/inspect/${part.id}` : `/part/${part.id}`}><b>${capital(part.name ?? '')}</b>
      <span class="soft">${part.verdict.length ? part.verdict.map((/** @type {string} */ v) => t(`verdict.${v}`)).join(' / ') : t('verdict.none')}</span></a></li>`,
  )}</ul></div>`;
}

/**
 * What holds the joint back, and the reason that overrules it.
 * @param {any} props
 */
export function Held({ view, draft, change }) {
  return html`${WHYS.map((why) => {
    const names = view.held.filter((/** @type {any} */ h) => h.why === why).map(nameOf);
    return (
      names.length > 0 && html`<${Caution} key=${why} word="danger" says=${heldSays(why, names)} />`
    );
  })}<label class="field"><span>${t('begin.overrule.why')}</span>
    <textarea id="overrule" value=${draft.overruled ?? ''}
      onInput=${(/** @type {any} */ e) => change({ overruled: e.target.value })}></textarea></label>`;
}

const WHYS = ['scrap', 'used-already', 'machine', 'not-inspected'];

/** @param {any} held */
const nameOf = (held) => held.name;

/** @param {string} why @param {string[]} names */
const heldSays = (why, names) =>
  t(`begin.held.${why}`, {
    n: names.length,
    name: capital(names[0] ?? ''),
    names: names.join(', '),
  });

/** @param {any} props */
function Lubricant({ view, lubricant, change }) {
  const wanted = view.programme.lubricant;
  const others = STATES.filter((state) => state !== stateOf(wanted ?? ''));
  const words = [...new Set([wanted, lubricant, ...others].filter(Boolean))];
  return html`<div class="stack"><h2 class="group-says">${t('begin.lubricant')}</h2>
    <div class="chips" role="group" aria-label=${t('begin.lubricant')}>${words.map(
      (
        word,
      ) => html`<${Key} key=${word} className="press" pressed=${word === lubricant} label=${lubricantSays(word)}
        onPress=${() => change({ lubricant: word })} />`,
    )}</div>
    ${wanted && lubricant && lubricant !== wanted && html`<${Caution} says=${differs(wanted, lubricant)} />`}</div>`;
}

/** @param {string} wanted @param {string} chosen */
function differs(wanted, chosen) {
  const key = stateOf(chosen) === 'oiled' ? 'begin.lubricant.oiled' : 'begin.lubricant.differs';
  return t(key, { lubricant: threadsSay(wanted), chosen: threadsSay(chosen) });
}

/** "oiled threads", "threads with moly paste"; as written where it names the thread itself. @param {string} word */
function threadsSay(word) {
  if (/thread/i.test(word)) return word;
  const key = /^(dry|oiled|zinc plated)$/.test(word) ? 'begin.threads' : 'begin.threads.with';
  return t(key, { lubricant: lubricantSays(word) });
}

/**
 * Whether every danger and warning inside has been in view, and how to bring the next one there.
 * @param {any[]} about
 * @returns {[any, boolean, () => void]}
 */
export function useSeen(about) {
  const box = useRef(/** @type {Element | null} */ (null));
  const [missing, setMissing] = useState(/** @type {Set<Element>} */ (new Set()));
  useEffect(() => {
    const loud = [...(box.current?.querySelectorAll('.caution.danger, .caution.warning') ?? [])];
    const left = new Set(loud);
    setMissing(new Set(left));
    const eye = new IntersectionObserver(
      (seen) => {
        for (const one of seen) if (one.isIntersecting) left.delete(one.target);
        setMissing(new Set(left));
      },
      { threshold: 0.6 },
    );
    for (const one of loud) eye.observe(one);
    return () => eye.disconnect();
  }, about);
  const show = () => [...missing][0]?.scrollIntoView({ block: 'center' });
  return [box, missing.size === 0, show];
}
