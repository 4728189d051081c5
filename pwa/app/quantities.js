/** What a bench measures, and the units its instruments show. */
import { UNIT_WORDS } from '../trade/units.js';

const WORDS = /** @type {Readonly<Record<string, Record<string, unknown>>>} */ (UNIT_WORDS);

export const QUANTITIES = Object.freeze([
  'length',
  'mass',
  'volume',
  'pressure',
  'torque',
  'force',
  'flow',
  'angle',
  'temperature',
]);

/** Units no instrument of a bench shows. */
const RARE = new Set(['cm', 'm', 'ft', 'km', 'GPa', 'turn']);

/** Units that measure a quantity. @param {string} quantity @returns {string[]} */
export const unitsOf = (quantity) => Object.keys(WORDS[quantity] ?? {});

/**
 * The units an instrument of a bench shows; the one already taken is always among them.
 * @param {string} quantity
 * @param {string} taken
 */
export const benchUnits = (quantity, taken) =>
  unitsOf(quantity).filter((word) => word === taken || !RARE.has(word));

/** The quantity a unit belongs to, as far as it is known. @param {string} unit @returns {string | null} */
export const quantityIn = (unit) =>
  Object.entries(WORDS).find(([, units]) => unit in units)?.[0] ?? null;
