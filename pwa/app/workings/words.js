/** What the fields and lines of a working are called. */
import { stateOf } from '../../trade/lubricant.js';
import { lubricantSays } from '../lubricants.js';
import { capital } from '../run/figures.js';
import { hasText, t } from '../texts/index.js';

/** @typedef {import('../../trade/workings/working.js').Ask} Ask */

/** The most particular text there is. @param {string[]} keys */
const first = (keys) => keys.find(hasText) ?? '';

/** @param {string} working @param {string} name */
export const askSays = (working, name) => t(first([`ask.${working}.${name}`, `ask.${name}`]));

/** Asks that are answered with a lubricant. */
const OF_LUBRICANT = ['lubricant', 'value-for'];

/** @param {string} ask @param {string} word */
export function choiceSays(ask, word) {
  const says = t(first([`choice.${ask}.${word}`, `choice.${word}`]));
  if (says || !OF_LUBRICANT.includes(ask)) return says || word;
  return capital(lubricantSays(stateOf(word) ?? word));
}

/** @param {string} working @param {string} name */
export const lineSays = (working, name) => t(first([`line.${working}.${name}`, `line.${name}`]));

/** A word as result. @param {string} word */
export const wordSays = (word) => t(first([`word.${word}`, `ask.${word}`, `choice.${word}`]));

/**
 * What stands below a field: what to measure, and what is taken when it stays empty.
 * @param {string} working
 * @param {Ask} ask
 */
export function hintOf(working, ask) {
  const key = first([`ask.${working}.${ask.name}.hint`, `ask.${ask.name}.hint`]);
  const unit = ask.quantity === 'share' ? '%' : (ask.unit ?? '');
  const left =
    ask.default && ask.quantity !== 'choice'
      ? t('work.default', { value: `${ask.default} ${unit}`.trim() })
      : '';
  return [key && t(key), left].filter(Boolean).join(' ');
}
