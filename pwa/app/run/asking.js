/** What a run asks before it goes on: where it stopped, an unsourced value, a turned fastener, two that differ. */

import { when } from '../dates.js';
import { nameOfOther } from '../device_names.js';
import { Act, Caution, html, Key } from '../frame/index.js';
import { t } from '../texts/index.js';
import { inSentence } from '../words.js';
import { Held, InspectAct, wantsInspecting } from './begin.js';
import { listed, passSays, written } from './figures.js';
import { RunFrame, RunView } from './frame.js';

/** @param {any} props view, casting, unit, wrench, leave, goOn(), touch() */
export function CameBack({ view, casting, unit, wrench, leave, goOn, touch }) {
  const { last } = view;
  const pass = view.passes.find((/** @type {any} */ p) => p.id === view.pass);
  const by = last.by ? t('run.back.by', { by: last.by }) : '';
  const where = t('run.back.where', {
    done: pass?.done ?? 0,
    of: view.count,
    pass: passSays(view, view.pass),
    when: when(last.made),
    by,
  });
  const angle = last.how === 'angle';
  const says = angle ? 'run.back.angle' : 'run.back.touch';
  const label = view.next
    ? t('run.back.go-on', { number: view.next.number })
    : t('run.back.go-on.plain');
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${unit} />
    <section class="asked"><h2>${t('run.back.title')}</h2><p>${where} ${wrench && t('run.back.wrench', { wrench: inSentence(wrench.name) })}</p>
      <p><b>${last.touched ? t('run.back.touched', { number: last.number }) : t(says, { number: last.number })}</b></p></section>
    ${!last.touched && html`<div class="pair"><${Key} className="press" label=${t('run.back.touch.act', { number: last.number })} onPress=${touch} /></div>`}
    <${Act} confirm onPress=${goOn} label=${label} />
  </${RunFrame}>`;
}

/** @param {any} props view, casting, unit, leave, go, goOn() */
export function UnsourcedAsk({ view, casting, unit, leave, go, goOn }) {
  const value = written(view.next.target);
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${unit} />
    <section class="asked"><${Caution} word="warning" says=${t('run.unsourced.warning', { value })} /></section>
    <div class="pair"><${Key} className="press" label=${t('run.unsourced.go-on')} onPress=${goOn} /></div>
    <${Act} confirm onPress=${() => go(`/joint/${view.id}/edit?source=1`)} label=${t('run.unsourced.add')} />
  </${RunFrame}>`;
}

/** @param {any} props view, casting, leave, answered, notTurned(), turned(), loosen(), replace() */
export function TurnedAsk({ view, casting, leave, answered, notTurned, turned, loosen, replace }) {
  const fastener = view.fasteners.find((/** @type {any} */ f) => f.id === view.turned_ask);
  const title = t('run.turned.title', { number: fastener.number });
  const warned = html`<section class="asked"><h2>${title}</h2><${Caution} word="warning" says=${t('run.turned.warning')} /></section>
    <div class="pair"><${Key} className="press" label=${t('run.turned.replace')} onPress=${replace} /></div>
    <${Act} confirm onPress=${loosen} label=${t('run.turned.loosen')} />`;
  const asked = html`<section class="asked"><h2>${title}</h2></section>
    <div class="pair"><${Key} className="press" label=${t('run.turned.no')} onPress=${notTurned} /></div>
    <${Act} confirm onPress=${turned} label=${t('run.turned.yes')} />`;
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${null} />${answered ? warned : asked}</${RunFrame}>`;
}

/** @param {any} props view, casting, draft, change, overrule, leave */
export function HeldBack({ view, casting, draft, change, overrule, leave, go }) {
  const reason = (draft.overruled ?? '').trim();
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${null} />
    <section class="asked"><${Held} view=${view} draft=${draft} change=${change} /></section>
    ${
      !reason && wantsInspecting(view)
        ? html`<${InspectAct} view=${view} go=${go} />`
        : html`<${Act} confirm disabled=${!reason} onPress=${() => overrule(reason)} label=${t('begin.overrule')}
      second=${reason ? undefined : t('strike.held')} />`
    }
  </${RunFrame}>`;
}

/** @param {any} props view, casting, leave, answer(kind, facts) */
export function DiffersAsk({ view, workshop, casting, leave, answer, go }) {
  const ask = view.asks[0];
  const panel =
    ask.ask === 'two-runs'
      ? html`<${TwoRuns} begins=${factsOf(workshop, view, ask.begins)} answer=${answer} />`
      : ask.ask === 'verdict'
        ? html`<section class="asked"><h2>${t('run.ask.verdict', { name: ask.name })}</h2></section>
        <${Act} confirm onPress=${() => go(`/part/${ask.part}`)} label=${t('run.ask.verdict.act', { name: ask.name })} />`
        : html`<${PulledOnLoosened} ask=${ask} answer=${answer} />`;
  return html`<${RunFrame} title=${view.name} demo=${view.invented} leave=${leave}>
    <${RunView} view=${view} casting=${casting} unit=${null} />${panel}</${RunFrame}>`;
}

/** @param {any} workshop @param {any} view @param {string[]} ids */
const factsOf = (workshop, view, ids) =>
  workshop.subject(view.id).facts.filter((/** @type {any} */ fact) => ids.includes(fact.id));

/** Who began it, or on which device. @param {any} begin */
function bySays({ by, device }) {
  const who = by || nameOfOther(device);
  return who ? t('run.back.by', { by: who }) : '';
}

/** @param {any} props */
function TwoRuns({ begins, answer }) {
  return html`<section class="asked"><h2>${t('run.ask.two-runs')}</h2><p>${t('run.ask.two-runs.says')}</p>
    ${begins.map(
      (/** @type {any} */ begin) => html`<${Key} key=${begin.id}
      label=${t('run.ask.run', { when: when(begin.made), by: bySays(begin) })}
      onPress=${() => answer('two-runs', begin)} />`,
    )}</section>`;
}

/** @param {any} props */
function PulledOnLoosened({ ask, answer }) {
  return html`<section class="asked"><h2>${t('run.ask.loosened', { numbers: listed(ask.numbers) })}</h2><p>${t('run.ask.loosened.says')}</p></section>
    <div class="pair"><${Key} className="press" label=${t('run.ask.tight')} onPress=${() => answer('tight', ask)} /></div>
    <${Act} confirm onPress=${() => answer('loose', ask)} label=${t('run.ask.loose')} />`;
}
