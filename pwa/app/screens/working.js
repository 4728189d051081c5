/** One working: what it asks, what it finds, how, and the way to keep it. */
import { useEffect, useState } from 'preact/hooks';
import { WORKINGS } from '../../trade/workings/registry.js';
import { html, Key, Missing, Page, Source, useAnswer, Wait } from '../frame/index.js';
import { t } from '../texts/index.js';
import '../texts/workings_engine.js';
import { Drawing } from '../workings/drawing.js';
import { Fields } from '../workings/fields.js';
import { useFirst } from '../workings/first.js';
import { Keep } from '../workings/keep.js';
import { Told } from '../workings/told.js';
import { useWorking } from '../workings/use_working.js';

const BACK = { to: '/workings', says: t('work.title') };

/** @param {{params: Record<string, string>, store: any}} props */
export function screen({ params, store }) {
  const asked = WORKINGS.get(params.name ?? '');
  if (!asked)
    return html`<${Page} title=${t('work.title')} back=${BACK} now="more" className="list"><div class="left"><h1 tabindex="-1" class="gone">${t('work.title')}</h1><${Missing} says=${t('work.unknown')} /></div></${Page}>`;
  return html`<${One} key=${asked.name} asked=${asked} store=${store} about=${params.about ?? ''} />`;
}

/** The record it was opened from. @param {string} about */
function useThing(about) {
  const { value: rows } = useAnswer((store) => (about ? store.findRows() : null), [about]);
  const row = rows?.find((/** @type {any} */ each) => each.id === about);
  return row ? { id: about, heading: row.heading, name: row.name || t('record.nameless') } : null;
}

/** @param {{asked: import('../../trade/workings/working.js').Working, store: any, about: string}} props */
function One({ asked, store, about }) {
  const first = useFirst(about);
  const title = t(`work.${asked.name}`);
  if (!first)
    return html`<${Page} title=${title} back=${BACK} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  return html`<${Bench} asked=${asked} store=${store} about=${about} first=${first} />`;
}

/** @param {{asked: import('../../trade/workings/working.js').Working, store: any, about: string, first: any}} props */
function Bench({ asked, store, about, first }) {
  const { name } = asked;
  const bench = useWorking(store, asked, about, first);
  const thing = useThing(about);
  const [kept, setKept] = useState(/** @type {any} */ (null));
  const result = JSON.stringify(bench.outcome.told?.lines ?? null);
  useEffect(() => setKept(null), [result]);
  const title = t(`work.${name}`);
  const head = html`<section class="hello"><h1 tabindex="-1">${title}</h1><p class="soft">${t(`work.${name}.says`)}</p></section>`;
  if (!bench.ready)
    return html`<${Page} title=${title} back=${BACK} now="more" ready=${false}><div class="left">${head}<${Wait} /></div></${Page}>`;
  const { outcome } = bench;
  return html`<${Page} title=${title} back=${BACK} now="more" className="working"><div class="left form">${head}
    <${Fields} working=${name} bench=${bench} />
    <${Key} label=${t('work.clear')} disabled=${bench.empty} onPress=${bench.clear} /></div>
    <div class="right"><section class="outcome" aria-label=${t('work.result')}><h2 class="gone">${t('work.result')}</h2>
      ${outcome.refusal && html`<p class="tell" role="status">${outcome.refusal}</p>`}
      ${outcome.told && html`<${Told} told=${outcome.told} />`}</section>
    <${Keep} working=${name} outcome=${outcome} thing=${thing} kept=${kept} onKept=${setKept} />
    ${outcome.told && html`<${Drawing} told=${outcome.told} />`}
    <section class="how"><h2>${t('work.how')}</h2><p class="formula">${asked.formula}</p><${Source} text=${asked.source} /></section></div></${Page}>`;
}
