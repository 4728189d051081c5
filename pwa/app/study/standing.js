/** A study as it stands: the sentence first, then figures, picture and readings. */
import { when } from '../dates.js';
import { feedback } from '../feedback.js';
import { Act, Caution, Dock, html, Key, Page, Source, say } from '../frame/index.js';
import { makerOf } from '../frame/maker.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';
import { Plot } from './plot.js';
import {
  atSays,
  causeSays,
  figure,
  limitsSay,
  percent,
  planSays,
  readingSays,
  verdictSays,
} from './says.js';
import { Beside, Readings, StruckOut } from './table.js';

/** @param {{study: any, store: any, back: any}} props */
export function Standing({ study, store, back }) {
  const { id, name, hidden, instrument, invented, next, state, figures } = study;
  const title = name ?? t('study.nameless');
  const about = [instrument?.name, limitsSay(study) || t('study.limits.none')];
  return html`<${Page} title=${title} back=${back} demo=${invented} className="choosing" quiet><div class="left">
    <div class="id"><h1 tabindex="-1">${title}</h1><p class="soft">${about.filter(Boolean).join(' · ')}</p></div>
    ${hidden && html`<${Caution} word="notice" says=${t('study.struck')} />`}
    <div class="stack">${!hidden && html`<${Asks} ...${{ study, store }} />`}${farSays(study).map((says) => html`<p key=${says} class="set-says">${says}</p>`)}
    ${figures && html`<${Told} study=${study} />`}</div>
    ${
      !hidden &&
      html`<div class="pair"><${Key} className="press" href=${`/study/${id}?edit=1`} label=${t('study.edit')} />
      <${Key} className="press" href=${`/study/${id}?strike=study`} icon="i-strike" label=${t('study.strike')} /></div>`
    }
    ${next && !hidden && html`<${Dock}><${Act} href=${`/study/${id}?run=1`} label=${t(state === 'empty' ? 'study.go' : 'study.go-on')} second=${t('study.go.says', next)} /></${Dock}>`}</div>
    <div class="right form">${figures && html`<${Figures} study=${study} />`}
    ${figures && html`<${Plot} study=${study} />`}<${Beside} study=${study} /><${Readings} study=${study} /><${StruckOut} study=${study} /></div></${Page}>`;
}

/** @param {any} study @returns {string[]} */
function farSays(study) {
  const { state, pieces } = study;
  if (state === 'unclear') return [t('study.unclear')];
  if (state === 'empty') return [planSays(study), t('study.empty', { pieces })];
  const far = state === 'done' ? [] : [t('study.measuring', study)];
  return [...far, ...verdictSays(study)];
}

/** What the verdict leaves open, and its source. @param {{study: any}} props */
function Told({ study }) {
  const { figures, unit } = study;
  const limited = study.least !== null || study.most !== null;
  const sized = (/** @type {number} */ size) => `${figure(size)} ${unit}`;
  return html`${figures.coarse && html`<${Caution} says=${t('study.coarse', { step: sized(figures.step) })} />`}
    ${study.crossed && html`<${Caution} says=${t('study.limits.crossed')} />`}
    ${causeSays(figures) && html`<p>${causeSays(figures)}</p>`}
    ${limited && figures.near > 0 && html`<p>${t('study.near', { near: sized(figures.near) })}</p>`}
    <p class="soft">${t('study.only')}</p><${Source} text=${t('study.source')} />`;
}

/** @param {{study: any}} props */
function Figures({ study }) {
  const { figures, unit } = study;
  const { interaction_is: treated, width, share } = figures;
  const n = figures.people * figures.pieces * figures.repeats;
  const line = (
    /** @type {string} */ word,
    /** @type {string} */ says,
    /** @type {string} */ shown,
  ) =>
    html`<li key=${word} class="row plain"><div class="says"><b>${t(`study.figure.${word}`)}</b><p class="soft">${says}</p><p class="fig">${shown}</p></div></li>`;
  const sized = (/** @type {string} */ word, says = t(`study.figure.${word}.says`)) =>
    line(word, says, `${figure(figures[word])} ${unit}`);
  const pooled = treated === 'pooled' ? t('study.figure.pooled') : undefined;
  const room = width === null ? '' : `${figure(width)} ${unit}`;
  return html`<section class="stack"><h2>${t('study.figures')}</h2><p class="soft">${t('study.figures.says', { n })}</p>
    <ul class="sheet set-spread">${sized('repeatability')}${sized('reproducibility')}${sized('interaction', pooled)}${sized('both')}${sized('part')}
    ${share !== null && line('share', t('study.figure.share.says', { width: room }), `${percent(share)} %`)}
    ${line('share_of_total', t('study.figure.share_of_total.says'), `${percent(figures.share_of_total)} %`)}
    ${line('categories', t('study.figure.categories.says'), figures.both > 0 ? String(figures.categories) : t('study.figure.categories.all'))}</ul></section>`;
}

/** Two readings of one cell: a person says which one counts. @param {{study: any, store: any}} props */
function Asks({ study, store }) {
  const { keep, trouble } = useKeep(store);
  const settle = async (/** @type {any} */ ask, /** @type {any} */ counts) => {
    const others = ask.readings.filter((/** @type {any} */ one) => one !== counts);
    const reason = t(counts ? 'study.ask.reason' : 'study.ask.neither');
    const drafts = others.map((/** @type {any} */ one) => ({
      heading: 'strike-out',
      about: one.id,
      body: { reason },
    }));
    if (!(await keep(drafts))) return false;
    feedback('kept');
    say(counts ? t('study.ask.kept', { value: readingSays(counts.value) }) : t('strike.kept'));
    return true;
  };
  return html`${study.asks.map(
    (
      /** @type {any} */ ask,
    ) => html`<div key=${atSays(ask)} class="asks stack"><${Caution} word="notice" says=${t('study.ask', { reading: atSays(ask) })} />
      <div class="chips">${ask.readings.map((/** @type {any} */ one) => html`<${Key} key=${one.id} className="press" label=${[readingSays(one.value), when(one.made), makerOf(one)].filter(Boolean).join(' · ')} onPress=${() => settle(ask, one)} />`)}
      <${Key} className="press" label=${t('study.ask.neither')} onPress=${() => settle(ask, null)} /></div></div>`,
  )}${trouble}`;
}
