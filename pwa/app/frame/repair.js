/** Puts a refused entry right: its number or its words, whichever it has. */
import { useState } from 'preact/hooks';
import { TORQUE_WORDS } from '../../trade/units.js';
import { t } from '../texts/index.js';
import { Act } from './act.js';
import { Choice } from './choices.js';
import { html } from './html.js';

/** The field of a body that can be entered again. @param {any} body */
function fieldOf(body) {
  for (const name of ['reading', 'value', 'target']) {
    if (body[name] && typeof body[name] === 'object') return name;
  }
  for (const name of ['text', 'reason', 'note']) {
    if (name in body) return name;
  }
  if ('reading' in body) return 'reading';
  return null;
}

/**
 * The draft of the repaired entry.
 * @param {any} entry
 * @param {any} body
 */
export const mended = (entry, body) => ({ heading: entry.heading, about: entry.about, body, ...(entry.after ? { after: entry.after } : {}) });

/** A number as it is kept: a plain decimal, both separators read. @param {string} text */
const plain = (text) => text.trim().replace(',', '.');

/** @param {{entry: any, onRepair: (body: any) => Promise<unknown>}} props */
export function Repair({ entry, onRepair }) {
  const field = fieldOf(entry.body);
  const was = field ? entry.body[field] : null;
  const measured = field !== null && !['text', 'reason', 'note'].includes(field);
  const [words, setWords] = useState(String((measured ? was?.value : was) ?? ''));
  const [unit, setUnit] = useState(was?.unit ?? 'N·m');
  if (field === null) return html`<p>${t('refused.other')}</p>`;
  const good = measured ? /^\d+(\.\d+)?$/.test(plain(words)) : words.trim() !== '';
  const keep = () => onRepair({ ...entry.body, [field]: measured ? { value: plain(words), unit } : words.trim() });
  const says = t(measured ? 'refused.reading' : 'refused.text');
  return html`<div class="form"><label class="field"><span>${says}</span><input type="text" class=${measured ? 'big' : ''} inputmode=${measured ? 'decimal' : 'text'} autocomplete="off" value=${words} onInput=${(/** @type {any} */ event) => setWords(event.target.value)} /></label>
    ${measured && html`<${Choice} says=${t('set.unit')} options=${TORQUE_WORDS.map((word) => ({ value: word, label: word }))} value=${unit} onChoose=${setUnit} />`}
    <${Act} label=${t('refused.keep')} disabled=${!good} onPress=${keep} /></div>`;
}
