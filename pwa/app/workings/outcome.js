/** What is typed into a working, judged: what is still wanted, what cannot be, or the result. */
import { following, readAsk } from '../../trade/workings/reading.js';
import { workOut } from '../../trade/workings/registry.js';

/** @typedef {import('../../trade/workings/working.js').Working} Working */
/** @typedef {import('../../trade/workings/working.js').Ask} Ask */
/**
 * @typedef {object} Outcome
 * @property {string[]} wanted names of asks that must be given and are not
 * @property {Record<string, string>} trouble sentence by the name of the ask it concerns
 * @property {string} refusal sentence about the whole
 * @property {any} told the result, when there is one
 */

/** @param {any} refused */
const sentence = (refused) => `${refused.says} ${refused.next}`;

/**
 * @param {Working} asked
 * @param {Record<string, any>} typed
 * @returns {Outcome}
 */
export function outcomeOf(asked, typed) {
  const read = readAll(asked, typed);
  const told = { wanted: read.wanted, trouble: read.trouble, refusal: '', told: null };
  if (read.wanted.length > 0 || Object.keys(read.trouble).length > 0) return told;
  try {
    return { ...told, told: workOut(asked.name, typed) };
  } catch (error) {
    return { ...told, ...refusedBy(error) };
  }
}

/**
 * Each ask by itself, so that every sentence finds its field.
 * @param {Working} asked
 * @param {Record<string, any>} typed
 */
function readAll(asked, typed) {
  /** @type {Record<string, import('../../trade/workings/given.js').Typed[]>} */
  const values = {};
  /** @type {Record<string, string>} */
  const trouble = {};
  /** @type {string[]} */
  const wanted = [];
  for (const ask of asked.asks) {
    try {
      values[ask.name] = readAsk(following(ask, values), typed[ask.name]);
    } catch (error) {
      const refused = known(error);
      if (refused.code === 'working-missing') wanted.push(ask.name);
      else trouble[ask.name] = sentence(refused);
    }
  }
  return { wanted, trouble };
}

/** @param {unknown} error @returns {Partial<Outcome>} */
function refusedBy(error) {
  const refused = known(error);
  const about = refused.facts?.about;
  if (refused.code === 'working-missing' && about) return { wanted: [about] };
  return about ? { trouble: { [about]: sentence(refused) } } : { refusal: sentence(refused) };
}

/** A refusal of ours; a fault of the page is no sentence for a person. @param {any} error */
function known(error) {
  if (!error?.says) throw error;
  return error;
}
