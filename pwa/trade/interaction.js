/** Whether some people measure some parts differently: the interaction of a gauge study judged. */
import { aboveZero, count, notBelowZero, share } from './amounts.js';
import { below } from './beta.js';

const POOLED_ABOVE = 0.25;

/**
 * How likely so large an interaction comes of the scatter of the repeats alone, 0 to 1.
 * @param {number} meanSquareInteraction
 * @param {number} meanSquareRepeat
 * @param {{people: number, repeats: number, parts: number}} study
 */
export function chance(meanSquareInteraction, meanSquareRepeat, { people, repeats, parts }) {
  notBelowZero(meanSquareInteraction, 'mean square of the interaction');
  aboveZero(meanSquareRepeat, 'mean square of the repeats');
  const persons = count(people, 'people', 2);
  const pieces = count(parts, 'parts', 2);
  const within = persons * pieces * (count(repeats, 'repeats', 2) - 1);
  const between = (persons - 1) * (pieces - 1);
  const left = within / (within + (between * meanSquareInteraction) / meanSquareRepeat);
  return below(left, within / 2, between / 2);
}

/**
 * Whether to keep the interaction as a share of its own or to pool it with the repeats.
 * @param {number} chanceOfIt
 * @param {number} [above]
 * @returns {'kept' | 'pooled'}
 */
export function treatment(chanceOfIt, above = POOLED_ABOVE) {
  const level = share(above, 'level');
  return share(chanceOfIt, 'chance') > level ? 'pooled' : 'kept';
}
