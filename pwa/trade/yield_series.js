/** Chances of enough good ones among 1, 2, 3… brought, term by term; all terms are above zero. */
import { TradeError } from '../errors.js';
import { finite } from './amounts.js';

/** Nobody brings home more. */
export const MOST = 1000000;
const HAIR = 1e-12;
const STEP = 1e250;

/** A chance of all or nothing. */
export class NoCertainty extends TradeError {
  static code = 'yields-no-certainty';
  static says = 'The {what} must lie between 0 and 1; certainty cannot be had.';
  static nextStep = 'Take 0.95, say.';
}

/** More than a million. */
export class TooManyToBring extends TradeError {
  static code = 'yields-too-many';
  static says = 'More than {most} would have to be brought.';
  static nextStep = 'Buy new, or be content with a smaller chance.';
}

/**
 * The number, if it lies between 0 and 1 and is neither.
 * @param {number} number
 * @param {string} what
 */
export function openChance(number, what) {
  if (finite(number, what) <= 0 || number >= 1) throw new NoCertainty({ what });
  return number;
}

/**
 * The chances with needed, needed + 1… brought, each good with that share. The term of so many is
 * the chance that the last of them is the last good one needed.
 * @param {number} needed
 * @param {number} good
 */
export const known = (needed, good) =>
  series(
    needed,
    () => good,
    (many) => ((1 - good) * many) / (many - needed + 1),
  );

/**
 * The same where the share good has a beta distribution of a and b.
 * @param {number} needed
 * @param {number} a
 * @param {number} b
 */
export const learned = (needed, a, b) =>
  series(
    needed,
    (place) => (a + place) / (a + b + place),
    (many) => (((b + many - needed) / (a + b + many)) * many) / (many - needed + 1),
  );

/**
 * The first number that reaches the chance wanted.
 * @param {Iterable<number>} chances
 * @param {number} needed
 * @param {number} wanted
 */
export function least(chances, needed, wanted) {
  const aim = openChance(wanted, 'chance') - HAIR;
  let many = needed;
  for (const reached of chances) {
    if (many > MOST) break;
    if (reached >= aim) return Object.freeze({ bring: many, chance_reached: reached });
    many += 1;
  }
  throw new TooManyToBring({ most: MOST });
}

/**
 * The chance with so many brought; none with fewer than needed.
 * @param {Iterable<number>} chances
 * @param {number} needed
 * @param {number} brought
 */
export function at(chances, needed, brought) {
  let many = needed;
  if (brought < needed) return 0;
  for (const reached of chances) {
    if (many === brought) return reached;
    many += 1;
  }
  return 0;
}

/**
 * Sums of terms above zero, held in steps of 1e250 so that none is lost below the least.
 * @param {number} needed
 * @param {(place: number) => number} first
 * @param {(many: number) => number} grow
 */
function* series(needed, first, grow) {
  let term = 1;
  let steps = 0;
  for (let place = 0; place < needed; place++) {
    term *= first(place);
    if (term < 1 / STEP) {
      term *= STEP;
      steps += 1;
    }
  }
  let whole = 0;
  for (let many = needed; ; many++) {
    whole += term;
    if (steps && whole >= 1) {
      term /= STEP;
      whole /= STEP;
      steps -= 1;
    }
    yield Math.min(1, whole * (1 / STEP) ** steps);
    term *= grow(many);
  }
}
