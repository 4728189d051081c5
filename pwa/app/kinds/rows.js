/** Questions and measures of a kind in its form: one fold each, opened to be changed. */

import { useState } from 'preact/hooks';
import { Worn } from '../drawing/worn.js';
import { WORN } from '../drawing/worn_paths.js';
import { NumberField, TextField } from '../forms_fields.js';
import { html, Icon, Key } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';
import { Example } from './example.js';

/**
 * @param {{rows: any[], onChange: (rows: any[]) => void, heading: string, none: string, add: string, hint?: string,
 *   title: (row: any) => string, says: (row: any) => string, Row: any, about?: string}} props
 */
export function Rows({ rows, onChange, heading, none, add, hint, title, says, Row, about }) {
  const put = (/** @type {any} */ row) => (/** @type {any} */ part) =>
    onChange(rows.map((one) => (one.id === row.id ? { ...one, ...part } : one)));
  return html`<section class="kind-rows stack"><h2>${heading}</h2>${hint && html`<p class="hint">${hint}</p>`}
    ${!rows.length && html`<p class="soft">${none}</p>`}
    ${rows.map(
      (
        row,
      ) => html`<${Fold} key=${row.id} row=${row} says=${says(row)} title=${title(row)}><${Row} row=${row} put=${put(row)} about=${about} /><${Key} label=${t('form.remove')}
      spoken=${`${t('form.remove')}: ${title(row)}`} onPress=${() => onChange(rows.filter((one) => one.id !== row.id))} /></${Fold}>`,
    )}
    <${Key} label=${add} onPress=${() => onChange([...rows, { id: freshId() }])} /></section>`;
}

/** What is folded away is not drawn. A row in which nothing was said comes open. @param {any} props */
function Fold({ row, title, says, children }) {
  const [open, setOpen] = useState(Object.keys(row).length === 1);
  return html`<details class="sheet" open=${open} onToggle=${(/** @type {any} */ event) => setOpen(event.target.open)}>
    <summary><span><b>${title}</b>${says && html`<span class="soft">${says}</span>`}</span><${Icon} name="i-down" /></summary>
    ${open && html`<div class="form">${children}</div>`}</details>`;
}

/** @param {any} props */
function Cell({ row, put, name, label, hint }) {
  const typed = Array.isArray(row[name]) ? row[name].join(', ') : (row[name] ?? '');
  return html`<${TextField} id=${`${row.id}-${name}`} label=${label} hint=${hint} value=${typed} onChange=${(/** @type {string} */ text) => put({ [name]: text })} />`;
}

/** One thing to look at. @param {any} props */
export function Question({ row, put, about }) {
  const cell = (/** @type {string} */ name) =>
    html`<${Cell} row=${row} put=${put} name=${name} label=${t(`kind.${name}`)} hint=${name === 'asks' && t('kind.look.hint')} />`;
  return html`${['asks', 'hint', 'good', 'bad'].map(cell)}
    <div class="field"><label for=${`${row.id}-drawing`}>${t('kind.drawing')}</label><select id=${`${row.id}-drawing`} value=${row.drawing ?? ''}
      onChange=${(/** @type {any} */ event) => put({ drawing: event.target.value })}><option value="">${t('kind.drawing.none')}</option>
      ${WORN.map((word) => html`<option key=${word} value=${word}>${t(`worn.${word}`)}</option>`)}</select></div>
    ${WORN.includes(row.drawing) && html`<div class="plate"><${Worn} word=${row.drawing} label=${t(`worn.${row.drawing}`)} /></div>`}
    <div class="examples">${['good', 'bad'].map((side) => html`<${Example} key=${side} row=${row} side=${side} put=${put} about=${about} />`)}</div>`;
}

/** One thing to measure. @param {any} props */
export function Measure({ row, put }) {
  const cell = (/** @type {string} */ name, hint = '') =>
    html`<${Cell} row=${row} put=${put} name=${name} label=${t(`kind.measure.${name}`)} hint=${hint} />`;
  const limit = (/** @type {string} */ name) =>
    html`<${NumberField} id=${`${row.id}-${name}`} label=${t(`kind.measure.${name}`)} value=${row[name] ?? ''} onChange=${(/** @type {string} */ text) => put({ [name]: text })} />`;
  return html`${cell('name')}<div class="in-row">${cell('instrument')}${cell('unit')}</div>${cell('positions', t('kind.parted'))}${cell('directions')}
    <div class="in-row">${limit('least')}${limit('most')}</div>${cell('source')}`;
}

/** A measure in few words: with what, where, between what. @param {any} row */
export function measureSays({ instrument, positions, directions, least, most, unit }) {
  const places = [positions, directions].map((list) =>
    Array.isArray(list) ? list.join(', ') : (list ?? ''),
  );
  const limits =
    least || most ? `${least || '…'} – ${most || '…'} ${unit ?? ''}` : t('kind.measure.no-limits');
  return [instrument, ...places, limits].filter(Boolean).join(' · ');
}
