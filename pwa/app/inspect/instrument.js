/** With which instrument a measure is read: named once, remembered for that measure on this device. */

import { useState } from 'preact/hooks';
import { quantityOf } from '../../trade/units.js';
import { instruments } from '../../views/instrument.js';
import { sameSort } from '../../views/reading.js';
import { day, today } from '../dates.js';
import { useDraft } from '../draft.js';
import { html, Icon, Sheet, useSlice } from '../frame/index.js';
import { Press } from '../press.js';
import { written } from '../run/figures.js';
import { t } from '../texts/index.js';
import '../texts/inspect_measures.js';
import { Sign } from './sign.js';

/**
 * The instruments of the workshop, and which one was named for what; null until both are read.
 * @param {any} store
 */
export function useTools(store) {
  const { workshop } = useSlice(store, (s) => s.allOf('instrument'), []);
  const [named, name] = useDraft(store, 'read-with', /** @type {Record<string, any>} */ ({}));
  return workshop && named && { workshop, named, name };
}

/**
 * Instruments that read what a measure is, the named one among them or null.
 * @param {any} tools as useTools gives them
 * @param {any} kind
 * @param {any} measure
 */
export function toolsFor(tools, kind, measure) {
  const quantity = quantityOf(measure.unit);
  const all = /** @type {any[]} */ (instruments(tools.workshop, today()).instruments);
  const fitting = all.filter((one) =>
    one.unit ? sameSort(one.unit, measure.unit) : one.quantity === quantity,
  );
  const key = `${kind?.id ?? ''} ${measure.id}`;
  const now = fitting.find((one) => one.id === tools.named[key]) ?? null;
  const take = (/** @type {string | null} */ id) => tools.name({ [key]: id });
  return { fitting, now, take };
}

/** A notice where its calibration is past its day. @param {any} tool */
function lateSays(tool) {
  const late = tool?.calibration.state === 'overdue';
  return late ? t('measure.with.late', { day: day(tool.calibration.due) }) : '';
}

/**
 * What the typed reading tells, and the instrument beneath it; one tap names another.
 * @param {{says: string, rest: string, out: boolean, tools: ReturnType<typeof toolsFor>}} props
 */
export function ReadWith({ says, rest, out, tools }) {
  const [asking, setAsking] = useState(false);
  const { fitting, now, take } = tools;
  const name = now?.name ?? t('measure.with.none');
  const late = lateSays(now);
  const lines = html`<span><b>${out ? html`<span><${Sign} /> ${says}</span>` : says}</b><span class="soft-line">${[late || now?.name, rest].filter(Boolean).join('; ')}</span></span>`;
  if (!fitting.length) return html`<div class="tool read-with">${lines}</div>`;
  const pick = (/** @type {string | null} */ id) => {
    take(id);
    setAsking(false);
  };
  return html`<${Press} class="tool read-with press" aria-label=${[says, rest, late, t('measure.with.spoken', { name })].filter(Boolean).join('; ')} onPress=${() => setAsking(true)}>
    ${lines}<em>${t(now ? 'measure.with.change' : 'measure.with.name')}</em></${Press}>
    ${asking && html`<${Choice} fitting=${fitting} now=${now} pick=${pick} close=${() => setAsking(false)} />`}`;
}

/** @param {any} props */
function Choice({ fitting, now, pick, close }) {
  return html`<${Sheet} title=${t('measure.with')} onClose=${close}><div class="sheet pick" role="group" aria-label=${t('measure.with')}>
    ${fitting.map(
      (
        /** @type {any} */ one,
      ) => html`<${Press} key=${one.id} class="row" aria-pressed=${String(one.id === now?.id)} onPress=${() => pick(one.id)}><${Icon} name="i-gauge" />
      <span class="says"><b>${one.name}</b><span class="soft">${toolSays(one)}</span></span></${Press}>`,
    )}
    <${Press} class="row" aria-pressed=${String(!now)} onPress=${() => pick(null)}><${Icon} name="i-star" /><span class="says"><b>${t('measure.with.none')}</b></span></${Press}>
  </div></${Sheet}>`;
}

/** Where it lies, how sure it is, and whether its calibration is past its day. @param {any} tool */
function toolSays(tool) {
  const width = ['uncertainty', 'deviation', 'resolution'].find((name) => tool[name]);
  const value = width && tool.unit ? written({ value: tool[width], unit: tool.unit }) : '';
  const stated = width === 'resolution' ? '' : `± ${value} ${t(`measure.from.${width}`)}`;
  const sure = value && (stated || t('measure.step', { value }));
  return [sure, tool.lies, lateSays(tool)].filter(Boolean).join('; ');
}
