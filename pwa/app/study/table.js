/** The readings of a study: piece after piece, and those that do not count. */
import { useState } from 'preact/hooks';
import { html, Icon } from '../frame/index.js';
import { makerOf } from '../frame/maker.js';
import { Row } from '../frame/row.js';
import { t } from '../texts/index.js';
import { atSays, readingSays } from './says.js';

/** Every reading is a row that strikes it out; they open on demand, for there are many. @param {{study: any}} props */
export function Readings({ study }) {
  const [open, setOpen] = useState(false);
  const lines = linesOf(study);
  if (!lines.length) return null;
  return html`<section class="stack"><h2>${t('study.readings')}</h2><ul class="sheet"><li><button type="button" class="row" aria-expanded=${String(open)} onClick=${() => setOpen(!open)}>
    <${Icon} name="i-study" /><span class="says"><b>${t('study.readings.each')}</b><span class="soft">${t('study.readings.says')}</span></span><span class="fig">${lines.length}</span></button>
    ${open && html`<ul>${lines.map((line) => html`<li key=${line.id}><${Row} href=${strikeOf(study, line)} icon="i-strike" name=${readingSays(line.value)} says=${atSays(line)} /></li>`)}</ul>`}</li></ul></section>`;
}

/** Readings piece after piece, each with its place in the table. @param {any} study @returns {any[]} */
export const linesOf = (study) =>
  study.rows.flatMap((/** @type {any} */ { piece, people }) =>
    people.flatMap((/** @type {any[]} */ cells, /** @type {number} */ who) =>
      cells.flatMap((cell, at) =>
        cell ? { ...cell, piece, person: study.people[who], repeat: at + 1 } : [],
      ),
    ),
  );

/** @param {any} study @param {{id: string}} line */
const strikeOf = (study, { id }) => `/study/${study.id}?strike=${id}`;

/** Readings of another piece, person or time than the study knows. @param {{study: any}} props */
export function Beside({ study }) {
  if (!study.beside.length) return null;
  return html`<section class="stack"><h2>${t('study.beside')}</h2><ul class="sheet">${study.beside.map(
    (/** @type {any} */ line) =>
      html`<li key=${line.id}><${Row} href=${strikeOf(study, line)} icon="i-caution" name=${readingSays(line.value)} says=${`${atSays(line)}: ${t(`study.beside.${line.why}`)}`} /></li>`,
  )}</ul></section>`;
}

/** What was struck out stays readable. @param {{study: any}} props */
export function StruckOut({ study }) {
  if (!study.struck.length) return null;
  return html`<details class="fold"><summary>${t('study.out')} (${study.struck.length})<${Icon} name="i-down" /></summary>
    <ul class="sheet">${study.struck.map((/** @type {any} */ line) => html`<li key=${line.id} class="row plain"><span class="says"><b><s>${readingSays(line.value)}</s></b><span class="soft">${[atSays(line), line.struck.reason, makerOf(line.struck)].filter(Boolean).join(' · ')}</span></span></li>`)}</ul></details>`;
}
