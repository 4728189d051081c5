/** What is typed into a working: kept as a draft, with the units this device used last. */
import { useMemo } from 'preact/hooks';
import { UNIT_WORDS } from '../../trade/units.js';
import { useDraft } from '../draft.js';
import { settings } from '../settings.js';
import { outcomeOf } from './outcome.js';

/** @typedef {import('../../trade/workings/working.js').Working} Working */
/** @typedef {import('../../trade/workings/working.js').Ask} Ask */
/** @typedef {{typed: Record<string, any>, units: Record<string, string>}} Draft */
/** @typedef {{typed: Record<string, any>, units?: Record<string, string>}} First what the record it was opened from knows */

/** Units of a person who reads pounds. @type {Record<string, string>} */
const POUNDS = { length: 'in', volume: 'in³', force: 'lbf', pressure: 'psi', mass: 'oz' };

/**
 * The ask with the quantity it has now; "any" stays where none is chosen.
 * @param {Ask} ask
 * @param {Ask[]} asks
 * @param {Draft} draft
 * @returns {Ask}
 */
function plainAsk(ask, asks, draft) {
  if (!ask.follows) return ask;
  const followed = asks.find(({ name }) => name === ask.follows);
  const quantity = draft.typed[ask.follows] || followed?.default || ask.quantity;
  const words = Object.keys(/** @type {Record<string, any>} */ (UNIT_WORDS)[quantity] ?? {});
  return { ...ask, quantity, unit: words[0] ?? null, units: words };
}

/** The place of a unit in the draft: one for each quantity. @param {Ask} ask */
const placeOf = (ask) => (ask.follows ? `${ask.name}:${ask.quantity}` : ask.name);

/** @param {Ask} ask @param {Draft} draft */
function unitOf(ask, draft) {
  const kept = draft.units[placeOf(ask)];
  if (kept && ask.units.includes(kept)) return kept;
  const mine = settings.unit.value;
  if (ask.quantity === 'torque') return mine;
  const pounds = mine.startsWith('lbf') ? POUNDS[ask.quantity] : undefined;
  return pounds ?? ask.unit ?? ask.units[0] ?? '';
}

/**
 * What the working is given: texts, with a unit where there is one.
 * @param {Ask[]} asks
 * @param {Draft} draft
 */
function givenOf(asks, draft) {
  /** @type {Record<string, any>} */
  const given = {};
  for (const ask of asks) {
    const unit = ask.units.length > 0 ? unitOf(ask, draft) : '';
    const one = (/** @type {string} */ value) => (unit ? { value, unit } : value);
    const typed = draft.typed[ask.name];
    if (ask.many)
      given[ask.name] = (typed ?? []).map((/** @type {string} */ each) => one(each ?? ''));
    else if (typed) given[ask.name] = one(typed);
  }
  return given;
}

/**
 * @param {any} store
 * @param {Working} asked
 * @param {string} about the record it was opened from, which has a draft of its own
 * @param {First} first
 */
export function useWorking(store, asked, about, first) {
  const name = about ? `workings:${asked.name}:${about}` : `workings:${asked.name}`;
  const [draft, change] = useDraft(store, name, { typed: first.typed });
  const [units, changeUnits] = useDraft(
    store,
    `workings-units:${asked.name}`,
    /** @type {Record<string, string>} */ ({}),
  );
  /** @type {Draft} */
  const known = { typed: draft?.typed ?? {}, units: { ...units, ...first.units } };
  const asks = asked.asks.map((ask) => plainAsk(ask, asked.asks, known));
  const given = givenOf(asks, known);
  const outcome = useMemo(() => outcomeOf(asked, given), [asked, JSON.stringify(given)]);
  const put = (/** @type {string} */ name, /** @type {any} */ value) =>
    change((was) => ({ typed: { ...was.typed, [name]: value } }));
  return {
    ready: draft !== null && units !== null,
    asks,
    given,
    outcome,
    typed: (/** @type {Ask} */ ask) => known.typed[ask.name] ?? (ask.many ? [] : ''),
    unit: (/** @type {Ask} */ ask) => unitOf(ask, known),
    put,
    /** One of a list. @param {string} name @param {number} at @param {string} text */
    putAt: (name, at, text) =>
      change((was) => ({ typed: { ...was.typed, [name]: changedAt(was.typed[name], at, text) } })),
    /** @param {Ask} ask @param {string} unit */
    setUnit: (ask, unit) => {
      delete first.units?.[ask.name];
      changeUnits(unitsAfter(asks, known, ask, unit));
    },
    clear: () => change({ typed: {} }),
    empty: Object.values(known.typed).every((value) => value.length === 0),
  };
}

/** @param {string[] | undefined} list @param {number} at @param {string} text */
function changedAt(list, at, text) {
  const made = Array.from(
    { length: Math.max(list?.length ?? 0, at + 1) },
    (_, i) => list?.[i] ?? '',
  );
  made[at] = text;
  while (made.length > 0 && made.at(-1) === '') made.pop();
  return made;
}

/**
 * The chosen unit, also for those of the same quantity that are still empty.
 * @param {Ask[]} asks
 * @param {Draft} was
 * @param {Ask} ask
 * @param {string} unit
 */
function unitsAfter(asks, was, ask, unit) {
  const units = { ...was.units, [placeOf(ask)]: unit };
  for (const other of asks) {
    const same = other.quantity === ask.quantity && !(was.typed[other.name] ?? '').length;
    if (same) units[placeOf(other)] = unit;
  }
  return units;
}
