/** What must not be torn apart where a line ends: a number and its unit, a ± and its number. */
import { spoken } from './texts/units.js';

const UNITS = ['%', ...Object.keys(spoken)]
  .map((unit) => unit.replace(/[.*/^]/g, '\\$&'))
  .join('|');
const BEFORE_UNIT = new RegExp(`(\\d) (?=(?:${UNITS})(?![\\p{L}\\d]))`, 'gu');

/** The same text with blanks that hold. @param {string} text */
export const inOneLine = (text) =>
  text.replace(BEFORE_UNIT, '$1\u00a0').replace(/± (?=\d)/g, '±\u00a0');
