/** Record of a wrench or an instrument: its range, how sure it is, when it was calibrated, its labels. */
import { useState } from 'preact/hooks';
import { instrument as toolView } from '../../views/instrument.js';
import { today } from '../dates.js';
import { Asks } from '../frame/asks.js';
import { fieldWords } from '../frame/before.js';
import { Fact } from '../frame/facts.js';
import {
  Act,
  Caution,
  Code,
  Dock,
  html,
  Icon,
  Key,
  Missing,
  Page,
  useSlice,
  Wait,
} from '../frame/index.js';
import { deviceSays } from '../frame/maker.js';
import { History, Notes } from '../frame/notes.js';
import { NoteKey, PhotoKey } from '../frame/ways.js';
import * as says from '../instruments/says.js';
import { t } from '../texts/index.js';
import { local } from '../values.js';
import { capital } from '../words.js';

const BACK = { to: '/wrenches', says: t('tool.short') };

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { state, workshop } = useSlice(
    store,
    (s) => s.partSlice(params.id),
    [params.id],
    (s) => s.known('part', params.id),
  );
  const tool = workshop && toolView(workshop, params.id, today());
  const known = tool && ['wrench', 'instrument'].includes(tool.heading) && !tool.hidden;
  return html`<${Page} title=${tool?.name ?? ''} code=${tool?.codes[0]} back=${BACK} demo=${tool?.invented} ready=${state === 'ready'}>
    ${!tool && html`<div class="left"><${Wait} /></div>`}
    ${tool && !known && html`<${NotHere} tool=${tool} />`}
    ${known && html`<${Record} tool=${tool} store=${store} />`}</${Page}>`;
}

/** @param {{tool: any}} props */
const NotHere = ({
  tool,
}) => html`<div class="left"><section class="id"><h1 tabindex="-1">${t(tool.hidden ? 'hidden' : 'here')}</h1></section>
  <${Missing} says=${tool.hidden ? tool.name : t('tool.here')} /><${Dock}><${Act} href="/wrenches" label=${t('tool.list')} /></${Dock}></div>`;

/** @param {{tool: any, store: any}} props */
const Record = ({
  tool,
  store,
}) => html`<div class="left"><${Head} tool=${tool} /><${Notice} tool=${tool} /><${Facts} tool=${tool} /><${Asks} of=${tool} store=${store} />
  <${Dock}><${Act} href=${`/calibrate/${tool.id}`} label=${t('tool.calibrate')} second=${says.calibratedSays(tool.calibration)} /></${Dock}></div>
  <div class="right"><${Notes} of=${tool} /><${Ways} tool=${tool} /><${Changes} tool=${tool} /><${History} of=${tool} /></div>`;

/** @param {{tool: any}} props */
function Head({ tool }) {
  const icon = tool.heading === 'wrench' ? 'i-wrench' : 'i-gauge';
  return html`<section class="id"><h1 tabindex="-1">${tool.name || t('record.nameless')}</h1>
    <div class="about"><p class="verdict small"><${Icon} name=${icon} /><span>${says.sortSays(tool)}</span></p>
    ${tool.codes[0] && html`<${Code} code=${tool.codes[0]} />`}</div></section>`;
}

/** What is wrong with what is written, and whether it wants calibrating. @param {{tool: any}} props */
function Notice({ tool }) {
  const due = says.dueSays(tool.calibration);
  const only = t(tool.heading === 'wrench' ? 'cal.only.wrench' : 'cal.only');
  return html`${tool.troubles.map((/** @type {string} */ trouble) => html`<${Caution} key=${trouble} says=${says.troubleSays(trouble, tool)} />`)}
    ${due && html`<${Caution} word="notice" says=${html`${due} ${only}${tool.calibration.state === 'old' && html` <span class="soft">${t('cal.source')}</span>`}`} />`}`;
}

