/** The run when a fastener is next: drawing, figure, wrench, the way back, and the confirm. */

import { Act, html, Icon, Key } from '../frame/index.js';
import { useWet } from '../press.js';
import { settings } from '../settings.js';
import { t } from '../texts/index.js';
import { Figure } from './figure.js';
import { capital, figures, named, passSays, spokenValue, written } from './figures.js';
import { FlagLine } from './flagged.js';
import { RunFrame, RunView, StruckLine } from './frame.js';
import { useRunKeys } from './keys.js';
import { adapterSays, markNear, rangeSays, settingNow } from './setting_now.js';
import { SourceLine } from './source_line.js';

/**
 * @param {any} props view, casting, wrench, chosen, notice, leave, confirm, theRest, choose, go
 */
export function Ready(props) {
  const { view, wrench, chosen, leave } = props;
  const pass = view.passes.find((/** @type {any} */ p) => p.id === view.pass);
  const fastener = nextOf(view, chosen);
  const wrenchUnit = pass.how === 'torque' ? (wrench?.unit ?? null) : null;
  const setting = settingNow(view, fastener, pass, wrench);
  const wet = useWet();
  const doubtful = doubtfulLast(view);
  const act = () => props.confirm(fastener);
  useRunKeys({
    confirm: act,
    reading: () => props.go(`/joint/${view.id}/reading`),
    strike: () => view.last && props.go(strikePath(view)),
    leave,
  });
  return html`<${RunFrame} title=${titleOf(view)} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${props.casting} unit=${wrenchUnit} chosen=${fastener.id}
      caption=${html`<${Line} ...${props} fastener=${fastener} setting=${setting} />`} />
    <${Figure} view=${view} fastener=${fastener} pass=${pass} setting=${setting} wrenchUnit=${wrenchUnit}
      ownUnit=${settings.unit.value} unsourced=${Boolean(fastener.target) && !view.programme.source} />
    ${doubtful ? html`<${Doubtful} view=${view} pull=${doubtful} choose=${props.choose} />` : html`<${Tool} view=${view} wrench=${wrench} setting=${setting} />`}
    <${Pair} view=${view} pass=${pass} theRest=${props.theRest} />
    ${wet && html`<p class="wet" role="status">${t('run.wet')}</p>`}
    <${Act} confirm onPress=${act} spoken=${spokenConfirm(view, pass, fastener, wrenchUnit, setting)}
      label=${html`${t('run.confirm')} <span class="fig">${fastener.number}</span>`}
      second=${whenSays(pass, wrench, fastener, setting)} />
  </${RunFrame}>`;
}

/** @param {any} view */
const titleOf = (view) => `${view.name}, ${passSays(view, view.pass)}`;

/** @param {any} view @param {string | null} chosen */
export function nextOf(view, chosen) {
  const id = chosen ?? view.next?.fastener;
  return view.fasteners.find((/** @type {any} */ f) => f.id === id) ?? view.next;
}

/** @param {any} view */
const strikePath = (view) => `/joint/${view.id}/strike/${view.last.id}`;

/** The last pull of this pass when it is in doubt and nothing was done about it. @param {any} view */
function doubtfulLast(view) {
  const pull = view.recent[0];
  return pull && pull.mark === 'doubt' && pull.pass === view.pass ? pull : null;
}

/** @param {any} props */
function Line({ view, chosen, fastener, notice, choose, wrench, setting }) {
  if (chosen && view.next && chosen !== view.next.fastener && isOrdered(view)) {
    const says = t('run.before-order', { number: fastener.number, next: view.next.number });
    return html`<p class="caption flagged"><${Icon} name="i-caution" /><span>${says}</span></p>`;
  }
  if (notice) return html`<p class="caption"><${Icon} name="i-wait" /><span>${notice}</span></p>`;
  const last = view.recent[0];
  if (isFlagged(last) && last.pass === view.pass)
    return html`<${FlagLine} view=${view} pull=${last} />`;
  const range = rangeSays(wrench, setting);
  if (range)
    return html`<p class="caption flagged"><${Icon} name="i-caution" /><span>${range}</span></p>`;
  const struck = view.fasteners.find((/** @type {any} */ f) => f.number === view.struck_note);
  return html`<${StruckLine} view=${view} onNow=${() => choose(struck.id)} />`;
}

