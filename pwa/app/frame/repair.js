/** Puts a refused entry right: its number or its words, whichever it has. */
import { useState } from 'preact/hooks';
import { TORQUE_WORDS } from '../../trade/units.js';
import { t } from '../texts/index.js';
import { Act } from './act.js';
import { Choice } from './choices.js';
import { html } from './html.js';

const numbers = ['reading', 'value', 'target'];
const words = ['text', 'reason', 'note'];

/**
 * The draft of the repaired entry.
 * @param {any} entry
 * @param {any} body
 */
export const mended = (entry, body) => ({
  heading: entry.heading,
  about: entry.about,
  body,
  ...(entry.after ? { after: entry.after } : {}),
});

/** A number as it is kept: a plain decimal, both separators read. @param {string} text */
const plain = (text) => text.trim().replace(',', '.');

/** @param {{entry: any, onRepair: (body: any) => Promise<unknown>}} props */
export function Repair({ entry, onRepair }) {
  const { body } = entry;
  const number = numbers.find((name) => body[name] !== undefined && body[name] !== null);
  const word = words.find((name) => name in body);
  if (number) return html`<${Amount} body=${body} field=${number} onRepair=${onRepair} />`;
  if (word) return html`<${Words} body=${body} field=${word} onRepair=${onRepair} />`;
  return html`<p>${t('refused.other')}</p>`;
}

/** @typedef {{body: any, field: string, onRepair: (body: any) => Promise<unknown>}} Mending */

/** @param {Mending} props */
function Amount({ body, field, onRepair }) {
  const was = body[field];
  const [typed, setTyped] = useState(String(was.value ?? was ?? ''));
  const [unit, setUnit] = useState(was.unit ?? 'N·m');
  const good = /^\d+(\.\d+)?$/.test(plain(typed));
  const options = TORQUE_WORDS.map((word) => ({ value: word, label: word }));
  return html`<div class="form"><label class="field"><span>${t('refused.reading')}</span>
    <input type="text" class="big" inputmode="decimal" autocomplete="off" value=${typed} onInput=${(/** @type {any} */ event) => setTyped(event.target.value)} /></label>
    <${Choice} says=${t('refused.unit')} options=${options} value=${unit} onChoose=${setUnit} />
    <${Act} label=${t('refused.keep')} disabled=${!good} onPress=${() => onRepair({ ...body, [field]: { value: plain(typed), unit } })} /></div>`;
}

/** @param {Mending} props */
function Words({ body, field, onRepair }) {
  const [typed, setTyped] = useState(String(body[field] ?? ''));
  return html`<div class="form"><label class="field"><span>${t('refused.text')}</span>
    <input type="text" autocomplete="off" value=${typed} onInput=${(/** @type {any} */ event) => setTyped(event.target.value)} /></label>
    <${Act} label=${t('refused.keep')} disabled=${typed.trim() === ''} onPress=${() => onRepair({ ...body, [field]: typed.trim() })} /></div>`;
}
