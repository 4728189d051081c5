/** Clearance: the room between a bore and a shaft, how sure it is, and whether it is in a window. */
import { fromResolution } from '../dimension.js';
import { clearance, judge } from '../fit.js';
import { plausible } from '../rule_of_thumb.js';
import { convert } from '../units.js';
import { caution } from './cautions.js';
import { amount, decimalsFor, shownWith, text, usual, word } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */

const READINGS = ['bore', 'shaft'];
const COVERAGE = 2;
const KINDS = [
  'oil-clearance',
  'piston-to-wall-cast',
  'piston-to-wall-forged',
  'pin',
  'lifter-in-bore',
  'stem-in-guide',
  'ring-side-clearance',
  'rod-side-clearance',
];

/** Clearance or interference with its band, and the verdict where there is a window. @param {Given} given */
function work(given) {
  const unit = given.unit('bore');
  const [boreU, shaftU] = READINGS.map((name) => standard(given, name));
  const found = clearance(given.inside('bore', 'mm'), given.inside('shaft', 'mm'), boreU, shaftU);
  const room = convert(found.clearance_mm, 'mm', unit);
  const sure = COVERAGE * convert(found.standard_uncertainty_mm ?? 0, 'mm', unit);
  const places = placesOf(given, room);
  const { told, cautions } = verdict(given, found, places, sure);
  const thumb = usualOf(given, found, places);
  const typed = READINGS.every((name) => given.has(`${name}-sure-to`));
  return {
    lines: [...told, roomOf(room, sure, unit, places), ...thumb.told],
    cautions: [...cautions, ...thumb.cautions, ...(typed ? [] : [caution('only-digits')])],
  };
}

/** The standard uncertainty of a reading; half of what it is sure to, or of its last digit. @param {Given} given @param {string} name */
function standard(given, name) {
  const unit = given.unit(name);
  const own = given.insideOrNull(`${name}-sure-to`, unit);
  const u = own === null ? fromResolution(10 ** -given.decimals(name)) : own / COVERAGE;
  return convert(u, unit, 'mm');
}

/** Decimals of the finer of the readings. @param {Given} given @param {number} room */
function placesOf(given, room) {
  if (given.unit('bore') !== given.unit('shaft')) return decimalsFor(room, 2);
  return Math.max(...READINGS.map((name) => given.decimals(name)));
}

/** @param {number} room @param {number} sure @param {string} unit @param {number} places */
function roomOf(room, sure, unit, places) {
  const name = room >= 0 ? 'clearance' : 'interference';
  const size = room >= 0 ? room : -room;
  return amount(name, size, unit, {
    figures: 2,
    decimals: places,
    band: [size - sure, size + sure],
  });
}

/** @param {Given} given @param {ReturnType<typeof clearance>} found @param {number} places @param {number} sure */
function verdict(given, found, places, sure) {
  if (!given.has('least') && !given.has('most')) return { told: [], cautions: [] };
  const decision = judge(
    found,
    given.insideOrNull('least', 'mm'),
    given.insideOrNull('most', 'mm'),
  );
  const unit = given.unit('bore');
  const window = windowOf(given);
  const cautions = [];
  if (decision.lies === 'outside') {
    const value = `${shownWith(convert(found.clearance_mm, 'mm', unit), places)} ${unit}`;
    cautions.push(caution('clearance-outside', { value, window }));
  }
  if (decision.lies === 'too-close-to-call')
    cautions.push(caution('clearance-close', { sure: text(sure, unit, 2) }));
  if (!decision.provable) cautions.push(caution('clearance-narrow', { window }));
  return { told: [word('verdict', decision.lies)], cautions };
}

/**
 * What such a fit usually has, and a notice where this one does not.
 * @param {Given} given
 * @param {ReturnType<typeof clearance>} found
 * @param {number} places
 */
function usualOf(given, found, places) {
  if (!given.has('kind')) return { told: [], cautions: [] };
  const band = plausible(given.word('kind'), found.clearance_mm, given.inside('shaft', 'mm'));
  const unit = given.unit('bore');
  const told = usual(band, unit);
  if (band.plausible) return { told: [told], cautions: [] };
  const value = `${shownWith(convert(found.clearance_mm, 'mm', unit), places)} ${unit}`;
  return {
    told: [told],
    cautions: [caution('fit-unusual', { value, usual: `${told.shown} ${unit}` })],
  };
}

/** The window as it was typed: "0.03 mm to 0.06 mm", or one end of it. @param {Given} given */
function windowOf(given) {
  const [least, most] = ['least', 'most'].map((name) =>
    given.has(name) ? `${given.typed(name).value} ${given.typed(name).unit}` : '',
  );
  if (least && most) return `${least} to ${most}`;
  return least ? `from ${least}` : `up to ${most}`;
}

/** @type {import('./working.js').Working} */
export const CLEARANCE = {
  name: 'clearance',
  formula:
    'clearance = bore − shaft; U = √(U of bore² + U of shaft²); inside when at least U away from both ends',
  source:
    'Sure to: JCGM 100:2008 (GUM), 5.1.2. Verdict: decision rule of ISO 14253-1, quoted from memory. The window is the owner’s. What is usual: common practice, no source.',
  asks: [
    ask('bore', 'length', { unit: 'mm' }),
    ask('shaft', 'length', { unit: 'mm' }),
    ask('least', 'length', { unit: 'mm', optional: true, signed: true }),
    ask('most', 'length', { unit: 'mm', optional: true, signed: true }),
    ask('kind', 'choice', { choices: KINDS, optional: true }),
    ask('bore-sure-to', 'length', { unit: 'mm', optional: true }),
    ask('shaft-sure-to', 'length', { unit: 'mm', optional: true }),
  ],
  work,
  blames: { 'limits-crossed': 'most' },
};
