/** The keypad of a reading: figures above, units, three by four keys. */

import { html } from '../frame/index.js';
import { Press } from '../press.js';
import { settings } from '../settings.js';
import { t, unitWords } from '../texts/index.js';
import { decimalSign, inUnit, local, written } from './figures.js';
import { offTarget } from './typed.js';

/** @param {{text: string, unit: string, reading: any, target: any, bolt?: string}} props bolt: said in place of the other unit */
export function Typed({ text, unit, reading, target, bolt }) {
  const off = reading && offTarget(reading, target);
  const long = text.length > 5 ? 'yes' : 'no';
  return html`<div class="typed" role="status" data-long=${long}><span class="big">${local(text)}</span><span class="unit">${unit}</span></div>
    <p class="same"><b>${reading ? bolt || otherUnit(reading) : ''}</b>
    <span>${off ? t(`reading.${off.side}${bolt ? '.short' : ''}`, { percent: local(off.percent) }) : ''}</span></p>`;
}

/** @param {any} reading */
function otherUnit(reading) {
  if (reading.unit === '°') return '';
  const unit = [settings.unit.value, 'N·m', 'lbf·ft'].find((u) => u !== reading.unit);
  return unit ? written(inUnit(reading, unit)) : '';
}

/** @param {{units: string[], unit: string, onPress: (unit: string) => void}} props */
export function Units({ units, unit, onPress }) {
  if (units.length < 2) return null;
  const ordered = [unit, ...units.filter((u) => u !== unit)];
  const keys = [...units].sort((a, b) => ordered.indexOf(a) - ordered.indexOf(b));
  return html`<div class="units" role="group" aria-label=${t('reading.unit')}>${keys.map(
    (
      word,
    ) => html`<${Press} key=${word} class="press" aria-pressed=${String(word === unit)} aria-label=${unitWords(word)}
      onPress=${() => onPress(word)}>${word}</${Press}>`,
  )}</div>`;
}

/** @param {{onKey: (key: string) => void}} props */
export function Keypad({ onKey }) {
  const left = settings.hand.value === 'left';
  const last = left ? ['erase', '0', '.'] : ['.', '0', 'erase'];
  const keys = ['1', '2', '3', '4', '5', '6', '7', '8', '9', ...last];
  return html`<div class="keypad" role="group" aria-label=${t('reading.keypad')}>${keys.map(
    (key) =>
      html`<${Press} key=${key} class="press" typing onPress=${() => onKey(key)} ...${named(key)}>${face(key)}</${Press}>`,
  )}</div>`;
}

/** @param {string} key */
function named(key) {
  if (key === '.') return { 'aria-label': t('reading.decimal') };
  return key === 'erase' ? { 'aria-label': t('reading.erase') } : {};
}

/** @param {string} key */
function face(key) {
  if (key === '.') return decimalSign;
  if (key !== 'erase') return key;
  return html`<svg viewBox="0 0 38 32" aria-hidden="true"><path d="M12 5h21a2 2 0 0 1 2 2v18a2 2 0 0 1-2 2H12L3 16zM17.5 11.5l9 9M26.5 11.5l-9 9" fill="none" stroke="currentColor" stroke-width="2.8" stroke-linejoin="round" stroke-linecap="round" /></svg>`;
}
