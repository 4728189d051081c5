/** Ring gap: what it is where the ring will run, and what is still to be filed. */
import { gapPerBore, ringGapAfter, toFile } from '../fit.js';
import { convert } from '../units.js';
import { caution } from './cautions.js';
import { amount, decimalsFor, span } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */

/** Share of the bore; common practice, no source. */
const USUAL = [0.003, 0.006];

/** The gap at the lowest travel, what is to be filed, and the band that is usual. @param {Given} given */
function work(given) {
  const unit = given.unit('gap');
  const bore = given.inside('bore', 'mm');
  const measured = given.inside('gap', 'mm');
  const gap = given.has('bore-change')
    ? ringGapAfter(measured, given.inside('bore-change', 'mm'))
    : measured;
  const size = convert(gap, 'mm', unit);
  const places = Math.max(given.decimals('gap'), decimalsFor(size, 2));
  const [least = 0, most = 0] = USUAL.map((each) => convert(bore * each, 'mm', unit));
  const perBore = gapPerBore(gap, bore);
  const filing = fileOff(given, gap, unit, places);
  return {
    lines: [
      amount('gap', size, unit, { figures: 2, decimals: places }),
      ...filing,
      amount('per-bore', perBore, null, { decimals: 4 }),
      span('usual', [least, most], unit, 2, 'rule-of-thumb'),
    ],
    cautions: cautionsOf(
      given,
      perBore,
      filing.some(({ value }) => value !== 0),
    ),
  };
}

/** @param {Given} given @param {number} gap @param {string} unit @param {number} places */
function fileOff(given, gap, unit, places) {
  if (!given.has('wanted-gap')) return [];
  const off = convert(toFile(gap, given.inside('wanted-gap', 'mm')), 'mm', unit);
  return [amount('to-file', off, unit, { figures: 2, decimals: places })];
}

/** @param {Given} given @param {number} perBore @param {boolean} left something is still to be filed */
function cautionsOf(given, perBore, left) {
  const [least = 0, most = 0] = USUAL;
  const found = [];
  if (perBore < least && !left) found.push(caution('ring-gap-small'));
  if (perBore > most) found.push(caution('ring-gap-large'));
  if (!given.has('wanted-gap')) found.push(caution('ring-gap-manual'));
  return found;
}

/** @type {import('./working.js').Working} */
export const RING_GAP = {
  name: 'ring-gap',
  formula: 'gap there = gap + π × bore change; to file = wanted − gap',
  source:
    'Geometry of the circle. Usual gap, 0.003 to 0.006 of the bore: common practice, no source.',
  asks: [
    ask('gap', 'length', { unit: 'mm' }),
    ask('bore', 'length', { unit: 'mm' }),
    ask('wanted-gap', 'length', { unit: 'mm', optional: true }),
    ask('bore-change', 'length', { unit: 'mm', optional: true, signed: true }),
  ],
  work,
  blames: { 'fit-gap-closed': 'bore-change' },
};
