/** What may be on a thread, in the words of the page; the states themselves stand in trade/lubricant. */

import { STATES, stateOf } from '../trade/lubricant.js';
import { t } from './texts/index.js';

/** A state by its name on the page; the owner's own words as they are. @param {string} word */
export const lubricantSays = (word) => (STATES.includes(word) ? t(`lubricant.${word}`) : word);

/** The choice of a working that somebody's words come to. @param {string} words */
export const choiceOf = (words) => (stateOf(words) ?? 'unknown').replace(' ', '-');
