/** Pieces that must stay together in one assembly, whatever the rest does. */
import { TradeError } from '../errors.js';
import { many } from './alike.js';

/** A piece that is asked for in two assemblies, or two pieces of one column in one. */
export class TogetherCrossed extends TradeError {
  static code = 'together-crossed';
  static says = 'Piece {piece} of column {column} would be in two assemblies.';
  static nextStep = 'Let go of one of the two.';
}

/** A piece that is not among the columns. */
export class TogetherUnknown extends TradeError {
  static code = 'together-unknown';
  static says = 'There is no piece {piece} in column {column}.';
  static nextStep = 'Look at the numbers again.';
}

/** For each column the piece it must hold, counted from 0, or null. @typedef {(number | null)[]} Held */

/**
 * What must stay together, one line an assembly: lines that share a piece become one.
 * @param {readonly (readonly (number | null)[])[]} together pieces counted from 1, null where any may come
 * @param {number} columns
 * @param {number} places
 * @returns {Held[]}
 */
export function merged(together, columns, places) {
  /** @type {Held[]} */
  let lines = [];
  for (const asked of many(together, 'together')) {
    let line = counted(asked, columns, places);
    const joined = lines.filter((other) => other.some((at, i) => at !== null && at === line[i]));
    for (const other of joined) line = joinedTo(line, other);
    lines = [...lines.filter((other) => !joined.includes(other)), line];
  }
  return lines;
}

/**
 * @param {readonly (number | null)[]} asked
 * @param {number} columns
 * @param {number} places
 * @returns {Held}
 */
function counted(asked, columns, places) {
  return many(asked, 'together').map((piece, column) => {
    if (piece === null) return null;
    const known = column < columns && Number.isInteger(piece) && piece >= 1 && piece <= places;
    if (!known) throw new TogetherUnknown({ piece, column: column + 1 });
    return piece - 1;
  });
}

/**
 * @param {Held} line
 * @param {Held} other
 * @returns {Held}
 */
function joinedTo(line, other) {
  const long = line.length < other.length ? other : line;
  return long.map((_, column) => {
    const [one, two] = [line[column] ?? null, other[column] ?? null];
    if (one !== null && two !== null && one !== two)
      throw new TogetherCrossed({ piece: one + 1, column: column + 1 });
    return one ?? two;
  });
}

/**
 * Whether a row of pieces, from the first column on, parts nothing that must stay together.
 * @param {readonly Held[]} lines
 * @returns {(row: readonly number[]) => boolean}
 */
export function keeping(lines) {
  return (row) =>
    lines.every((line) => {
      const has = row.flatMap((piece, column) => {
        const held = line[column] ?? null;
        return held === null ? [] : [piece === held];
      });
      return has.every(Boolean) || !has.some(Boolean);
    });
}
