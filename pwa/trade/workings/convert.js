/** Convert: one amount in every other unit of its quantity. */
import { convert as converted, shown, UNIT_WORDS } from '../units.js';
import { line } from './lines.js';
import { ask } from './working.js';

const QUANTITIES = [
  'torque',
  'length',
  'pressure',
  'volume',
  'mass',
  'temperature',
  'force',
  'flow',
  'travel-speed',
  'spring-rate',
  'area',
  'angle',
];

/** The amount in each other unit with the digits its own are worth. @param {import('./given.js').Given} given */
function work(given) {
  const typed = given.measured('amount');
  const words = Object.keys(
    /** @type {Record<string, any>} */ (UNIT_WORDS)[given.word('quantity')] ?? {},
  );
  return {
    lines: words
      .filter((word) => word !== typed.unit)
      .map((to) =>
        line('amount', {
          value: converted(Number(typed.value), typed.unit, to),
          unit: to,
          shown: shown(typed, to),
        }),
      ),
  };
}

/** @type {import('./working.js').Working} */
export const CONVERT = {
  name: 'convert',
  formula: 'amount × size of its unit ÷ size of the other',
  source:
    'NIST Special Publication 811, appendix B.8, quoted from memory; every factor is exact by definition.',
  asks: [
    ask('quantity', 'choice', { choices: QUANTITIES, default: 'torque' }),
    ask('amount', 'any', { follows: 'quantity', signed: true }),
  ],
  work,
};
