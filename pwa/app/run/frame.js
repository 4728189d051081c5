/** The frame of a run: Leave, sync, and the joint at the left with its passes and its drawing. */

import { useLayoutEffect, useRef } from 'preact/hooks';
import { day } from '../dates.js';
import { describe, JointDrawing } from '../drawing/joint_drawing.js';
import { DemoLine, html, Icon, Key, Top, useArrival } from '../frame/index.js';
import { makerOf } from '../frame/maker.js';
import { t } from '../texts/index.js';
import { capital, inUnit, listed, local, namedFirst, passSays, written } from './figures.js';

/**
 * @param {{title: string, demo?: boolean, leave: () => void, says?: string, className?: string, children?: any}} props
 */
export function RunFrame({ title, demo, leave, says, className = '', children }) {
  useArrival(title, true);
  return html`<div class="quiet"><header><${DemoLine} on=${demo} /></header>
    <main class=${`run ${className}`}>
      <${Top}><button type="button" class="press" onClick=${leave}><${Icon} name="i-back" />${says ?? t('run.leave')}</button></${Top}>
      ${children}</main></div>`;
}

/** @param {{name: string, right?: any}} props */
export const RunTitle = ({ name, right }) =>
  html`<h1 tabindex="-1"><span class="named">${capital(name)}</span>${right && html` <span class="soft">${right}</span>`}</h1>`;

/**
 * @param {{view: any, casting: string | null, unit: string | null, chosen?: string | null, caption?: any}} props
 */
export function RunView({ view, casting, unit, chosen, caption }) {
  const right = passSays(view, view.pass) || null;
  return html`<section class="view" aria-label=${view.name}>
    <${RunTitle} name=${view.name} right=${right} />
    <${Passes} view=${view} unit=${unit} />
    <${DrawingDoor} view=${view} casting=${casting} chosen=${chosen} />
    ${caption}
    <${Recent} view=${view} />
  </section>`;
}

/** @param {{view: any, unit: string | null}} props */
export function Passes({ view, unit }) {
  const strip = useRef(/** @type {HTMLElement | null} */ (null));
  useLayoutEffect(() => {
    const now = /** @type {HTMLElement | null} */ (strip.current?.querySelector('.now'));
    if (strip.current && now) strip.current.scrollLeft = now.offsetLeft - strip.current.offsetLeft;
  }, [view.pass]);
  return html`<ol class="passes" ref=${strip} aria-label=${t('run.passes')}>${view.passes.map(
    (/** @type {any} */ pass) => {
      const now = pass.id === view.pass;
      const kind = `${now ? 'now' : ''} ${pass.how === 'hand' ? 'hand' : ''}`;
      return html`<li key=${pass.id} class=${kind} aria-current=${now ? 'step' : undefined}>
        ${pass.whole && html`<${Icon} name="m-stripe" /><span class="gone">${t('draw.mark.done')}</span>`}
        ${passFigures(pass, unit)}
        ${now && html` <${Count} ...${pass} />`}</li>`;
    },
  )}</ol>`;
}

/** Short for the eye, so that the strip stays one row; whole for the ear. @param {any} pass */
const Count = ({ done, of }) =>
  html`<span aria-hidden="true">${done}/${of}</span><span class="gone">${t('run.pass.count', { done, of })}</span>`;

/** @param {any} pass @param {string | null} unit */
function passFigures(pass, unit) {
  if (pass.how === 'hand' || pass.how === 'back-off') return t(`run.pass.${pass.how}`);
  const values = pass.values.map((/** @type {any} */ value) => {
    const own = inUnit(value, unit);
    return own.unit === '°' ? written(own) : local(own.value);
  });
  return html`<span class="fig">${[...new Set(values)].join('/')}</span>`;
}

/** @param {any} view @param {string | null | undefined} chosen fasteners with the chosen one as the next */
export function marked(view, chosen) {
  if (!chosen) return view.fasteners;
  return view.fasteners.map((/** @type {any} */ f) => {
    if (f.id === chosen) return { ...f, mark: 'next' };
    return f.mark === 'next' ? { ...f, mark: 'todo' } : f;
  });
}

/** The drawing as one target that opens the choice of a fastener. @param {any} props */
function DrawingDoor({ view, casting, chosen }) {
  const fasteners = marked(view, chosen);
  const says = t('draw.choose', { noun: view.noun ?? t('noun.one'), says: describe(fasteners) });
  const drawing = html`<${JointDrawing} fasteners=${fasteners} pattern=${view.pattern} casting=${casting}
    noun=${view.noun} next=${chosen ?? view.next?.fastener} label=${describe(fasteners)} />`;
  if (view.state !== 'running') return html`<div class="drawing-door">${drawing}</div>`;
  return html`<a class="drawing-door press" href=${`/joint/${view.id}/choose`} aria-label=${says}>${drawing}</a>`;
}

/** @param {{view: any}} props */
export function Recent({ view }) {
  if (!view.recent.length) return null;
  return html`<ol class="recent" aria-label=${t('run.last-pulls')}>${view.recent.slice(0, 4).map(
    (/** @type {any} */ pull) => html`<li key=${pull.id}>
      <${Icon} name=${MARKS[pull.mark] ?? 'i-star'} /><b>${namedFirst(view, pull.number)}</b>
      <span>${recentSays(pull)}</span><span class="soft">${[clock(pull.made), makerOf(pull)].filter(Boolean).join(', ')}</span></li>`,
  )}</ol>`;
}

/** @type {Record<string, string>} */
const MARKS = {
  done: 'm-done',
  flagged: 'i-caution',
  doubt: 'i-caution',
  out: 'i-strike',
  void: 'i-strike',
};

/** @param {any} pull */
function recentSays(pull) {
  if (pull.struck) return `${t('draw.mark.out')}: ${pull.struck.reason}`;
  if (pull.mark === 'void') return t('draw.mark.void');
  const value = pull.reading ?? pull.target;
  const set = pull.reading && pull.read_at === 'set';
  const said = value && (set ? t('reading.target.set', { value: written(value) }) : written(value));
  const says = said || t(`run.${pull.how === 'hand' ? 'by-hand' : 'back-off'}`);
  return [says, ...pull.flags.map((/** @type {string} */ f) => t(`run.flag.word.${f}`))].join(', ');
}

const timer = new Intl.DateTimeFormat(navigator.languages[0], { timeStyle: 'medium' });

/** @param {string} made @returns {string} the time today, else the day */
function clock(made) {
  const date = new Date(made);
  if (Number.isNaN(date.getTime())) return '';
  const today = date.toDateString() === new Date().toDateString();
  return today ? timer.format(date) : day(made);
}

/**
 * The one line beneath the drawing: a flag, else what is loosened, else what was struck out.
 * @param {{view: any, onNow: () => void}} props
 */
export function StruckLine({ view, onNow }) {
  if (view.loosened && !view.loosened.all) {
    const { numbers, reason, made } = view.loosened;
    const says = t('run.loosened.some', { numbers: listed(numbers), reason, day: day(made) });
    return html`<p class="caption"><${Icon} name="i-strike" /><span>${says}</span></p>`;
  }
  if (!view.struck_note) return null;
  const number = view.struck_note;
  const says = view.struck_after
    ? t('run.struck', { number, after: view.struck_after })
    : t('run.struck.soon', { number });
  return html`<div class="caption"><${Icon} name="i-strike" /><span>${says}</span>
    <${Key} className="small-press press" label=${t('run.now')} onPress=${onNow} /></div>`;
}
