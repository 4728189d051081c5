/** Fields of the forms: words, numbers as people type them, counts, chips. */

import { parseNumber } from '../trade/units.js';
import { html, Icon, Key } from './frame/index.js';
import { Press } from './press.js';
import { t } from './texts/index.js';

/**
 * @param {{id: string, label: string, value: string, onChange: (value: string) => void, hint?: string, type?: string, area?: boolean}} props
 */
export function TextField({ id, label, value, onChange, hint, type = 'text', area }) {
  const onInput = (/** @type {any} */ event) => onChange(event.target.value);
  const described = hint ? `${id}-hint` : undefined;
  const input = area
    ? html`<textarea id=${id} value=${value} onInput=${onInput} aria-describedby=${described}></textarea>`
    : html`<input id=${id} type=${type} autocomplete="off" value=${value} onInput=${onInput} aria-describedby=${described} />`;
  return html`<div class="field"><label for=${id}>${label}</label>${input}${hint && html`<p class="hint" id=${described}>${hint}</p>`}</div>`;
}

/**
 * @param {{id: string, label: string, value: string, onChange: (value: string) => void, hint?: string, signed?: boolean}} props
 */
export function NumberField({ id, label, value, onChange, hint, signed = false }) {
  const wrong = troubleOf(value, signed);
  const described = hint || wrong ? `${id}-hint` : undefined;
  return html`<div class="field"><label for=${id}>${label}</label>
    <input id=${id} type="text" inputmode="decimal" autocomplete="off" value=${value} aria-invalid=${wrong ? 'true' : undefined}
      aria-describedby=${described} onInput=${(/** @type {any} */ event) => onChange(event.target.value)} />
    ${wrong ? html`<p class="wrong" id=${described}><${Icon} name="i-caution" />${wrong}</p>` : hint && html`<p class="hint" id=${described}>${hint}</p>`}</div>`;
}

/** Why it is no number, or nothing. @param {string} typed @param {boolean} signed */
function troubleOf(typed, signed) {
  if (!typed.trim()) return '';
  try {
    parseNumber(typed, { signed });
    return '';
  } catch (error) {
    const two = /** @type {any} */ (error).code === 'number-two-meanings';
    return t(two ? 'form.number.two' : 'form.number', { typed, dot: '.' });
  }
}

/** A typed number as it is kept, or null. @param {string} typed */
export const numberOf = (typed) => keptOf(typed, false);

/** The same, which may stand below zero. @param {string} typed */
export const signedOf = (typed) => keptOf(typed, true);

/** @param {string} typed @param {boolean} signed */
function keptOf(typed, signed) {
  if (!typed?.trim() || troubleOf(typed, signed)) return null;
  return parseNumber(typed, { signed });
}

/**
 * @param {{label: string, value: string, words: {value: string, says: string}[], onChange: (value: string) => void}} props
 */
export function Chips({ label, value, words, onChange }) {
  return html`<fieldset><legend>${label}</legend><div class="chips">${words.map(
    (
      word,
    ) => html`<${Key} key=${word.value} className="press" pressed=${word.value === value} label=${word.says}
      onPress=${() => onChange(word.value)} />`,
  )}</div></fieldset>`;
}

/**
 * Yes, no, or not said; `texts` is the key before `.yes`, `.no` and `.unsaid`.
 * @param {{label: string, texts: string, value: any, onChange: (value: boolean | null) => void}} props
 */
export function YesNo({ label, texts, value, onChange }) {
  const now = value === true ? 'yes' : value === false ? 'no' : 'unsaid';
  const words = ['unsaid', 'yes', 'no'].map((word) => ({
    value: word,
    says: t(`${texts}.${word}`),
  }));
  const pick = (/** @type {string} */ word) => onChange(word === 'unsaid' ? null : word === 'yes');
  return html`<${Chips} label=${label} value=${now} words=${words} onChange=${pick} />`;
}

/** @param {{label: string, value: number, least?: number, most?: number, onChange: (value: number) => void}} props */
export function Count({ label, value, least = 1, most = 400, onChange }) {
  const step = (/** @type {number} */ by) => onChange(Math.min(most, Math.max(least, value + by)));
  return html`<fieldset><legend>${label}</legend><div class="count">
    <${Press} class="press" typing aria-label=${t('form.less')} onPress=${() => step(-1)}>−</${Press}>
    <span class="fig" role="status">${value}</span>
    <${Press} class="press" typing aria-label=${t('form.more')} onPress=${() => step(1)}>+</${Press}></div></fieldset>`;
}
