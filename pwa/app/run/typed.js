/** A number typed on the reading's own keys: what a key does to it, and what it then means. */

import { asksUnit, deviation, outOfReason } from '../../trade/torque.js';
import { parseNumber, quantityOf, TORQUE_WORDS } from '../../trade/units.js';
import { fit } from '../../trade/wrench.js';

const WHOLE_DIGITS = 5;
const DECIMALS = 2;

/**
 * @typedef {import('./figures.js').Measured} Measured
 */

/**
 * The text after a key; what does not fit changes nothing.
 * @param {string} text plain decimal, "." as separator
 * @param {string} key 0 to 9, ".", "erase"
 * @param {number} [decimals] how many may stand behind the separator
 */
export function press(text, key, decimals = DECIMALS) {
  if (key === 'erase') return text.slice(0, -1);
  if (key === '.') return text.includes('.') ? text : `${text || '0'}.`;
  const next = text === '0' ? key : text + key;
  const [whole = '', part = ''] = next.split('.');
  return whole.length > WHOLE_DIGITS || part.length > decimals ? text : next;
}

/**
 * The typed text as a measured value, or null while it is none; zero is one.
 * @param {string} text
 * @param {string} unit
 * @returns {Measured | null}
 */
export function amountOf(text, unit) {
  if (!/[0-9]/.test(text)) return null;
  return { value: parseNumber(text.replace(/\.$/, ''), { oneDecimalKey: true }), unit };
}

/**
 * The typed text as the reading of a pull, which is never nothing.
 * @param {string} text
 * @param {string} unit
 */
export function readingOf(text, unit) {
  const amount = amountOf(text, unit);
  return Number(amount?.value) > 0 ? amount : null;
}

/** @param {Measured | null} target @returns {string[]} units the digits may be read in */
export function unitsFor(target) {
  const angle = target && quantityOf(target.unit) === 'angle';
  return angle ? ['°'] : [...TORQUE_WORDS];
}

/**
 * The reading against its target, for the line beneath the figure.
 * @param {Measured} reading
 * @param {Measured | null} target
 * @returns {{percent: string, side: 'over' | 'under' | 'on'} | null}
 */
export function offTarget(reading, target) {
  if (!target || quantityOf(reading.unit) !== quantityOf(target.unit)) return null;
  const off = deviation(reading, target);
  const percent = Math.abs(off) >= 100 ? Math.abs(off).toFixed(0) : Math.abs(off).toFixed(1);
  return { percent, side: percent === '0.0' ? 'on' : off > 0 ? 'over' : 'under' };
}

/**
 * What is asked before a reading is kept: which scale, or whether it can be so.
 * @param {Measured} reading
 * @param {Measured | null} target
 * @param {any} wrench as the joint view gives it
 * @returns {{ask: 'which', unit: string} | {ask: 'reason'} | {ask: 'beyond'} | null}
 */
export function askOf(reading, target, wrench) {
  if (!target || quantityOf(reading.unit) !== quantityOf(target.unit)) return null;
  const unit = asksUnit(reading, target);
  if (unit && unit !== reading.unit) return { ask: 'which', unit };
  if (outOfReason(reading, target)) return { ask: 'reason' };
  const most = wrench?.most && wrench.unit ? { value: wrench.most, unit: wrench.unit } : null;
  const beyond = most && quantityOf(most.unit) === quantityOf(reading.unit);
  return beyond && fit(reading, null, most) === 'ends-at' ? { ask: 'beyond' } : null;
}
