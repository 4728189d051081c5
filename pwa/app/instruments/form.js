/** What the form of a wrench or an instrument holds: its fields, what holds it back, what it writes. */
import { value } from '../../log/workshop.js';
import { quantityOf } from '../../trade/units.js';
import { troubles } from '../../views/instrument.js';
import { signedOf } from '../forms_fields.js';
import { unitsOf } from '../quantities.js';

/** @typedef {Record<string, string>} Draft */

/** Sorts of instruments, each with what it measures and the unit it is mostly read in. @type {Readonly<Record<string, string>>} */
export const SORTS = Object.freeze({
  micrometer: 'mm',
  caliper: 'mm',
  'bore gauge': 'mm',
  'dial indicator': 'mm',
  'feeler gauge': 'mm',
  'ring gauge': 'mm',
  balance: 'g',
  burette: 'cm³',
  'pressure gauge': 'bar',
  'spring tester': 'N',
  'flow bench': 'L/min',
  'degree wheel': '°',
  straightedge: 'mm',
  other: 'mm',
});

export const WRENCH_SORTS = Object.freeze(['click', 'beam', 'dial', 'display', 'angle']);

const NUMBERS = ['least', 'most', 'graduation', 'resolution', 'deviation', 'uncertainty'];
const COMMON = ['name', 'sort', 'unit', 'least', 'most'];
const REST = ['deviation', 'calibrated', 'due', 'lies', 'note'];

/** Fields by heading. @type {Readonly<Record<string, string[]>>} */
export const FIELDS = Object.freeze({
  wrench: [...COMMON, 'graduation', ...REST],
  instrument: [...COMMON, 'quantity', 'resolution', 'uncertainty', ...REST],
});

/** How a new one begins. @type {Readonly<Record<string, Draft>>} */
export const START = Object.freeze({
  wrench: { sort: 'click', unit: 'N·m' },
  instrument: { sort: 'micrometer', quantity: 'length', unit: 'mm' },
});

/**
 * What a change brings with it: a sort its quantity and unit, a quantity a unit that measures it.
 * @param {string} heading
 * @param {string} name
 * @param {string} to
 * @returns {Draft}
 */
export function changeOf(heading, name, to) {
  if (heading === 'wrench')
    return name === 'sort' ? { sort: to, unit: to === 'angle' ? '°' : 'N·m' } : { [name]: to };
  const unit = SORTS[to];
  if (name === 'sort' && unit) return { sort: to, unit, quantity: quantityOf(unit) };
  if (name === 'quantity') return { quantity: to, unit: unitsOf(to)[0] ?? '' };
  return { [name]: to };
}

/**
 * What stands in the form: what is kept, and what was typed since.
 * @param {string} heading
 * @param {any} subject null for a new one
 * @param {Draft} draft
 * @returns {Draft}
 */
export function shownOf(heading, subject, draft) {
  const said = (FIELDS[heading] ?? []).map((name) => [name, value(subject, name) ?? '']);
  return { ...Object.fromEntries(said), ...(subject ? {} : START[heading]), ...draft };
}

/** A field as it is written. @param {string} name @param {string} typed */
const written = (name, typed) => (NUMBERS.includes(name) ? signedOf(typed) : typed.trim() || null);

/**
 * Only what is different is written, so that two devices may each change another field.
 * @param {string} heading
 * @param {any} subject
 * @param {Draft} shown
 * @returns {Record<string, string | null>}
 */
export function changes(heading, subject, shown) {
  const now = (FIELDS[heading] ?? []).map((name) => [name, written(name, shown[name] ?? '')]);
  return Object.fromEntries(
    now.filter(([name, to]) => to !== (value(subject, String(name)) ?? null)),
  );
}

/** No wrench is further off, in per cent. */
const MOST_OFF = 50;

/**
 * What holds the form back, as codes.
 * @param {string} heading
 * @param {Draft} shown
 * @param {string} today
 * @returns {string[]}
 */
export function held(heading, shown, today) {
  const said = Object.fromEntries(
    Object.entries(shown).map(([name, typed]) => [name, written(name, typed)]),
  );
  const unread = NUMBERS.some((name) => shown[name]?.trim() && said[name] === null);
  const off = heading === 'wrench' && Number(said.deviation ?? 0) > MOST_OFF;
  return [
    ...(unread ? ['number'] : []),
    ...(off ? ['deviation-of-none'] : []),
    ...troubles({ ...said, resolution: said.resolution ?? said.graduation }, today),
  ];
}
