/** Which wrench is in the hand: those that take the target first, each with its range and its age. */

import { useState } from 'preact/hooks';
import { calibration } from '../../views/calibration.js';
import { today } from '../dates.js';
import { Act, html, Icon, Key, Wait } from '../frame/index.js';
import { calibratedSays } from '../instruments/says.js';
import { Press } from '../press.js';
import { written } from '../run/figures.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { markSays } from '../run/marks.js';
import { isThrough } from '../run/setting_now.js';
import { useRun } from '../run/use_run.js';
import { t } from '../texts/index.js';

/** @param {{params: Record<string, any>, store: any, go: (path: string, how?: any) => void, back: (to?: string) => void}} props */
export function screen({ params, store, go, back }) {
  const run = useRun(store, params.id, { go, back });
  const [picked, setPicked] = useState(/** @type {string | null | undefined} */ (undefined));
  if (!run.known || !run.bench) return html`<main class="run narrow"><${Wait} /></main>`;
  const { view } = run.known;
  const home = `/joint/${params.id}`;
  const now = picked === undefined ? (run.wrench?.id ?? null) : picked;
  const wrench = view.wrenches.find((/** @type {any} */ w) => w.id === now) ?? null;
  const turns = view.next?.target?.unit === '°';
  const offered = view.wrenches.filter(
    (/** @type {any} */ w) => turns || w.unit !== '°' || w.id === run.wrench?.id,
  );
  const act = async () => {
    await run.change({ wrench: now });
    back(home);
  };
  return html`<${RunFrame} title=${t('wrench.title')} demo=${view.invented} leave=${() => back(home)} says=${t('reading.back')} className="narrow">
    <${RunTitle} name=${t('wrench.title')} right=${view.next?.target && written(view.next.target)} />
    <div class="sheet pick" role="group" aria-label=${t('wrench.list')}>
      ${offered.map((/** @type {any} */ w) => html`<${Row} key=${w.id} wrench=${w} through=${isThrough(view)} on=${w.id === now} pick=${() => setPicked(w.id)} />`)}
      <${Press} class="row" aria-pressed=${String(now === null)} onPress=${() => setPicked(null)}><${Icon} name="i-star" />
        <span class="says"><b>${t('wrench.without')}</b></span></${Press}>
    </div>
    ${!offered.length && html`<p class="soft">${t('wrench.none')}</p>`}
    <section class="asked"><${Key} label=${t('wrench.new')} href="/wrench/new" /></section>
    <${Act} confirm onPress=${act} label=${wrench ? t('wrench.take', { name: wrench.name }) : t('wrench.take.none')} />
  </${RunFrame}>`;
}

/** @param {any} props */
function Row({ wrench, through, on, pick }) {
  const says = [...wrenchSays(wrench), markSays(wrench, through)].filter(Boolean);
  return html`<${Press} class="row" aria-pressed=${String(on)} onPress=${pick}><${Icon} name="i-wrench" />
    <span class="says"><b>${wrench.name}</b><span class="soft">${says.join(' · ')}</span></span></${Press}>`;
}

/**
 * A wrench in a few words: why it does not take the target, range, permitted deviation, age.
 * @param {any} wrench
 * @returns {string[]}
 */
export function wrenchSays(wrench) {
  const least =
    wrench.least && wrench.unit ? written({ value: wrench.least, unit: wrench.unit }) : '';
  const most = wrench.most && wrench.unit ? written({ value: wrench.most, unit: wrench.unit }) : '';
  const why = wrench.why ? t(`wrench.${wrench.why}`, { least, most }) : '';
  return [why || range(least, most), permitted(wrench), aged(wrench)].filter(Boolean);
}

/** @param {string} least @param {string} most */
function range(least, most) {
  if (least && most) return t('wrench.range', { least, most });
  if (least) return t('wrench.from', { least });
  return most ? t('wrench.up-to', { most }) : '';
}

/** @param {any} wrench */
function permitted(wrench) {
  const percent = wrench.permitted ?? wrench.deviation;
  return percent ? t('wrench.permitted', { percent }) : '';
}

/** @param {any} wrench */
const aged = (wrench) => calibratedSays(calibration(wrench.calibrated, null, today()));
