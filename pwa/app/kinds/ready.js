/** Ready criteria as data: what the page offers when a kind is made. Limits stay empty for the owner. */

import { texts as around } from '../texts/ready_around.js';
import { texts as block } from '../texts/ready_block.js';
import { texts as crank, NO_SOURCE } from '../texts/ready_crank.js';
import { texts as valves } from '../texts/ready_valves.js';

/** @type {Record<string, string>} */
const all = { ...crank, ...valves, ...block, ...around };

/** @param {string | undefined} text @param {RegExp} [by] */
const parted = (text, by = /,\s*/) => (text ?? '').split(by).filter((word) => word.trim());

/** Fields that say nothing are left out. @param {Record<string, any>} fields */
const said = (fields) =>
  Object.fromEntries(Object.entries(fields).filter(([, text]) => text?.length));

/** @param {string[]} cells @param {number} at */
function criterion([asks = '', hint, good, bad, drawing], at) {
  return { id: `c${at + 1}`, ...said({ asks, hint, good, bad, drawing }) };
}

/** @param {string[]} cells @param {number} at */
function measure([name = '', quantity, unit, instrument, positions, directions], at) {
  const places = { positions: parted(positions), directions: parted(directions) };
  return { id: `m${at + 1}`, ...said({ name, quantity, unit, instrument, ...places }) };
}

/** @param {string[]} cells */
const reasons = ([spare, machine, scrap]) => ({
  spare: parted(spare),
  machine: parted(machine),
  scrap: parted(scrap),
});

/**
 * One ready kind: its fields as an entry would say them, and the names of what it goes with.
 * @param {string} text
 * @returns {{name: string, fields: Record<string, any>, goesWith: string[]}}
 */
export function read(text) {
  const [head = '', ...rest] = text.split('\n');
  const [name = '', plural, flags, companions] = head.split('|');
  const rows = (/** @type {string} */ sign) =>
    rest.filter((line) => line[0] === sign).map((line) => line.slice(1).trim().split('|'));
  const fields = {
    name,
    plural: plural?.toLowerCase(),
    criteria: rows('?').map(criterion),
    measures: rows('=').map(measure),
    reasons: reasons(rows('!')[0] ?? []),
    ...(flags === 'own' ? { own_place: true } : {}),
    ...(flags === 'once' ? { single_use: true } : {}),
    source: NO_SOURCE,
  };
  return { name, fields, goesWith: parted(companions) };
}

/** Every ready kind, by name. */
export const READY = Object.freeze(
  Object.values(all)
    .map(read)
    .sort((a, b) => (a.name < b.name ? -1 : 1)),
);

/** The ready kind of a name, if there is one. @param {string} name */
export const readyOf = (name) =>
  READY.find((one) => one.name.toLowerCase() === name.trim().toLowerCase()) ?? null;

/** Names of the ready kinds that the workshop has not yet. @param {{name: string}[]} kinds */
export function readyNames(kinds) {
  const here = new Set(kinds.map(({ name }) => name.toLowerCase()));
  return READY.map(({ name }) => name).filter((name) => !here.has(name.toLowerCase()));
}

/**
 * What a new kind of this name says at first; companions are those the workshop has already.
 * @param {string} name
 * @param {{id: string, name: string}[]} kinds
 * @returns {Record<string, any>}
 */
export function startOf(name, kinds) {
  const ready = readyOf(name);
  if (!ready) return { name };
  const wanted = ready.goesWith.map((word) => word.toLowerCase());
  const companions = kinds
    .filter((one) => wanted.includes(one.name.toLowerCase()))
    .map(({ id }) => id);
  return { ...ready.fields, ...(companions.length ? { companions } : {}) };
}
