/** What a run shows between pulls: a pass done, a pass not whole, all done, or no value yet. */

import { day } from '../dates.js';
import { JointDrawing } from '../drawing/joint_drawing.js';
import { Act, html, Icon, Key, Source } from '../frame/index.js';
import { settings } from '../settings.js';
import { t } from '../texts/index.js';
import { countSays, figures, listed, local, passNumber, written } from './figures.js';
import { RunFrame, RunTitle, RunView } from './frame.js';
import { settingNow } from './setting_now.js';

/** @param {any} props view, casting, wrench, leave, onward() */
export function PassDone({ view, casting, wrench, leave, onward }) {
  const at = view.passes.findIndex((/** @type {any} */ p) => p.id === view.pass);
  const before = view.passes[at - 1];
  const pass = view.passes[at];
  const target = view.next?.target;
  const unit = pass.how === 'torque' ? wrench?.unit : null;
  const shown = target && figures(target, unit, settings.unit.value);
  const setting = settingNow(view, view.next, pass, wrench);
  const large = setting?.through ? setting.figure : shown?.figure;
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${{ ...view, fasteners: asOf(view, before) }} casting=${casting} unit=${unit} />
    <section class="pass-done"><h2>${doneSays(before, passNumber(view, before))}</h2>
      ${
        shown &&
        html`<p class="next-value">${setting?.through && html`<small>${t('run.set')} </small>`}${local(large.value)}<small>${large.unit}</small></p>
        ${setting?.through && html`<p class="soft">${t('run.at-the-bolt', { value: written(target) })}</p>`}
        ${!setting?.through && shown.other && html`<p class="soft">${written(shown.other)}</p>`}
        <${Source} text=${view.programme.source} />`
      }</section>
    <${Act} confirm onPress=${onward} label=${nextPassSays(pass, passNumber(view, pass), shown)} />
  </${RunFrame}>`;
}

/** The marks of the pass that was just done, so that it shows all its stripes. @param {any} view @param {any} pass */
const asOf = (view, pass) =>
  view.fasteners.map((/** @type {any} */ f) => ({ ...f, mark: pass.marks[f.id] ?? f.mark }));

/** @param {any} pass @param {number} number */
function doneSays(pass, number) {
  if (pass.how === 'hand') return t('run.hand-done', { n: pass.of });
  if (pass.how === 'back-off') return t('run.back-off-done', { n: pass.of });
  return t('run.pass-done', { pass: number, done: pass.done, of: pass.of });
}

/** @param {any} pass @param {number} number @param {any} shown */
function nextPassSays(pass, number, shown) {
  if (!shown) return t(`run.next-pass.${pass.how}`, { pass: number });
  return t('run.next-pass', { pass: number, value: written(shown.figure) });
}

/** @param {any} props view, casting, unit, leave, choose(id) */
export function NotWhole({ view, casting, unit, leave, choose }) {
  const first = view.fasteners.find((/** @type {any} */ f) => f.number === view.open[0]);
  const last = view.passes.at(-1)?.id === view.pass;
  const doubtful = view.recent.find(
    (/** @type {any} */ p) =>
      p.fastener === first?.id && p.pass === view.pass && p.mark === 'doubt',
  );
  const onward = `/joint/${view.id}/strike/${view.pass}?how=onward`;
  const accept = doubtful && `/joint/${view.id}/strike/${doubtful.id}?how=accept`;
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${unit} />
    <section class="asked"><h2>${t('run.open', { n: view.open.length, numbers: listed(view.open) })}</h2>
      <p>${t('run.open.then')}</p></section>
    <div class="pair">
      ${accept ? html`<${Key} className="press" label=${t('run.accept')} href=${accept} />` : html`<span></span>`}
      ${last ? html`<span></span>` : html`<${Key} className="press" label=${t('run.onward')} href=${onward} />`}</div>
    ${first && html`<${Act} confirm onPress=${() => choose(first.id)} label=${t('run.go-to', { number: first.number })} />`}
  </${RunFrame}>`;
}

/** @param {{low: string, high: string, unit: string}} applied */
const appliedSays = ({ low, high, unit }) =>
  t('run.applied', { low: local(low), high: written({ value: high, unit }) });

/** @param {any} props view, casting, unit, leave */
export function JointDone({ view, casting, unit, leave }) {
  const loosen = `/joint/${view.id}/strike/all?how=loosen`;
  const { overruled } = view.run ?? {};
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${unit} />
    <section class="pass-done"><h2>${t('run.done', { n: view.count })}</h2>
      ${overruled && html`<p class="tell">${t('run.done.overruled', { reason: overruled })}</p>`}
      ${view.programme.retorque && html`<p>${t('run.retorque', { says: view.programme.retorque })}</p>`}
      ${view.applied && html`<p class="soft">${appliedSays(view.applied)}</p>`}
      <p class="soft">${view.last && day(view.last.made)}</p></section>
    <div class="pair"><${Key} className="press" label=${t('run.loosen')} href=${loosen} />
      <${Key} className="press" icon="i-strike" label=${t('run.strike')} href=${`/joint/${view.id}/strike/${view.last?.id}`} /></div>
    <${Act} confirm onPress=${leave} label=${t('run.done.act')} />
  </${RunFrame}>`;
}

/** @param {any} props */
export function NoValue({ view, casting, leave, go }) {
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <section class="view"><${RunTitle} name=${view.name} right=${countSays(view)} />
      <${JointDrawing} fasteners=${view.fasteners} pattern=${view.pattern} casting=${casting} noun=${view.noun} />
    </section>
    <section class="asked"><${Icon} name="i-book" /><h2>${t('run.no-value')}</h2></section>
    <${Act} confirm onPress=${() => go(`/joint/${view.id}/edit`)} label=${t('run.no-value.act')} />
  </${RunFrame}>`;
}
