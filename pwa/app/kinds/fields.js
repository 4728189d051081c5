/** What a kind says: shown in the form, typed into it, and what a change writes. */

import { value } from '../../log/workshop.js';
import { benchUnits, quantityIn } from '../quantities.js';

const TEXTS = ['name', 'plural', 'source'];
const OTHERS = ['own_place', 'single_use'];
const LISTS = ['criteria', 'measures', 'companions'];
const VERDICTS = ['spare', 'machine', 'scrap'];

/**
 * What stands in the form at first; reasons are a line of words each.
 * @param {any} subject null for a new kind
 * @param {Record<string, any>} [start] fields of a ready kind
 * @returns {Record<string, any>}
 */
export function shownFields(subject, start = {}) {
  const of = (/** @type {string} */ name) => value(subject, name) ?? start[name] ?? null;
  const reasons = of('reasons') ?? {};
  return {
    ...Object.fromEntries(TEXTS.map((name) => [name, of(name) ?? ''])),
    ...Object.fromEntries(OTHERS.map((name) => [name, of(name)])),
    ...Object.fromEntries(LISTS.map((name) => [name, of(name) ?? []])),
    ...Object.fromEntries(VERDICTS.map((word) => [word, (reasons[word] ?? []).join(', ')])),
  };
}

/** Words typed into one line. @param {string} typed */
export const parted = (typed) =>
  typed
    .split(',')
    .map((word) => word.trim())
    .filter(Boolean);

/** A limit as it is kept: a number, written with a point. @param {any} typed */
const limit = (typed) => String(typed).trim().replace(',', '.');

/** @param {string} name @param {any} typed */
function cell(name, typed) {
  if (name === 'positions' || name === 'directions')
    return typeof typed === 'string' ? parted(typed) : typed;
  if (name === 'least' || name === 'most') return limit(typed);
  return typeof typed === 'string' ? typed.trim() : typed;
}

/** Rows without their first words were never meant; cells that say nothing are left out. @param {any[]} rows @param {string} first */
const rowsOf = (rows, first) =>
  rows
    .filter((row) => row[first]?.trim())
    .map((row) =>
      Object.fromEntries(
        Object.entries(row)
          .map(([name, typed]) => [name, typed === null ? null : cell(name, typed)])
          .filter(([, typed]) => typed?.length),
      ),
    );

/** The fields of a filled form as an entry says them. @param {Record<string, any>} shown @returns {Record<string, any>} */
function written(shown) {
  const reasons = Object.fromEntries(VERDICTS.map((word) => [word, parted(shown[word])]));
  return {
    ...Object.fromEntries(TEXTS.map((name) => [name, shown[name].trim() || null])),
    ...Object.fromEntries(OTHERS.map((name) => [name, shown[name]])),
    criteria: rowsOf(shown.criteria, 'asks'),
    measures: rowsOf(shown.measures, 'name'),
    companions: shown.companions,
    reasons,
  };
}

/**
 * Only what is different from what stands, so that two devices may each change another field.
 * @param {any} subject null for a new kind
 * @param {Record<string, any>} shown
 */
export function changes(subject, shown) {
  const before = written(shownFields(subject));
  const now = written(shown);
  const differs = (/** @type {[string, any]} */ [name, to]) =>
    JSON.stringify(to) !== JSON.stringify(before[name]);
  return Object.fromEntries(Object.entries(now).filter(differs));
}

const NUMBER = /^-?(?:[0-9]{1,20}[.,]?[0-9]{0,15}|[.,][0-9]{1,15})$/;

/** Whether a limit can be kept; an empty one can. @param {any} typed */
export const mayBeLimit = (typed) =>
  !String(typed ?? '').trim() || NUMBER.test(String(typed).trim());

/** A number of more digits is not read, and nothing is judged by it. @param {string} typed */
const tooLong = (typed) => typed.replace(/[^0-9]/g, '').length > 15;

/** @param {any} row */
const limitsOf = ({ least, most }) => [least, most].map((typed) => limit(typed ?? ''));

/** @param {any} row */
function wanting(row) {
  const [least = '', most = ''] = limitsOf(row);
  if (![least, most].every(mayBeLimit)) return 'number';
  if (tooLong(least) || tooLong(most)) return 'shorter';
  if (least && most && Number(least) > Number(most)) return 'uncrossed';
  const unit = String(row.unit ?? '').trim();
  const known = benchUnits(quantityIn(unit) ?? row.quantity, unit).length > 0;
  return (row.name?.trim() || least || most) && !known ? 'unit' : null;
}

/**
 * The first measure of a form that cannot be kept so, and what it wants.
 * @param {any[]} measures
 * @returns {{name: string, wants: string} | null}
 */
export function wantingMeasure(measures) {
  const found = measures.map((row) => ({ name: row.name?.trim() ?? '', wants: wanting(row) }));
  return /** @type {any} */ (found.find(({ wants }) => wants)) ?? null;
}
