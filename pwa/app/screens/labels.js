/** Label sheets: a preset or an own grid, how many, where to begin; the computer draws the PDF. */
import { useState } from 'preact/hooks';
import { Choice } from '../frame/choices.js';
import { Act, Dock, Empty, html, Key, Page, say, useAnswer, Wait } from '../frame/index.js';
import { GridFields, GridPlan, ownGrid, placesOf } from '../frame/grid.js';
import { addressOf, saveFile } from '../frame/save_file.js';
import { codeGroups } from '../frame/told.js';
import { parse } from '../../trade/label.js';
import { t } from '../texts/index.js';

/** Most labels of one sheet, and the mark of the own grid. */
const MOST = 5000;
const OWN = 'own';

/** @param {any} store @param {string} method @param {string} path @param {any} [body] */
async function asked(store, method, path, body) {
  const { status, body: answer } = await store.ask(method, path, body);
  if (status >= 400) throw Object.assign(new Error('refused'), { says: answer?.title, next: answer?.next });
  return answer;
}

/** @param {{says: string, note?: string, value: number, most: number, onInput: (value: number) => void}} props */
const Number_ = ({ says, note, value, most, onInput }) => html`<label class="field"><span>${says}</span><input class="big" type="text" inputmode="numeric" autocomplete="off" value=${value || ''} onInput=${(/** @type {any} */ event) => onInput(Math.min(most, Number(event.target.value.replace(/\D/g, '')) || 0))} />${note && html`<span class="aside">${note}</span>`}</label>`;

/** @param {{made: any, onAgain: () => void}} props */
function Made({ made, onAgain }) {
  return html`<div class="tell"><p><b>${t('labels.done', { n: made.codes.length })}</b></p><p>${t('labels.says')}</p></div>
    <p class="soft">${made.codes.slice(0, 12).map(codeGroups).join(', ')}${made.codes.length > 12 ? ' …' : ''}</p>
    <div class="also stack"><${Key} icon="i-file" label=${t('labels.save')} onPress=${() => saveFile(made.pdf, `labels-${made.codes[0] ?? 'test'}.pdf`)} /><${Key} icon="i-print" label=${t('labels.more')} onPress=${onAgain} /></div>
    <${Dock}><${Act} label=${t('labels.open')} second=${t('labels.open.second')} onPress=${() => window.open(addressOf(made.pdf), '_blank')} /></${Dock}>`;
}

/** @param {{presets: any[], store: any, code: string, onMade: (made: any) => void}} props */
function Form({ presets, store, code, onMade }) {
  const [layout, setLayout] = useState(presets[0]?.id ?? OWN);
  const [grid, setGrid] = useState(ownGrid());
  const [count, setCount] = useState(placesOf(presets[0]) || 24);
  const [start, setStart] = useState(1);
  const [cut, setCut] = useState(false);
  const [again, setAgain] = useState(code);
  const [trouble, setTrouble] = useState('');
  const [busy, setBusy] = useState(false);
  const chosen = layout === OWN ? grid : presets.find((one) => one.id === layout);
  const places = placesOf(chosen);
  const make = (/** @type {string[] | null} */ reprint) => async () => {
    setBusy(true);
    setTrouble('');
    try {
      const asks = { layout: layout === OWN ? grid : layout, count: reprint ? reprint.length : count, start, cut_marks: cut };
      const sheet = await asked(store, 'POST', '/sheets', reprint ? { ...asks, reprint } : asks);
      onMade({ codes: sheet.codes, pdf: await asked(store, 'GET', `/sheets/${sheet.id}.pdf`) });
      say(t('labels.done', { n: sheet.codes.length }));
    } catch (error) {
      const { says, next } = /** @type {any} */ (error);
      setTrouble([says ?? t('labels.refused'), next].filter(Boolean).join(' '));
    } finally {
      setBusy(false);
    }
  };
  const test = async () => onMade({ codes: [], pdf: await asked(store, 'GET', `/sheets/test.pdf?layout=${layout}`) });
  const options = [...presets.map((one) => ({ value: one.id, label: one.name })), { value: OWN, label: t('labels.own') }];
  const pick = (/** @type {string} */ id) => {
    setLayout(id);
    setCount(placesOf(id === OWN ? grid : presets.find((one) => one.id === id)) || 1);
    setStart(1);
  };
  return html`${trouble && html`<p class="tell" role="alert">${trouble}</p>`}<${Choice} says=${t('labels.layout')} options=${options} value=${layout} onChoose=${pick} />
    ${layout === OWN && html`<${GridFields} grid=${grid} onChange=${setGrid} />`}
    <div class="form-two also"><${Number_} says=${t('labels.count')} value=${count} most=${MOST} onInput=${setCount} /><${Number_} says=${t('labels.start')} note=${t('labels.start.says')} value=${start} most=${Math.max(1, places)} onInput=${setStart} /></div>
    <${Choice} says=${t('labels.cut')} options=${[{ value: true, label: t('set.on') }, { value: false, label: t('set.off') }]} value=${cut} onChoose=${setCut} />
    <${GridPlan} layout=${chosen} start=${start} count=${count} />
    <div class="also stack">${layout !== OWN && html`<${Key} icon="i-print" label=${t('labels.test')} onPress=${test} /><p class="aside">${t('labels.test.says')}</p>`}
    <label class="field"><span>${t('labels.reprint')}</span><input class="big" type="text" autocapitalize="characters" autocomplete="off" spellcheck=${false} aria-label=${t('labels.reprint.code')} value=${again} onInput=${(/** @type {any} */ event) => setAgain(event.target.value)} /></label>
    ${codeIn(again) && html`<${Key} icon="i-print" label=${t('labels.reprint.act')} onPress=${make([/** @type {string} */ (codeIn(again))])} />`}</div>
    <${Dock}><${Act} label=${busy ? t('labels.making') : t('labels.act', { n: count })} second=${t('labels.act.second')} disabled=${busy || count < 1 || start < 1} onPress=${make(null)} /></${Dock}>`;
}

/** The code that was typed, when its last sign fits. @param {string} typed */
function codeIn(typed) {
  try {
    return parse(typed);
  } catch {
    return null;
  }
}

/** @param {{onAgain: () => void, error: any}} props */
const Offline = ({ onAgain, error }) => html`<${Empty} icon="i-apart" says=${error.code === 'not-connected' || !error.says ? t('labels.offline') : error.says} then=${error.next ?? t('labels.offline.then')} /><${Dock}><${Act} label=${t('devices.again')} onPress=${onAgain} /></${Dock}>`;

/** @param {{params: {code?: string}, store: any}} props */
export function screen({ params, store }) {
  const [turn, setTurn] = useState(0);
  const [made, setMade] = useState(/** @type {any} */ (null));
  const { value } = useAnswer(() => asked(store, 'GET', '/sheets/presets').catch((fault) => ({ fault })), [turn]);
  const presets = Array.isArray(value) ? value : (value?.presets ?? []);
  return html`<${Page} title=${t('labels')} now="more" back=${{ to: '/more', says: t('more') }}><div class="left"><section class="hello"><h1 tabindex="-1">${t('labels')}</h1><p class="soft">${t('labels.says')}</p></section>
    ${!value && html`<${Wait} />`}${value?.fault && html`<${Offline} error=${value.fault} onAgain=${() => setTurn(turn + 1)} />`}
    ${value && !value.fault && (made ? html`<${Made} made=${made} onAgain=${() => setMade(null)} />` : html`<${Form} presets=${presets} store=${store} code=${params.code ?? ''} onMade=${setMade} />`)}</div></${Page}>`;
}
