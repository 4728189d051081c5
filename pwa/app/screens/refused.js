/** A refused entry: why, and what now: repair, send again, strike out. */
import { useState } from 'preact/hooks';
import { when } from '../dates.js';
import { Choice } from '../frame/choices.js';
import {
  Act,
  Caution,
  Dock,
  Empty,
  html,
  Key,
  Page,
  Sheet,
  say,
  useAnswer,
  Wait,
} from '../frame/index.js';
import { placeLines, placeTitle, refusedRows } from '../frame/refused_pull.js';
import { mended, Repair } from '../frame/repair.js';
import { t } from '../texts/index.js';

const reasons = ['wrong', 'twice', 'other'];

/** @param {{onStrike: (reason: string) => Promise<unknown>, onClose: () => void}} props */
function StrikeReason({ onStrike, onClose }) {
  const [reason, setReason] = useState('');
  const options = reasons.map((name) => ({
    value: t(`refused.reason.${name}`),
    label: t(`refused.reason.${name}`),
  }));
  return html`<${Sheet} title=${t('refused.strike.title')} onClose=${onClose}><${Choice} says=${t('refused.reason')} options=${options} value=${reason} onChoose=${setReason} />
    <label class="field"><span>${t('refused.reason')}</span><input type="text" value=${reason} onInput=${(/** @type {any} */ event) => setReason(event.target.value)} /></label>
    <div class="also"><${Act} label=${t('refused.strike')} disabled=${reason.trim() === ''} onPress=${() => onStrike(reason.trim())} /></div></${Sheet}>`;
}

/** What the entry says, for a person. @param {any} entry */
function saidBy(entry) {
  if (!entry) return [];
  const { body } = entry;
  const measured = (/** @type {any} */ value) =>
    value && typeof value === 'object' ? `${value.value ?? ''} ${value.unit ?? ''}` : value;
  return [
    ['refused.reading', measured(body.reading)],
    ['refused.value', measured(body.value)],
    ['refused.text', body.text],
  ].filter(([, words]) => words);
}

/** @param {{place: any}} props */
const Place = ({ place }) =>
  placeLines(place).map(
    ([name, words]) => html`<div key=${name}><dt>${name}</dt><dd><b>${words}</b></dd></div>`,
  );

/** @param {{row: any}} props */
const Told = ({
  row,
}) => html`<${Caution} word="notice" says=${`${row.says} ${row.next ?? ''}`} /><p class="soft">${t('refused.means')}</p>
  <div class="sect"><h2>${row.place ? placeTitle(row.place) : t('refused.what')}</h2></div><dl class="sheet facts">${row.place && html`<${Place} place=${row.place} />`}<div><dt>${t(`heading.${row.entry?.heading ?? 'photo'}`)}</dt><dd><b>${when(row.entry?.made)}</b></dd></div>
  ${saidBy(row.entry).map(([key, words]) => html`<div key=${key}><dt>${t(/** @type {string} */ (key))}</dt><dd><b>${words}</b></dd></div>`)}</dl>`;

/** @param {{row: any, store: any, go: (path: string, how?: any) => void}} props */
function Decide({ row, store, go }) {
  const [sheet, setSheet] = useState('');
  const leave = () => go('/sync', { replace: true });
  const again = async () => {
    await store.sendAgain(row.id);
    say(t('refused.again.said'));
    leave();
  };
  const strike = async (/** @type {string} */ reason) => {
    await store.giveUp(row.id, reason);
    leave();
  };
  const repair = async (/** @type {any} */ body) => {
    await store.repair(row.id, mended(row.entry, body));
    say(t('kept'));
    leave();
  };
  return html`<div class=${row.entry ? 'pair' : 'stack'}>${row.entry && html`<${Key} label=${t('refused.again')} onPress=${again} />`}<${Key} icon="i-strike" label=${t('refused.strike')} onPress=${() => setSheet('strike')} /></div>
    <${Dock}>${row.entry ? html`<${Act} label=${t('refused.repair')} second=${t('refused.repair.second')} onPress=${() => setSheet('repair')} />` : html`<${Act} label=${t('refused.again')} onPress=${again} />`}</${Dock}>
    ${sheet === 'strike' && html`<${StrikeReason} onStrike=${strike} onClose=${() => setSheet('')} />`}
    ${sheet === 'repair' && html`<${Sheet} title=${t('refused.repair')} onClose=${() => setSheet('')}>${row.place && html`<p><b>${placeTitle(row.place)}</b></p><dl class="facts"><${Place} place=${row.place} /></dl>`}<${Repair} entry=${row.entry} onRepair=${repair} /></${Sheet}>`}`;
}

/** @param {{params: {id: string}, store: any, go: any}} props */
export function screen({ params, store, go }) {
  const { state, value } = useAnswer(() => refusedRows(store), [params.id]);
  const row = value?.find((/** @type {any} */ one) => one.id === params.id);
  return html`<${Page} title=${t('refused')} now="more" back=${{ to: '/sync', says: t('sync') }} ready=${state === 'ready'}><div class="left"><section class="hello"><h1 tabindex="-1">${t('refused')}</h1></section>
    ${!value && html`<${Wait} />`}${value && !row && html`<${Empty} icon="i-home" says=${t('refused.gone')} then=${t('refused.gone.then')} />`}
    ${row && html`<${Told} row=${row} /><${Decide} row=${row} store=${store} go=${go} />`}</div></${Page}>`;
}
