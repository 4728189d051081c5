/** Pieces put together so that the totals are as equal as can be: piston with pin with rod. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { aboveZero } from './amounts.js';
import { bettered, proved, spread, totals } from './even_totals.js';
import { pairs } from './narrowest.js';
import { keeping, merged } from './together.js';

const MOST_PLACES = 32;
/** Beyond it the best arrangement of three or more columns is sought but not proved. */
const MOST_STATES = 50000;
/** Beyond it three or more columns are joined one by one and left so. */
const MOST_BETTERED = 16;

/** Not one of each for every place. */
export class ColumnsDiffer extends TradeError {
  static code = 'assemblies-columns-differ';
  static says = 'There are {counts} pieces: not one of each for every assembly.';
  static nextStep = 'Weigh what is missing, or choose a set of equal number first.';
}

/** One column only, or none, or empty ones. */
export class NothingToPair extends TradeError {
  static code = 'assemblies-nothing';
  static says = 'There must be two columns at least, with one piece in each.';
  static nextStep = 'Weigh pistons and rods, say.';
}

/** More places than an engine has. */
export class TooManyPlaces extends TradeError {
  static code = 'assemblies-many';
  static says = '{places} places are more than are balanced at a time.';
  static nextStep = 'Balance one bank after the other.';
}

/**
 * The arrangement with the least heaviest total less lightest total. Two columns are always solved
 * exactly, three up to nine places; beyond that columns are put anew in turn, not proved.
 * @param {readonly (readonly number[])[]} columnsG pistons, pins, rods…, one of each for a place
 * @param {readonly (readonly (number | null)[])[]} [together] pieces that stay in one assembly, counted from 1
 */
export function balance(columnsG, together = []) {
  checkColumns(columnsG);
  const held = merged(together, columnsG.length, columnsG[0]?.length ?? 0);
  const rows = arranged(columnsG, keeping(held));
  return Object.freeze({
    assemblies: Object.freeze(rows.map((row) => row.map((at) => at + 1))),
    totals_g: Object.freeze(totals(columnsG, rows)),
    spread_g: spread(columnsG, rows),
    proved: provable(columnsG.length, columnsG[0]?.length ?? 0),
  });
}

/**
 * For each place the piece of every column, counted from 0.
 * @param {readonly (readonly number[])[]} weights
 * @param {(row: readonly number[]) => boolean} [keeps] whether a row parts nothing that stays together
 */
export function arranged(weights, keeps = () => true) {
  const start = joined(weights, keeps);
  if (weights.length === 2 || start.length > MOST_BETTERED) return start;
  const rows = bettered(weights, start, keeps);
  return provable(weights.length, weights[0]?.length ?? 0) ? proved(weights, rows, keeps) : rows;
}

/**
 * Column by column, each put to the totals so far as equally as can be.
 * @param {readonly (readonly number[])[]} weights
 * @param {(row: readonly number[]) => boolean} keeps
 */
function joined(weights, keeps) {
  let rows = (weights[0] ?? []).map((_, at) => [at]);
  for (const column of weights.slice(1)) {
    const table = totals(weights, rows).map((total, place) =>
      column.map((each, at) => (keeps([...(rows[place] ?? []), at]) ? total + each : Infinity)),
    );
    const taken = pairs(table);
    rows = rows.map((row, place) => [...row, Number(taken[place])]);
  }
  return rows;
}

/**
 * @param {number} columns
 * @param {number} places
 */
function provable(columns, places) {
  let states = 0;
  let ways = 1;
  for (let done = 0; done <= places; done++) {
    states += ways ** (columns - 1);
    ways = (ways * (places - done)) / (done + 1);
  }
  return columns === 2 || states <= MOST_STATES;
}

/** @param {readonly (readonly number[])[]} columns */
function checkColumns(columns) {
  const counts = many(columns, 'columns').map((column) => many(column, 'column').length);
  if (columns.length < 2 || !Math.max(...counts)) throw new NothingToPair();
  if (new Set(counts).size > 1) throw new ColumnsDiffer({ counts: counts.join(', ') });
  if (Number(counts[0]) > MOST_PLACES) throw new TooManyPlaces({ places: counts[0] });
  for (const column of columns) for (const each of column) aboveZero(each, 'weight');
}
