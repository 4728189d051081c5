/** What is wrong with one field, and the sentence that says so to a person. */
import { FieldMissing, FieldShape } from '../errors.js';

/**
 * The path to a field and the sort of trouble with it, a key of SAYS or "missing".
 * @typedef {{path: (string | number)[], sort: string}} Trouble
 */

/** @type {Readonly<Record<string, string>>} */
export const SAYS = Object.freeze({
  text: 'is no text',
  blank: 'is blank',
  id: 'is no id',
  number: 'is no number',
  whole: 'is no whole number',
  truth: 'is neither true nor false',
  list: 'is no list',
  object: 'has not the fields it should have',
  word: 'is none of the words it may be',
  many: 'has more lines than it may have',
  digest: 'is no digest of a picture',
  code: 'is no code of a label',
  stamp: 'is no stamp',
  least: 'is less than 1',
  spot: 'is no place on a picture',
});

/**
 * One line of a list, as a person calls it; other lists say "line".
 * @type {Readonly<Record<string, string>>}
 */
const ONE_OF = Object.freeze({
  passes: 'pass',
  values: 'value',
  fasteners: 'fastener',
  photos: 'photo',
  looks: 'look',
  readings: 'reading',
  codes: 'code',
  parts: 'part',
  cautions: 'caution',
  sequence: 'place in the sequence',
  criteria: 'criterion',
  measures: 'measure',
  companions: 'companion',
  pulls: 'pull',
  after: 'line of after',
});

/**
 * The refusal that names the field and the thing it belongs to.
 * @param {Trouble} trouble
 * @param {string} whose
 * @returns {import('../errors.js').Refusal}
 */
export function refusal(trouble, whose) {
  const what = named(trouble.path, whose);
  if (trouble.sort === 'missing') return new FieldMissing({ what });
  return new FieldShape({ what, trouble: SAYS[trouble.sort] });
}

/**
 * A path in words, innermost first: "The unit of value 1 of pass 2 of this joint".
 * @param {(string | number)[]} path
 * @param {string} whose
 * @returns {string}
 */
export function named(path, whose) {
  /** @type {string[]} */
  const words = [];
  for (const step of path) {
    if (typeof step === 'number') {
      const plural = (words.pop() ?? '').replace(/^the /, '');
      words.push(`${ONE_OF[plural] ?? 'line'} ${step + 1}`);
    } else if ((step !== 'fields' && step !== 'value') || path.length === 1) {
      words.push(`the ${step.replaceAll('_', ' ')}`);
    }
  }
  const spoken = [...words.reverse(), whose].join(' of ');
  return spoken.charAt(0).toUpperCase() + spoken.slice(1);
}
