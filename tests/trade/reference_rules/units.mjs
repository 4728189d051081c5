// Published values of units: factors both ways, temperatures, what people type.
import { read } from '../../../pwa/trade/typed.js';
import { convert, convertDifference, UNIT_WORDS } from '../../../pwa/trade/units.js';

function converted({ value, interval, unit, to }) {
  if (interval !== undefined) return { interval: convertDifference(interval, unit, to), unit: to };
  return { value: convert(value, unit, to), unit: to };
}

function typed(given) {
  const amount = read(given.typed, given.wanted);
  const gives = { value: amount.value, unit: amount.unit };
  for (const word of Object.keys(UNIT_WORDS[given.wanted])) {
    gives[`value_${word}`] = convert(Number(amount.number), amount.measured.unit, word);
  }
  return gives;
}

export const byShape = (given) => ('typed' in given ? typed(given) : converted(given));

export const topics = {};
