// Keys of published cases that end in a unit of length, as millimetres by name.
import { convert } from '../../pwa/trade/units.js';

const LENGTHS = { _mm: 'mm', _in: 'in', _um: 'µm', _thou: 'thou', _cm: 'cm' };

function inMm(value, word) {
  if (Array.isArray(value)) return value.map((each) => inMm(each, word));
  return value === null ? null : convert(value, word, 'mm');
}

/** The lengths by name, and how a result in millimetres is told in the case's own unit. */
export function named(given) {
  const lengths = {};
  let ending = '_mm';
  for (const [key, value] of Object.entries(given)) {
    const suffix = Object.keys(LENGTHS).find((each) => key.endsWith(each));
    if (!suffix) continue;
    lengths[key.slice(0, -suffix.length)] = inMm(value, LENGTHS[suffix]);
    ending = suffix;
  }
  const told = (name, mm) =>
    typeof mm === 'number' ? { [name + ending]: convert(mm, 'mm', LENGTHS[ending]) } : {};
  return { lengths, told };
}
