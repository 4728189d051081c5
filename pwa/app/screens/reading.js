/** The reading of a pull, typed on keys of our own. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { quantityOf } from '../../trade/units.js';
import { Act, html, Key, Wait } from '../frame/index.js';
import { tell } from '../run/actions.js';
import * as drafts from '../run/drafts.js';
import { inUnit, local, namedFirst, passSays, spokenValue, written } from '../run/figures.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { useHalfTyped } from '../run/half_typed.js';
import { Keypad, Typed, Units } from '../run/keypad.js';
import { nextOf } from '../run/ready.js';
import { boltSays, isThrough, targetAtWrench } from '../run/setting_now.js';
import { askOf, press, readingOf, unitsFor } from '../run/typed.js';
import { useDigits } from '../run/use_digits.js';
import { useRun } from '../run/use_run.js';
import { t } from '../texts/index.js';
import { inSentence } from '../words.js';

/** @param {{params: Record<string, any>, store: any, go: (path: string, how?: any) => void, back: (to?: string) => void}} props */
export function screen({ params, store, go, back }) {
  const run = useRun(store, params.id, { go, back });
  const [draft, change, forget] = useHalfTyped(store, params.id, run);
  const { known, bench } = run;
  const ready = known && bench && draft;
  const home = `/joint/${params.id}`;
  const closing = useRef(false);
  const left = Boolean(known && !known.view.next && !run.chosen) && !closing.current;
  useEffect(() => {
    if (left) go(home, { replace: true });
  }, [left]);
  if (!ready || left) return html`<main class="run narrow"><${Wait} /></main>`;
  const done = async () => {
    await forget();
    back(home);
  };
  const close = () => {
    closing.current = true;
  };
  return html`<${Reading} ...${run} remember=${run.change} view=${known.view} draft=${draft} change=${change} done=${done} close=${close} leave=${() => back(home)} />${run.trouble}`;
}

/** @param {any} props */
function Reading(props) {
  const { view, wrench, bench, draft, change, leave } = props;
  const fastener = nextOf(view, props.chosen);
  const wanted = fastener.target;
  const units = unitsFor(wanted);
  const unit = unitOf([draft.unit, wrench?.unit, bench.unit, wanted?.unit], units);
  const at = draft.at || (isThrough(view) ? 'set' : 'bolt');
  const atWrench = at === 'set' && isThrough(view) && unit !== '°';
  const target = atWrench ? targetAtWrench(view, wanted, unit) : wanted;
  const reading = readingOf(draft.typed, unit);
  const [asked, setAsked] = useState(/** @type {any} */ (null));
  const type = (/** @type {string} */ key) => {
    setAsked(null);
    change((/** @type {any} */ was) => ({ typed: press(was.typed, key) }));
  };
  const keep = () => keepReading(props, fastener, reading, at);
  const act = async () => {
    const ask = reading && askOf(reading, target, wrench);
    if (ask) return void setAsked(ask);
    return keep();
  };
  useDigits(type, leave);
  const title = t('reading.title', {
    name: namedFirst(view, fastener.number),
    pass: inSentence(passSays(view, view.pass)),
  });
  return html`<${RunFrame} title=${title} demo=${view.invented} leave=${leave} says=${t('reading.back')} className="narrow">
    <${RunTitle} name=${title} right=${target && rightSays(inUnit(target, unit), atWrench)} />
    <${Typed} text=${draft.typed} unit=${unit} reading=${reading} target=${target} bolt=${atWrench ? boltSays(view, reading) : ''} />
    ${view.adapter && html`<${ReadAt} at=${at} change=${change} />`}
    ${
      asked && reading
        ? html`<${Asked} asked=${asked} reading=${reading} target=${target} wrench=${wrench} keep=${keep}
        relabel=${(/** @type {string} */ u) => {
          change({ unit: u });
          setAsked(null);
        }} again=${() => setAsked(null)} />`
        : html`<${Units} units=${units} unit=${unit} onPress=${(/** @type {string} */ u) => change({ unit: u })} />
        <${Keypad} onKey=${type} />
        <${Act} confirm disabled=${!reading} onPress=${act} ...${keepWords(reading)} />`
    }
  </${RunFrame}>`;
}

/** The unit of what is set stands beside the digits. @param {any} target @param {boolean} atWrench */
const rightSays = (target, atWrench) =>
  atWrench
    ? t('reading.target.set', { value: local(target.value) })
    : t('reading.target', { value: written(target) });

/** @param {any} reading */
function keepWords(reading) {
  if (!reading) return { label: t('reading.keep'), second: t('reading.empty') };
  const label = html`${t('reading.keep')} <span class="fig">${local(reading.value)}</span>`;
  return { label, spoken: t('reading.keep.spoken', { value: spokenValue(reading) }) };
}

/** @param {(string | null | undefined)[]} wanted @param {string[]} units */
const unitOf = (wanted, units) => wanted.find((u) => u && units.includes(u)) ?? units[0] ?? 'N·m';

/** @param {any} props @param {any} fastener @param {any} reading @param {string} at */
async function keepReading(
  { view, keep, refresh, wrench, change, remember, done, close },
  fastener,
  reading,
  at,
) {
  const how = { wrench: wrench?.id ?? null, reading, readAt: view.adapter ? at : undefined };
  const entries = await keep([drafts.pull(view, fastener, how)]);
  if (!entries) return false;
  close();
  // The place is forgotten before anything is shown, so that a kill now cannot keep the reading twice.
  change({ typed: '' });
  await remember({
    chosen: null,
    unit: quantityOf(reading.unit) === 'torque' ? reading.unit : undefined,
  });
  const after = await refresh();
  tell(view, after?.view, entries[0].id);
  await done();
  return true;
}

/** What is asked before a reading is kept, with the harmless answer as the main action. @param {any} props */
function Asked({ asked, reading, target, wrench, keep, relabel, again }) {
  const typed = written(reading);
  if (asked.ask === 'which') {
    const [other, wanted] = [reading, target].map((one) => written(inUnit(one, asked.unit)));
    return html`<section class="asked"><p><b>${t('reading.which', { typed, other, target: wanted })}</b></p></section>
      <div class="pair"><${Key} className="press" label=${t('reading.keep-it', { value: typed })} onPress=${keep} /></div>
      <${Act} confirm label=${written({ value: reading.value, unit: asked.unit })} onPress=${() => relabel(asked.unit)} />`;
  }
  const wanted = written(inUnit(target, reading.unit));
  const says =
    asked.ask === 'beyond'
      ? t('reading.beyond', {
          typed: local(reading.value),
          wrench: wrench.name,
          most: written({ value: wrench.most, unit: wrench.unit }),
        })
      : t('reading.reason', { typed: local(reading.value), target: wanted });
  return html`<section class="asked"><h2>${says}</h2></section>
    <div class="pair"><${Key} className="press" label=${t('reading.keep-it', { value: local(reading.value) })} onPress=${keep} /></div>
    <${Act} confirm label=${t('reading.change')} onPress=${again} />`;
}

/** @param {any} props */
function ReadAt({ at, change }) {
  return html`<div class="read-at" role="group" aria-label=${t('reading.at')}>${['bolt', 'set'].map(
    (
      where,
    ) => html`<${Key} key=${where} className="press" pressed=${at === where} label=${t(`reading.at.${where}`)}
      onPress=${() => change({ at: where })} />`,
  )}</div>`;
}
