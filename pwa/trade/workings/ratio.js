/** Ratio: compression ratio from measured volumes, quench, and what would give another ratio. */
import { changeFor, measured } from '../compression_ratio.js';
import { fromResolution } from '../dimension.js';
import { displacement } from '../geometry.js';
import { plausible } from '../rule_of_thumb.js';
import { convert } from '../units.js';
import { caution } from './cautions.js';
import { amount, word } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */
/** @typedef {import('../compression_ratio.js').Cylinder} Cylinder */

const COVERAGE = 2;
/** Ask → key of a cylinder, and the unit it is in there. @type {[string, keyof Cylinder, string][]} */
const MEASURED = [
  ['bore', 'boreMm', 'mm'],
  ['stroke', 'strokeMm', 'mm'],
  ['chamber', 'chamberCm3', 'cm³'],
  ['gasket-thickness', 'gasketThicknessMm', 'mm'],
  ['piston-below-deck', 'pistonBelowDeckMm', 'mm'],
  ['gasket-bore', 'gasketBoreMm', 'mm'],
  ['dish', 'dishCm3', 'cm³'],
  ['ring-land', 'ringLandCm3', 'cm³'],
];

/** Ratio with its band, volumes, quench; displacement and changes where they are asked for. @param {Given} given */
function work(given) {
  const cylinder = /** @type {Cylinder} */ (
    Object.fromEntries(MEASURED.map(([name, key, unit]) => [key, given.insideOrNull(name, unit)]))
  );
  const known = MEASURED.filter(([name]) => given.has(name));
  const unsure = Object.fromEntries(
    known.map(([name, key, unit]) => [key, standard(given, name, unit)]),
  );
  const found = measured(cylinder, unsure);
  const volume = given.unit('chamber');
  const length = given.unit('gasket-thickness');
  /** @type {[number, number] | null} */
  const band = found.low === null || found.high === null ? null : [found.low, found.high];
  return {
    lines: [
      amount('ratio', found.ratio, null, { decimals: 2, band }),
      amount('swept', convert(found.swept_cm3, 'cm³', volume), volume, { figures: 4 }),
      amount('clearance-volume', convert(found.clearance_volume_cm3, 'cm³', volume), volume),
      ...(found.quench_mm === null
        ? []
        : [amount('quench', convert(found.quench_mm, 'mm', length), length)]),
      ...whole(given, cylinder, volume),
      ...changes(given, cylinder, volume, length),
      ...matters(found),
    ],
    cautions: [...cautionsOf(found), ...digits(given), caution('ratio-volumes')],
  };
}

/**
 * Half of what it is sure to; where that is not typed, only its last digit is doubted.
 * @param {Given} given
 * @param {string} name
 * @param {string} to
 */
function standard(given, name, to) {
  const sure = to === 'cm³' ? 'volume-sure-to' : 'length-sure-to';
  if (given.has(sure)) return given.inside(sure, to) / COVERAGE;
  return convert(fromResolution(10 ** -given.decimals(name)), given.unit(name), to);
}

/** @param {Given} given @param {Cylinder} cylinder @param {string} volume */
function whole(given, cylinder, volume) {
  if (!given.has('cylinders')) return [];
  const all = displacement(cylinder.boreMm, cylinder.strokeMm, given.count('cylinders'));
  return [amount('displacement', convert(all, 'cm³', volume), volume, { figures: 4 })];
}

/**
 * What each thing alone would have to be; left out where it cannot bring the ratio.
 * @param {Given} given
 * @param {Cylinder} cylinder
 * @param {string} volume
 * @param {string} length
 */
function changes(given, cylinder, volume, length) {
  if (!given.has('wanted-ratio')) return [];
  const found = changeFor(cylinder, given.number('wanted-ratio'));
  /** @type {[string, number | null, string, string][]} */
  const wanted = [
    ['gasket-for', found.gasket_thickness_mm, 'mm', length],
    ['chamber-for', found.chamber_cm3, 'cm³', volume],
    ['deck-cut-for', found.deck_cut_mm > 0 ? found.deck_cut_mm : null, 'mm', length],
    ['dish-for', found.dish_cm3, 'cm³', volume],
  ];
  return wanted.flatMap(([name, size, from, unit]) =>
    size === null ? [] : [amount(name, convert(size, from, unit), unit)],
  );
}

/** @param {ReturnType<typeof measured>} found */
function matters({ matters: ranked, standard_uncertainty: u }) {
  const [first] = ranked;
  if (!first || !u) return [];
  return [word('matters-most', first[0].replaceAll('_', '-'))];
}

/** @param {Given} given */
const digits = (given) =>
  given.has('length-sure-to') && given.has('volume-sure-to') ? [] : [caution('only-digits')];

/** @param {ReturnType<typeof measured>} found */
function cautionsOf(found) {
  if (found.quench_mm === null) return [caution('ratio-strikes')];
  return plausible('quench', found.quench_mm).plausible ? [] : [caution('ratio-quench')];
}

/** @type {import('./working.js').Working} */
export const RATIO = {
  name: 'ratio',
  formula:
    'ratio = (swept + clearance) ÷ clearance; clearance = chamber + gasket + deck + dish (− dome) + ring land; quench = deck + gasket',
  source:
    'Definition of the ratio. Sure to: JCGM 100:2008 (GUM), 5.1.2. Usual quench: common practice, no source.',
  asks: [
    ask('bore', 'length', { unit: 'mm' }),
    ask('stroke', 'length', { unit: 'mm' }),
    ask('chamber', 'volume', { unit: 'cm³' }),
    ask('gasket-thickness', 'length', { unit: 'mm' }),
    ask('piston-below-deck', 'length', { unit: 'mm', signed: true }),
    ask('wanted-ratio', 'number', { optional: true }),
    ask('gasket-bore', 'length', { unit: 'mm', optional: true }),
    ask('dish', 'volume', { unit: 'cm³', optional: true, signed: true }),
    ask('ring-land', 'volume', { unit: 'cm³', optional: true }),
    ask('cylinders', 'count', { optional: true }),
    ask('length-sure-to', 'length', { unit: 'mm', optional: true }),
    ask('volume-sure-to', 'volume', { unit: 'cm³', optional: true }),
  ],
  work,
  blames: { 'ratio-not-above-one': 'wanted-ratio', 'ratio-no-clearance-volume': 'chamber' },
};