/** @param {any} pull */
const isFlagged = (pull) => pull?.mark === 'flagged' || pull?.mark === 'doubt';

/** By hand and backing off go in any order. @param {any} view */
const isOrdered = (view) => Boolean(view.next?.target);

/** @param {any} props */
function Tool({ view, wrench, setting }) {
  const lubricant = view.run?.lubricant ?? view.programme.lubricant;
  const lines = [adapterSays(view), markNear(setting), lubricant].filter(Boolean).join(', ');
  const source = view.programme.source ?? t('run.unsourced');
  return html`<a class="tool press" id="tool" href=${`/joint/${view.id}/wrench`} aria-label=${t('run.change.spoken')}>
    <${Icon} name="i-wrench" /><span><b>${capital(wrench?.name ?? t('run.no-wrench'))}</b>
    ${lines && html`<span class="soft-line">${lines}</span>`}<${SourceLine} source=${source} /></span><em>${t('run.change')}</em></a>`;
}

/** @param {any} props */
function Doubtful({ view, pull, choose }) {
  const again = pull.how === 'angle' ? null : () => choose(pull.fastener);
  return html`<div class="pair doubtful">
    ${again ? html`<${Key} className="press" label=${t('run.again')} onPress=${again} />` : html`<span></span>`}
    <${Key} className="press" label=${t('run.accept')} href=${`/joint/${view.id}/strike/${pull.id}?how=accept`} /></div>`;
}

/** @param {any} props */
function Pair({ view, pass, theRest }) {
  const strike = view.last
    ? html`<${Key} className="press" id="strike" icon="i-strike" label=${t('run.strike')} href=${strikePath(view)} />`
    : html`<${Key} className="press" icon="i-strike" label=${t('run.strike')} disabled spoken=${t('run.no-pull')} />`;
  const choose = html`<${Key} className="press" id="choose" icon="i-keys" label=${t('run.choose')} href=${`/joint/${view.id}/choose`} />`;
  const rest = html`<${Key} className="press" label=${t('run.all-the-rest')} onPress=${theRest} />`;
  const reading = html`<${Key} className="press" id="reading" icon="i-keys" label=${t('run.reading')} href=${`/joint/${view.id}/reading`} />`;
  const side =
    pass.how === 'hand'
      ? pass.done >= 3
        ? rest
        : choose
      : pass.how === 'back-off'
        ? choose
        : reading;
  return html`<div class="pair">${strike}${side}</div>`;
}

const SCALES = ['beam', 'dial', 'display'];

/** @param {any} pass @param {any} wrench @param {any} fastener @param {any} setting */
function whenSays(pass, wrench, fastener, setting) {
  if (pass.how === 'hand' || pass.how === 'back-off') return t(`run.when.${pass.how}`);
  if (pass.how === 'angle') return t('run.when.angle', { value: fastener.target.value });
  if (wrench?.sort === 'click') return t('run.when.click');
  const { figure } = setting?.through
    ? setting
    : figures(fastener.target, wrench?.unit, settings.unit.value);
  const how = SCALES.includes(wrench?.sort) ? 'shows' : 'reaches';
  return t(`run.when.${how}`, { value: written(figure) });
}

/** @param {any} view @param {any} pass @param {any} fastener @param {string | null} unit @param {any} setting */
function spokenConfirm(view, pass, fastener, unit, setting) {
  const name = named(view, fastener.number);
  if (!fastener.target)
    return t(`run.confirm.${pass.how === 'hand' ? 'hand' : 'back-off'}.spoken`, { name });
  const { figure } = figures(fastener.target, unit, settings.unit.value);
  if (setting?.through)
    return t('run.confirm.set.spoken', {
      name,
      set: spokenValue(setting.figure),
      value: spokenValue(fastener.target),
    });
  return t('run.confirm.spoken', { name, value: spokenValue(figure) });
}

/** @param {any} view @param {number} number */
export const keptSays = (view, number) => t('run.kept', { name: named(view, number) });
