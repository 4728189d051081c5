/** Which column each row takes so that the sum of the costs is least, each column once at most. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { finite } from './amounts.js';

const MOST_ROWS = 100;
const MOST_COLUMNS = 2000;

/** More rows than columns, so that some row goes without. */
export class TooManyRows extends TradeError {
  static code = 'assignment-rows';
  static says = 'There are {rows} to serve and only {columns} to choose from.';
  static nextStep = 'Add to what there is to choose from, or serve fewer.';
}

/** More than a workshop chooses at a time. */
export class TooLarge extends TradeError {
  static code = 'assignment-large';
  static says = '{rows} times {columns} are more than are chosen at a time.';
  static nextStep = 'Choose in portions.';
}

/** Rows of different lengths. */
export class RowsUneven extends TradeError {
  static code = 'assignment-uneven';
  static says = 'Every row must have a cost for every column.';
  static nextStep = 'Give one cost each.';
}

/**
 * The column of each row, counted from 0, in an assignment of least cost (Hungarian method).
 * Several may cost the same; which of them is given is left open.
 * @param {readonly (readonly number[])[]} costs
 * @returns {number[]}
 */
export function cheapest(costs) {
  const rows = many(costs, 'costs').length;
  for (const row of costs) many(row, 'costs');
  const columns = costs[0]?.length ?? 0;
  if (costs.some((row) => row.length !== columns)) throw new RowsUneven();
  if (rows > columns) throw new TooManyRows({ rows, columns });
  if (rows > MOST_ROWS || columns > MOST_COLUMNS) throw new TooLarge({ rows, columns });
  for (const row of costs) for (const each of row) finite(each, 'cost');
  const state = begin(costs, columns);
  for (let row = 0; row < rows; row++) serve(state, row);
  return columnOfRow(state);
}

/**
 * Prices on rows and columns never let a pair cost less than both; a pair that costs just both is
 * free to use. Each row is served along the cheapest way through pairs in use.
 * @typedef {ReturnType<typeof begin>} State
 */

/**
 * @param {readonly (readonly number[])[]} costs
 * @param {number} columns
 */
function begin(costs, columns) {
  return {
    costs,
    columns,
    rowPrice: new Float64Array(costs.length),
    columnPrice: new Float64Array(columns),
    rowOf: new Int32Array(columns).fill(-1),
    from: new Int32Array(columns),
    left: new Float64Array(columns),
    seen: new Uint8Array(columns),
  };
}

/**
 * @param {State} state
 * @param {number} row
 */
function serve(state, row) {
  state.left.fill(Infinity);
  state.seen.fill(0);
  let last = -1;
  let at = row;
  while (at >= 0) {
    const next = nearest(state, at, last);
    raise(state, row, Number(state.left[next]));
    state.seen[next] = 1;
    last = next;
    at = Number(state.rowOf[next]);
  }
  hand(state, last, row);
}

/**
 * The column that costs least beyond its price, over all rows reached so far.
 * @param {State} state
 * @param {number} row
 * @param {number} last
 */
function nearest(state, row, last) {
  const line = state.costs[row] ?? [];
  const price = Number(state.rowPrice[row]);
  let best = -1;
  let least = Infinity;
  for (let column = 0; column < state.columns; column++) {
    const left = state.seen[column] ? Infinity : reach(state, column, line, price, last);
    if (left < least) {
      best = column;
      least = left;
    }
  }
  return best;
}

/**
 * @param {State} state
 * @param {number} column
 * @param {readonly number[]} line
 * @param {number} price
 * @param {number} last
 */
function reach({ columnPrice, left, from }, column, line, price, last) {
  const beyond = Number(line[column]) - price - Number(columnPrice[column]);
  if (beyond < Number(left[column])) {
    left[column] = beyond;
    from[column] = last;
  }
  return Number(left[column]);
}

/**
 * @param {State} state
 * @param {number} row the one being served
 * @param {number} by
 */
function raise({ rowPrice, columnPrice, rowOf, left, seen, columns }, row, by) {
  rowPrice[row] = Number(rowPrice[row]) + by;
  for (let column = 0; column < columns; column++) {
    if (seen[column]) {
      const held = Number(rowOf[column]);
      rowPrice[held] = Number(rowPrice[held]) + by;
      columnPrice[column] = Number(columnPrice[column]) - by;
    } else {
      left[column] = Number(left[column]) - by;
    }
  }
}

/**
 * Along the way back every row moves over by one column, and the first one gets its own.
 * @param {State} state
 * @param {number} column
 * @param {number} row
 */
function hand({ from, rowOf }, column, row) {
  let at = column;
  while (at >= 0) {
    const before = Number(from[at]);
    rowOf[at] = before >= 0 ? Number(rowOf[before]) : row;
    at = before;
  }
}

/**
 * @param {State} state
 * @returns {number[]}
 */
function columnOfRow({ costs, rowOf }) {
  const taken = /** @type {number[]} */ (new Array(costs.length).fill(-1));
  rowOf.forEach((row, column) => {
    if (row >= 0) taken[row] = column;
  });
  return taken;
}