/** @param {{tool: any}} props */
function Facts({ tool }) {
  const { heading, calibration, before, lies, note, quantity, unit, resolution } = tool;
  const days = before.map(says.daySays).join(', ');
  const step = resolution && says.sized(resolution, unit);
  return html`<dl class="sheet facts tool-facts">
    <${Fact} says=${t('tool.range')} name=${says.rangeSays(tool) || t('tool.range.none')} rest=${heading === 'instrument' && quantity && t(`quantity.${quantity}`)} />
    ${step && html`<${Fact} says=${t(`tool.${heading}.resolution`)} name=${heading === 'wrench' ? t('tool.wrench.resolution.says', { step }) : step} />`}
    <${Off} tool=${tool} />
    <${Fact} says=${t('tool.calibrated')} name=${calibratedWords(calibration)} rest=${days && t('tool.before', { days })} />
    ${calibration.due && html`<${Fact} says=${t('tool.due')} name=${says.daySays(calibration.due)} />`}
    ${lies && html`<${Fact} says=${t('tool.lies')} name=${lies} />`}
    ${note && html`<${Fact} says=${t('fact.note')} rest=${note} />`}</dl>`;
}

/** The age without the word that stands before it. @param {any} calibration */
function calibratedWords(calibration) {
  const { age, calibrated } = calibration;
  return age
    ? `${says.agoSays(age)} (${says.daySays(calibrated)})`
    : says.calibratedSays(calibration);
}

/** How far it may be off, by which rule. @param {{tool: any}} props */
function Off({ tool }) {
  const { heading, permitted, deviation, uncertainty, unit } = tool;
  if (heading === 'wrench')
    return permitted
      ? html`<${Fact} says=${t('tool.deviation')} name=${says.within(permitted.percent, '%')} rest=${t(`tool.permitted.${permitted.rule}`)} />`
      : html`<${Fact} says=${t('tool.deviation')} name=${t('tool.deviation.none')} />`;
  const wins = t(uncertainty ? 'tool.deviation.wins' : 'tool.deviation.says');
  return html`${uncertainty && html`<${Fact} says=${t('tool.uncertainty')} name=${says.within(uncertainty, unit)} rest=${t('tool.uncertainty.says')} />`}
    ${deviation && html`<${Fact} says=${t('tool.deviation')} name=${says.within(deviation, unit)} rest=${wins} />`}
    ${!uncertainty && !deviation && html`<${Fact} says=${t('tool.deviation')} name=${t('tool.deviation.none')} />`}`;
}

/** Where one description is struck out. @param {any} tool @param {string} entry */
const strikeOf = ({ id, heading }, entry) => `/strike/${entry}?about=${id}&of=${heading}`;

/** @param {{tool: any}} props */
function Ways({ tool }) {
  const { id, heading, made } = tool;
  return html`<section class="also" aria-label=${t('ways')}><div class="sect"><h2>${t('ways')}</h2></div>
    <div class="pair"><${PhotoKey} about=${id} /><${NoteKey} about=${id} />
    <${Key} href=${`/label/${id}`} icon="i-label" label=${t('way.label')} /><${Key} href=${`/${heading}/${id}/edit`} icon="i-type" label=${t('way.edit')} />
    ${heading === 'instrument' && html`<${Key} className="second-act press wide" href=${`/study/new?instrument=${id}`} icon="i-study" label=${t('tool.study')} />`}
    <${Key} className="second-act press wide" href=${strikeOf(tool, made)} icon="i-strike" label=${t('tool.mistake')} /></div></section>`;
}

/** Later descriptions, each to be struck out by itself. @param {{tool: any}} props */
function Changes({ tool }) {
  const [open, setOpen] = useState(false);
  const { changes, heading } = tool;
  if (changes.length === 0) return null;
  const line = (/** @type {any} */ change) => {
    const said = capital(
      change.fields.map((/** @type {any} */ one) => fieldSays(heading, one)).join('; '),
    );
    return html`<li key=${change.id}><p>${said} <span class="soft">${deviceSays(change.device)}</span></p><a class="strike press" href=${strikeOf(tool, change.id)} aria-label=${t('strike.what', { what: said })}><${Icon} name="i-strike" />${t('strike')}</a></li>`;
  };
  // What is folded away is not there: its links would be in the way of fingers and of readers.
  return html`<details class="fold" onToggle=${(/** @type {any} */ event) => setOpen(event.target.open)}><summary>${t('tool.changes', { n: changes.length })}<${Icon} name="i-down" /></summary>
    ${open && html`<ul class="sheet notes">${changes.map(line)}</ul>`}</details>`;
}

/** @param {string} heading @param {{field: string, value: any}} change */
function fieldSays(heading, { field, value }) {
  const said = value === null || value === '' ? t('tool.emptied') : local(String(value));
  const dated = ['calibrated', 'due'].includes(field) && value ? says.daySays(value) : said;
  return t('tool.change', { field: fieldWords(heading, field), value: dated });
}
