/**
 * Property classes of bolts: proof, yield and tensile stress, and the loads of a thread in them.
 * Table values, not a judgement about the bolt in hand.
 */
import { aboveZero, facts, finite, word } from './amounts.js';
import { MM_AN_INCH, stressAreaMm2 } from './thread.js';
import { ClassSize, ClassThread, ClassUnknown } from './thread_errors.js';
import { convert } from './units.js';

/** @typedef {import('./thread.js').Thread} Thread */
/** @typedef {import('./thread.js').Standard} Standard */
/** @typedef {readonly [over: number, most: number, proof: number, yields: number, tensile: number]} Row */

const MPA_A_KSI = convert(1, 'ksi', 'MPa');

/**
 * MPa by diameter in mm: ISO 898-1:2013, table 3 (8.8, 10.9, 12.9 fetched, the rest from memory).
 * @type {Map<string, Row[]>}
 */
// biome-ignore format: a table reads in rows
const METRIC = new Map(Object.entries({
  4.6: [[1.6, 39, 225, 240, 400]],
  4.8: [[1.6, 39, 310, 340, 420]],
  5.6: [[1.6, 39, 280, 300, 500]],
  5.8: [[1.6, 39, 380, 420, 520]],
  6.8: [[1.6, 39, 440, 480, 600]],
  8.8: [[1.6, 16, 580, 640, 800], [16, 39, 600, 660, 830]],
  9.8: [[1.6, 16, 650, 720, 900]],
  10.9: [[1.6, 39, 830, 940, 1040]],
  12.9: [[1.6, 39, 970, 1100, 1220]],
}));

/**
 * ksi by diameter in inches: SAE J429, table 1 (2, 5, 8 fetched, the rest from memory).
 * @type {Map<string, Row[]>}
 */
// biome-ignore format: a table reads in rows
const INCH = new Map(Object.entries({
  'SAE 1': [[0.25, 1.5, 33, 36, 60]],
  'SAE 2': [[0.25, 0.75, 55, 57, 74], [0.75, 1.5, 33, 36, 60]],
  'SAE 4': [[0.25, 1.5, 65, 100, 115]],
  'SAE 5': [[0.25, 1, 85, 92, 120], [1, 1.5, 74, 81, 105]],
  'SAE 5.2': [[0.25, 1, 85, 92, 120]],
  'SAE 7': [[0.25, 1.5, 105, 115, 133]],
  'SAE 8': [[0.25, 1.5, 120, 130, 150]],
  'SAE 8.1': [[0.25, 1.5, 120, 130, 150]],
  'SAE 8.2': [[0.25, 1, 120, 130, 150]],
}));

const CLASS =
  /^(?:(sae)(?:\s*j429)?\s*|(?:sae\s*)?(?:j429\s*)?(gr\.?|grade|class|cl\.?)\s*)?([0-9.]+)$/;

/** The names of all classes, metric first. */
export const CLASSES = Object.freeze([...METRIC.keys(), ...INCH.keys()]);

/**
 * The name of a property class as people write it: "grade 8" and a bare 8 are SAE classes.
 * @param {string} typed
 * @param {Standard | null} [standard]
 */
export function classOf(typed, standard = null) {
  const text = typeof typed === 'string' ? typed.trim() : '';
  const found = CLASS.exec(text.toLowerCase().replace(/([0-9]),([0-9])/g, '$1.$2'));
  const number = found?.[3] ?? '';
  const name = METRIC.has(number) && !found?.[1] ? number : `SAE ${number}`;
  const metric = METRIC.has(name);
  if (!metric && !INCH.has(name)) throw new ClassUnknown({ typed: text.slice(0, 20) });
  if (standard !== null) word(standard, 'standard');
  if (standard !== null && (standard === 'metric') !== metric) {
    throw new ClassThread({ name, thread: `${standard} threads` });
  }
  return name;
}

/** @type {(name: string, diameterMm: number) => Row} */
function rowOf(name, diameterMm) {
  finite(diameterMm, 'diameter');
  const metric = METRIC.get(name);
  const rows = metric ?? INCH.get(name);
  if (!rows) throw new ClassUnknown({ typed: name });
  const [size, unit] = metric ? [diameterMm, 'mm'] : [diameterMm / MM_AN_INCH, 'in'];
  const hair = 1e-9 * size;
  const least = rows[0]?.[0] ?? 0;
  const found = rows.find((row) => size <= row[1] + hair && size >= least - hair);
  if (found) return found;
  throw new ClassSize({
    name,
    size: `${Math.round(size * 1e4) / 1e4} ${unit}`,
    least: `${least} ${unit}`,
    most: `${rows.at(-1)?.[1]} ${unit}`,
  });
}

/**
 * The proof stress of a class (as classOf names it) in MPa.
 * @param {string} name
 * @param {number} diameterMm
 */
export const proofStressMpa = (name, diameterMm) =>
  rowOf(name, diameterMm)[2] * (METRIC.has(name) ? 1 : MPA_A_KSI);

/**
 * The yield stress (lower yield or 0.2 %) of a class in MPa.
 * @param {string} name
 * @param {number} diameterMm
 */
export const yieldStressMpa = (name, diameterMm) =>
  rowOf(name, diameterMm)[3] * (METRIC.has(name) ? 1 : MPA_A_KSI);

/**
 * Proof, yield and tensile stress of a class in one size, as printed: metric classes in MPa, SAE
 * classes in psi. A boundary belongs to the lower line.
 * @param {string} propertyClass
 * @param {number} diameterMm
 */
export function stresses(propertyClass, diameterMm) {
  const name = classOf(propertyClass);
  const [, , proof, yields, tensile] = rowOf(name, aboveZero(diameterMm, 'diameter'));
  const times = METRIC.has(name) ? 1 : 1000;
  return Object.freeze({
    property_class: name,
    unit: METRIC.has(name) ? 'MPa' : 'psi',
    proof: proof * times,
    yields: yields * times,
    tensile: tensile * times,
  });
}

/**
 * Proof, yield and least breaking load: stress × tensile stress area.
 * @param {Thread} thread
 * @param {string} propertyClass
 */
export function loads(thread, propertyClass) {
  const name = classOf(propertyClass, facts(thread, 'thread').standard);
  const [, , proof, yields, tensile] = rowOf(name, thread.diameter_mm);
  const times = stressAreaMm2(thread) * (METRIC.has(name) ? 1 : MPA_A_KSI);
  return Object.freeze({
    proof_load_N: proof * times,
    yield_load_N: yields * times,
    ultimate_load_N: tensile * times,
  });
}
