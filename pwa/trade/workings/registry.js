/** Every working by its name, in the order of the list. */
import { ADAPTER } from './adapter.js';
import { BRING } from './bring.js';
import { WEIGHTS } from './cautions.js';
import { CLEARANCE } from './clearance.js';
import { CONVERT } from './convert.js';
import { WorkingUnknown } from './errors.js';
import { PRELOAD } from './preload.js';
import { RATIO } from './ratio.js';
import { read } from './reading.js';
import { RING_GAP } from './ring_gap.js';
import { SET } from './sets.js';
import { STRETCH } from './stretch.js';

/** @typedef {import('./working.js').Working} Working */

/** @type {ReadonlyMap<string, Working>} */
export const WORKINGS = new Map(
  [CONVERT, ADAPTER, PRELOAD, STRETCH, CLEARANCE, RING_GAP, RATIO, SET, BRING].map((each) => [
    each.name,
    each,
  ]),
);

/** The working of a name. @param {string} name */
export function working(name) {
  const found = WORKINGS.get(name);
  if (!found) throw new WorkingUnknown({ working: name, known: [...WORKINGS.keys()].join(', ') });
  return found;
}

/**
 * What a working finds for what is given: text, numbers with units, or lists of them.
 * @param {string} name
 * @param {Record<string, any>} typed
 */
export function workOut(name, typed) {
  const asked = working(name);
  const values = read(asked, typed);
  const { lines, cautions = [] } = worked(asked, values);
  return {
    working: name,
    formula: asked.formula,
    source: asked.source,
    given: told(asked, values),
    lines,
    cautions: [...cautions].sort((one, other) => weight(one) - weight(other)),
  };
}

/** @param {import('./cautions.js').Caution} caution */
const weight = ({ word }) => WEIGHTS.indexOf(word);

/** @param {Working} asked @param {import('./given.js').Given} values */
function worked(asked, values) {
  try {
    return asked.work(values);
  } catch (refused) {
    nameAsk(asked, /** @type {any} */ (refused));
    throw refused;
  }
}

/**
 * The ask that a rule's refusal is about, by the name of the argument.
 * @param {Working} asked
 * @param {{code?: string, facts?: Record<string, unknown>}} refused
 */
function nameAsk(asked, { code = '', facts }) {
  const named = String(facts?.what ?? facts?.argument ?? '').replace(/[ _]/g, '-');
  const word = asked.blames?.[code] ?? asked.blames?.[named] ?? named;
  if (facts && asked.asks.some((ask) => ask.name === word)) facts.about ??= word;
}

/** @param {Working} asked @param {import('./given.js').Given} values */
function told(asked, values) {
  /** @type {Record<string, any>} */
  const facts = {};
  for (const ask of asked.asks) {
    const found = values.values[ask.name];
    if (!found) continue;
    const several = found.map(({ value, unit }) => (unit ? { value, unit } : value));
    facts[ask.name] = ask.many ? several : several[0];
  }
  return facts;
}
