// Keys of published cases that end in a unit, as plain numbers by name; results in every unit.
import { convert, quantityOf } from '../../pwa/trade/units.js';

const WORDS = {
  _mm: 'mm', _in: 'in', _cm: 'cm', _thou: 'thou',
  _cm3: 'cm³', _in3: 'in³', _L: 'L', _mm3: 'mm³', _cc: 'cm³',
  _psi: 'psi', _kPa: 'kPa', _bar: 'bar', _g: 'g', _kg: 'kg', _oz: 'oz', _N: 'N',
  _deg: '°', _rpm: '1/min', _s: 's', _m_s: 'm/s', _ft_min: 'ft/min', _lbf: 'lbf',
};
const BASE = {
  length: 'mm', volume: 'cm³', pressure: 'kPa', mass: 'g', force: 'N',
  angle: '°', speed: '1/min', time: 's', 'travel-speed': 'm/s',
};
const ENDINGS = Object.keys(WORDS).sort((a, b) => b.length - a.length);

export const ending = (key) => ENDINGS.find((each) => key.endsWith(each));

function inBase(value, word) {
  if (Array.isArray(value)) return value.map((each) => inBase(each, word));
  return value === null ? null : convert(value, word, BASE[quantityOf(word)]);
}

/** Without its unit each name holds a number in the base unit; what has no unit stays as it is. */
export function named(given) {
  return Object.fromEntries(
    Object.entries(given).map(([key, value]) => {
      const suffix = ending(key);
      return suffix ? [key.slice(0, -suffix.length), inBase(value, WORDS[suffix])] : [key, value];
    }),
  );
}

/** The amount, given in the base unit of its quantity, in every unit a case may ask for. */
export function told(name, quantity, size) {
  if (typeof size !== 'number') return {};
  return Object.fromEntries(
    Object.entries(WORDS)
      .filter(([, word]) => quantityOf(word) === quantity)
      .map(([suffix, word]) => [name + suffix, convert(size, BASE[quantity], word)]),
  );
}
