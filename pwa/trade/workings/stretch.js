/** Stretch: how far a bolt of sections stretches under load, or the load from its stretch. */
import { loads } from '../strength.js';
import { bolt, load, stiffness, stretch } from '../stretch.js';
import { convert } from '../units.js';
import { BLAMES, CLASS, forceUnit, threaded } from './bolts.js';
import { caution } from './cautions.js';
import { AskMissing, RowsUneven } from './errors.js';
import { amount, share } from './lines.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */
/** @typedef {import('../stretch.js').Section} Section */

/** Stretch or load, stiffness, and the share of proof where thread and class are known. @param {Given} given */
function work(given) {
  if (!given.has('stretched') && !given.has('load'))
    throw new AskMissing({ ask: 'load or stretch', about: 'load' });
  const sections = sectionsOf(given);
  const modulus = given.inside('modulus', 'MPa');
  const { first, forceN } = worked(given, sections, modulus);
  const proof = ofProof(given, forceN);
  const stiff = amount('stiffness', stiffness(modulus, sections) / 1000, 'kN/mm');
  return {
    lines: [first, ...proof.told, stiff],
    cautions: [...proof.cautions, caution('stretch-more')],
  };
}

/** @param {Given} given @param {readonly Section[]} sections @param {number} modulus */
function worked(given, sections, modulus) {
  if (given.has('stretched')) {
    const forceN = load(given.inside('stretched', 'mm'), modulus, sections);
    const unit = forceUnit(given, 'stretched');
    return { first: amount('load', convert(forceN, 'N', unit), unit), forceN };
  }
  const forceN = given.inside('load', 'N');
  const unit = given.unit('load') === 'lbf' ? 'in' : 'mm';
  const longer = convert(stretch(forceN, modulus, sections), 'mm', unit);
  return { first: amount('stretch', longer, unit), forceN };
}

/** Plain lengths by their diameter, and the free thread by its stress area. @param {Given} given */
function sectionsOf(given) {
  if (given.has('length') !== given.has('diameter'))
    throw new RowsUneven({ row: 'section', about: 'length' });
  /** @type {Section[]} */
  const found = [];
  if (given.has('length')) {
    const across = given.allIn('diameter', 'mm');
    given.allIn('length', 'mm').forEach((length, at) => {
      found.push({ length_mm: length, area_mm2: (Math.PI / 4) * (across[at] ?? 0) ** 2 });
    });
  }
  if (given.has('free-thread'))
    found.push(...bolt(threaded(given), 0, given.inside('free-thread', 'mm')));
  if (found.length === 0) throw new AskMissing({ ask: 'length of a section', about: 'length' });
  return found;
}

/** @param {Given} given @param {number} forceN */
function ofProof(given, forceN) {
  if (!given.has('thread') || !given.has('class')) return { told: [], cautions: [] };
  const part = forceN / loads(threaded(given), given.word('class')).proof_load_N;
  return {
    told: [share('share-of-proof', part, { mark: 'table-value' })],
    cautions: part > 1 ? [caution('stretch-over-proof')] : [],
  };
}

/** @type {import('./working.js').Working} */
export const STRETCH = {
  name: 'stretch',
  formula: 'stretch = load ÷ modulus × Σ (length ÷ area)',
  source:
    'Hooke’s law. Stress area of the free thread: ISO 898-1 or ASME B1.1, quoted from memory. 205 GPa for steel: common practice, no source.',
  asks: [
    ask('load', 'force', { unit: 'kN', optional: true }),
    ask('stretched', 'length', { unit: 'mm', optional: true }),
    ask('length', 'length', { unit: 'mm', many: true, optional: true, row: 'section' }),
    ask('diameter', 'length', { unit: 'mm', many: true, optional: true, row: 'section' }),
    ask('thread', 'designation', { optional: true }),
    ask('free-thread', 'length', { unit: 'mm', optional: true }),
    CLASS,
    ask('modulus', 'pressure', { unit: 'GPa', default: '205' }),
  ],
  work,
  blames: BLAMES,
};
