/** How far a bolt stretches under load, section by section, and the load from its stretch. */
import { many } from './alike.js';
import { aboveZero, count, facts, notBelowZero, numbers } from './amounts.js';
import { stressAreaMm2 } from './thread.js';

/** @typedef {import('./thread.js').Thread} Thread */
/** @typedef {{length_mm: number, area_mm2: number}} Section carries the whole load */

/**
 * Σ L/A in 1/mm: the sections are springs in series.
 * @param {readonly Section[]} sections
 */
export function give(sections) {
  count(many(sections, 'sections').length, 'number of sections', 1);
  return sections.reduce((sum, each) => {
    const { length_mm: length, area_mm2: area } = facts(each, 'section');
    const part = aboveZero(length, 'length of a section') / aboveZero(area, 'area of a section');
    return sum + part;
  }, 0);
}

/**
 * ΔL = F/E Σ L/A in millimetres, within the elastic range. Hooke's law.
 * @param {number} loadN
 * @param {number} modulusMpa
 * @param {readonly Section[]} sections
 */
export function stretch(loadN, modulusMpa, sections) {
  numbers({ load: loadN, modulus: modulusMpa });
  const strain = aboveZero(loadN, 'load') / aboveZero(modulusMpa, 'modulus');
  return strain * give(sections);
}

/**
 * F = ΔL E/Σ L/A in newtons, the way back.
 * @param {number} stretchMm
 * @param {number} modulusMpa
 * @param {readonly Section[]} sections
 */
export function load(stretchMm, modulusMpa, sections) {
  numbers({ stretch: stretchMm, modulus: modulusMpa });
  const pull = aboveZero(stretchMm, 'stretch') * aboveZero(modulusMpa, 'modulus');
  return pull / give(sections);
}

/**
 * E/Σ L/A in N/mm: the load for each millimetre of stretch.
 * @param {number} modulusMpa
 * @param {readonly Section[]} sections
 */
export const stiffness = (modulusMpa, sections) =>
  aboveZero(modulusMpa, 'modulus') / give(sections);

/**
 * The sections of a bolt as a caliper finds it: shank, and thread that is in no nut. What head and
 * nut give is left out, so the real stretch is somewhat more.
 * @param {Thread} thread
 * @param {number} shankMm
 * @param {number} freeThreadMm
 * @param {number | null} [waistMm] the diameter of a reduced shank
 * @returns {readonly Section[]}
 */
export function bolt(thread, shankMm, freeThreadMm, waistMm = null) {
  facts(thread, 'thread');
  const across = aboveZero(waistMm ?? thread.diameter_mm, 'waist');
  const both = [
    { length_mm: notBelowZero(shankMm, 'shank'), area_mm2: (Math.PI / 4) * across ** 2 },
    { length_mm: notBelowZero(freeThreadMm, 'free thread'), area_mm2: stressAreaMm2(thread) },
  ];
  const found = both.filter(({ length_mm: length }) => length > 0);
  count(found.length, 'number of sections', 1);
  return Object.freeze(found.map((each) => Object.freeze(each)));
}
