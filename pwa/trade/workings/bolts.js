/** What the workings about bolts ask alike: thread, class, lubricant, and the unit of force. */
import { STATES as LUBRICANTS } from '../lubricant.js';
import { CLASSES } from '../strength.js';
import { parse } from '../thread_text.js';
import { ask } from './working.js';

/** @typedef {import('./given.js').Given} Given */

export const STATES = ['unknown', ...LUBRICANTS.map((state) => state.replace(' ', '-'))];
export const CLASS = ask('class', 'designation', { choices: [...CLASSES], optional: true });
/** @type {Record<string, string>} */
export const BLAMES = {
  'thread-unread': 'thread',
  'thread-pitch-missing': 'thread',
  'thread-two-meanings': 'thread',
  'thread-pitch-impossible': 'thread',
  'thread-series-differs': 'thread',
  'class-unknown': 'class',
  'class-size': 'class',
  'class-thread': 'class',
  'friction-impossible': 'nut-factor',
  'lower-nut-factor': 'nut-factor',
  'length-of-a-section': 'length',
  'area-of-a-section': 'diameter',
};

/** The thread as it was typed. @param {Given} given */
export const threaded = (given) => parse(given.word('thread'));

/** Pounds for who thinks in pounds, else kilonewtons. @param {Given} given @param {string} name */
export const forceUnit = (given, name) =>
  ['lbf·ft', 'lbf·in', 'lbf', 'in', 'thou'].includes(given.unit(name)) ? 'lbf' : 'kN';
