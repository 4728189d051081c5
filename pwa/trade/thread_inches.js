/** Sizes of inch threads: fractions, decimals and screw numbers. */
import { ThreadUnread } from './thread_errors.js';

/** Whole numbers up to here are inches rather than screw numbers, if the pitch is coarse enough. */
export const FIRST_INCH_SIZES = 4;
/** Parts of an inch: 64ths and the thousandths of screw numbers are whole numbers of them. */
export const PARTS = 8000;

const LARGEST_NUMBER = 12;
const SMALL_NUMBER_TPI = 24;
const NEAR_INCH = 0.0006;

/**
 * The size in parts of an inch; a whole number is a screw number or whole inches, as its threads
 * per inch tell.
 * @type {(text: string, size: string, numbered: boolean, tpi: number | null) => number}
 */
export function inchParts(text, size, numbered, tpi) {
  if (size.includes('/')) return fraction(text, size) * PARTS;
  if (size.includes('.')) return nearest(Number(size)) * PARTS;
  const number = Number(size);
  const inches = number <= FIRST_INCH_SIZES && (tpi === null || tpi < SMALL_NUMBER_TPI);
  if (!numbered && inches && number) return number * PARTS;
  if (number > LARGEST_NUMBER) throw new ThreadUnread({ typed: text });
  return ((60 + 13 * number) * PARTS) / 1000;
}

/** @type {(text: string, size: string) => number} */
function fraction(text, size) {
  const numbers = (size.match(/[0-9]+/g) ?? []).map(Number);
  const [whole = 0, above = 0, below = 0] = numbers.length === 2 ? [0, ...numbers] : numbers;
  if (!below) throw new ThreadUnread({ typed: text });
  return whole + above / below;
}

/**
 * Decimals are rounded sizes: 0.312 is 5/16, .190 is a number 10.
 * @param {number} inches
 */
function nearest(inches) {
  const known = Array.from({ length: 256 }, (_, i) => (i + 1) / 64);
  for (let number = 0; number <= LARGEST_NUMBER; number += 1) known.push((60 + 13 * number) / 1000);
  const best = known.reduce((a, b) => (Math.abs(b - inches) < Math.abs(a - inches) ? b : a));
  return Math.abs(best - inches) <= NEAR_INCH ? best : inches;
}

/**
 * The size as it is written: #10, 7/16, 1 1/8, and decimals where no rule has the mark.
 * @param {number} parts of an inch
 */
export function sizeText(parts) {
  const number = ((parts * 1000) / PARTS - 60) / 13;
  const whole = Math.round(number);
  if (Math.abs(number - whole) < 1e-9 && whole >= 0 && whole <= LARGEST_NUMBER) return `#${whole}`;
  const marks = (parts * 64) / PARTS;
  if (!Number.isInteger(marks)) return `${Math.round((parts / PARTS) * 1e6) / 1e6}`;
  let [above, below] = [marks % 64, 64];
  while (above && above % 2 === 0) [above, below] = [above / 2, below / 2];
  const inches = Math.floor(marks / 64);
  return [inches || '', above ? `${above}/${below}` : ''].filter(Boolean).join(' ');
}
