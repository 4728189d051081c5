/** The form of a label sheet: grid, how many, where to begin; one label again. */
import { useState } from 'preact/hooks';
import { parse } from '../../trade/label.js';
import { t } from '../texts/index.js';
import { Act, Dock, Key } from './act.js';
import { Choice } from './choices.js';
import { GridFields, GridPlan, ownGrid, placesOf } from './grid.js';
import { html } from './html.js';

/** Most labels of one sheet, and the mark of the own grid. */
const MOST = 5000;
const OWN = 'own';

/** @typedef {{layout: any, count: number, start: number, cut_marks: boolean, reprint?: string[]}} Wish */

/** A whole number of at most so much. @param {string} typed @param {number} most */
const whole = (typed, most) => Math.min(most, Number(typed.replace(/\D/g, '')) || 0);

/** @param {{says: string, note?: string, value: number, most: number, onInput: (value: number) => void}} props */
const Count = ({
  says,
  note,
  value,
  most,
  onInput,
}) => html`<label class="field"><span>${says}</span>
  <input class="big" type="text" inputmode="numeric" autocomplete="off" value=${value || ''} onInput=${(/** @type {any} */ event) => onInput(whole(event.target.value, most))} />
  ${note && html`<span class="aside">${note}</span>`}</label>`;

/** The code that was typed, when its last sign fits. @param {string} typed */
function codeIn(typed) {
  try {
    return parse(typed);
  } catch {
    return null;
  }
}

/** One label again. @param {{code: string, onMake: (codes: string[]) => Promise<unknown>}} props */
function Again({ code, onMake }) {
  const [typed, setTyped] = useState(code);
  const good = codeIn(typed);
  return html`<label class="field"><span>${t('labels.reprint')}</span>
    <input class="big" type="text" autocapitalize="characters" autocomplete="off" spellcheck=${false} aria-describedby="again-tell" value=${typed} onInput=${(/** @type {any} */ event) => setTyped(event.target.value)} />
    <span class="aside" id="again-tell">${t(typed.trim().length >= 8 && !good ? 'type.wrong' : 'labels.reprint.code')}</span></label>
    ${good && html`<${Key} icon="i-print" label=${t('labels.reprint.act')} onPress=${() => onMake([good])} />`}`;
}

/** The grids by their measures: a long list, so the device's own way to choose. @param {{options: {value: string, label: string}[], value: string, onPick: (id: string) => void}} props */
const Preset = ({
  options,
  value,
  onPick,
}) => html`<label class="field"><span>${t('labels.layout')}</span>
  <select value=${value} onChange=${(/** @type {any} */ event) => onPick(event.target.value)}>${options.map((one) => html`<option key=${one.value} value=${one.value} selected=${one.value === value}>${one.label}</option>`)}</select></label>`;

/** @param {any[]} presets */
function useSheet(presets) {
  const [layout, setLayout] = useState(presets[0]?.id ?? OWN);
  const [grid, setGrid] = useState(ownGrid());
  const [count, setCount] = useState(placesOf(presets[0] ?? grid));
  const [start, setStart] = useState(1);
  const [cut, setCut] = useState(false);
  const chosen = layout === OWN ? grid : presets.find((one) => one.id === layout);
  const pick = (/** @type {string} */ id) => {
    setLayout(id);
    setCount(placesOf(id === OWN ? grid : presets.find((one) => one.id === id)));
    setStart(1);
  };
  return { layout, grid, setGrid, count, setCount, start, setStart, cut, setCut, chosen, pick };
}

/**
 * @param {{presets: any[], code: string, busy: boolean, onMake: (wish: Wish) => Promise<unknown>, onTest: (layout: any) => Promise<unknown>}} props
 */
export function LabelForm({ presets, code, busy, onMake, onTest }) {
  const sheet = useSheet(presets);
  const own = sheet.layout === OWN;
  const options = presets
    .map((one) => ({ value: one.id, label: one.name }))
    .concat({ value: OWN, label: t('labels.own') });
  const cuts = [true, false].map((value) => ({ value, label: t(value ? 'set.on' : 'set.off') }));
  const wish = () => ({
    layout: own ? sheet.grid : sheet.layout,
    count: sheet.count,
    start: sheet.start,
    cut_marks: sheet.cut,
  });
  const ready = !busy && sheet.count > 0 && sheet.start > 0;
  return html`<div class="left"><section class="hello"><h1 tabindex="-1">${t('labels')}</h1><p class="soft">${t('labels.says')}</p></section>
    <${Preset} options=${options} value=${sheet.layout} onPick=${sheet.pick} />
    ${own && html`<${GridFields} grid=${sheet.grid} onChange=${sheet.setGrid} />`}
    <div class="form-two also"><${Count} says=${t('labels.count')} value=${sheet.count} most=${MOST} onInput=${sheet.setCount} />
    <${Count} says=${t('labels.start')} note=${t('labels.start.says')} value=${sheet.start} most=${Math.max(1, placesOf(sheet.chosen))} onInput=${sheet.setStart} /></div>
    <${Dock}><${Act} label=${busy ? t('labels.making') : t('labels.act', { n: sheet.count })} second=${t('labels.act.second')} disabled=${!ready} onPress=${() => onMake(wish())} /></${Dock}></div>
    <div class="right"><${GridPlan} layout=${sheet.chosen} start=${sheet.start} count=${sheet.count} />
    <${Choice} says=${t('labels.cut')} options=${cuts} value=${sheet.cut} onChoose=${sheet.setCut} />
    <div class="stack"><${Key} icon="i-print" label=${t('labels.test')} onPress=${() => onTest(wish().layout)} /><p class="aside">${t('labels.test.says')}</p>
    <${Again} code=${code} onMake=${(/** @type {string[]} */ reprint) => onMake({ ...wish(), count: reprint.length, reprint })} /></div></div>`;
}
