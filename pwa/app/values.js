/** Torque figures as they are shown: the value as it was written, and the person's other unit. */
import { shown } from '../trade/units.js';
import { settings } from './settings.js';

const separator = new Intl.NumberFormat(navigator.languages[0]).format(0.5).slice(1, 2);

/** A number's text with the device's own separator. @param {string} text */
export const local = (text) => text.replace('.', separator);

/** The unit shown beside a unit: the person's, or where that is the same, the other usual one. @param {string} unit */
export function otherUnit(unit) {
  const mine = settings.unit.value;
  if (unit !== mine) return mine;
  return unit === 'N·m' ? 'lbf·ft' : 'N·m';
}

/**
 * A torque in the other unit, or null for what is no torque.
 * @param {{value: string, unit: string}} measured
 * @returns {{value: string, unit: string} | null}
 */
export function inOther({ value, unit }) {
  if (unit === '°') return null;
  const to = otherUnit(unit);
  return { value: shown({ value, unit }, to), unit: to };
}
