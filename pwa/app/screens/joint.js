/** A joint: what it wants before it is begun, then its run, state by state. */

import { useEffect, useState } from 'preact/hooks';
import { html, Missing, Page, Wait } from '../frame/index.js';
import { CameBack, DiffersAsk, HeldBack, TurnedAsk, UnsourcedAsk } from '../run/asking.js';
import { Begin } from '../run/begin.js';
import { JointDone, NotWhole, NoValue, PassDone } from '../run/between.js';
import { Ready } from '../run/ready.js';
import { useRun } from '../run/use_run.js';
import { t } from '../texts/index.js';

/** @param {{params: Record<string, any>, store: any, go: (path: string, how?: any) => void, back: (to?: string) => void}} props */
export function screen({ params, store, go, back }) {
  const run = useRun(store, params.id, { go, back });
  const [turned, setTurned] = useState(false);
  const { known, missing, trouble } = run;
  const asked = known?.view.turned_ask ?? null;
  useEffect(() => setTurned(false), [asked]);
  if (missing) {
    return html`<${Page} title=${t('run.not-here')}><div class="left"><h1 tabindex="-1" class="gone">${t('run.not-here')}</h1>
      <${Missing} says=${t('run.not-here')} then=${t('run.not-here.then')} /></div></${Page}>`;
  }
  if (!known || !run.bench) return html`<main class="run"><${Wait} /></main>`;
  return html`${pictureOf({ ...run, ...known, go, turned, setTurned })}${trouble}`;
}

/** @param {any} run */
function pictureOf(run) {
  const { view } = run;
  if (view.state === 'no-value') return html`<${NoValue} ...${run} />`;
  if (view.asks.length) return html`<${DiffersAsk} ...${run} answer=${run.answer} />`;
  if (view.state === 'not-begun') {
    return html`<${Begin} ...${run} draft=${run.bench} change=${run.change} begin=${run.begin} />`;
  }
  if (view.held_back) {
    return html`<${HeldBack} ...${run} draft=${run.bench} change=${run.change} overrule=${run.overrule} />`;
  }
  if (view.state === 'done')
    return html`<${JointDone} ...${run} unit=${run.wrench?.unit ?? null} />`;
  return running(run);
}

/** @param {any} run */
function running(run) {
  const { view } = run;
  const unit = run.wrench?.unit ?? null;
  if (run.away && view.last) return html`<${CameBack} ...${run} unit=${unit} />`;
  if (view.turned_ask) {
    return html`<${TurnedAsk} ...${run} answered=${run.turned} turned=${() => run.setTurned(true)} />`;
  }
  if (view.state === 'not-whole' && !run.chosen) {
    return html`<${NotWhole} ...${run} unit=${unit} choose=${run.choose} />`;
  }
  if (run.passNew) return html`<${PassDone} ...${run} onward=${run.startPass} />`;
  if (view.unsourced_due && view.next) {
    return html`<${UnsourcedAsk} ...${run} unit=${unit} goOn=${run.goOnUnsourced} />`;
  }
  return html`<${Ready} ...${run} />`;
}
