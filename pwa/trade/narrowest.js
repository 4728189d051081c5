/**
 * The arrangement whose totals lie closest together, found exactly. A window over the sorted totals
 * is moved and narrowed; whether an arrangement lies wholly in it is a matching for two columns,
 * and a search over what is left of each column for more.
 */
const HAIR = 1e-9;

/**
 * The column of each row, each column once, with the least largest less smallest entry.
 * @param {readonly (readonly number[])[]} table as many columns as rows
 * @returns {number[]}
 */
export function pairs(table) {
  const ends = [...new Set(table.flat())].sort((a, b) => a - b);
  /** @type {number[]} */
  let best = [];
  let spread = Infinity;
  let low = 0;
  let high = 0;
  while (high < ends.length && low < ends.length) {
    const wide = Number(ends[high]) - Number(ends[low]);
    const narrower = wide < spread - HAIR;
    const found = narrower ? matched(table, Number(ends[low]), Number(ends[high])) : null;
    if (found) {
      best = found;
      spread = wide;
    }
    if (!found && narrower) high += 1;
    else low += 1;
    high = Math.max(low, high);
  }
  return best;
}

/**
 * @param {readonly (readonly number[])[]} table
 * @param {number} low
 * @param {number} high
 */
function matched(table, low, high) {
  /** @type {Map<number, number>} */
  const rowOf = new Map();
  const inside = table.map((row) =>
    row.flatMap((each, column) => (low <= each && each <= high ? [column] : [])),
  );
  for (let row = 0; row < table.length; row++) {
    if (!serve(inside, row, rowOf, new Set())) return null;
  }
  const taken = new Map([...rowOf].map(([column, row]) => [row, column]));
  return table.map((_, row) => Number(taken.get(row)));
}

/**
 * Give the row a column in the window, moving others over where need be.
 * @param {readonly (readonly number[])[]} inside
 * @param {number} row
 * @param {Map<number, number>} rowOf
 * @param {Set<number>} seen
 * @returns {boolean}
 */
function serve(inside, row, rowOf, seen) {
  for (const column of inside[row] ?? []) {
    if (seen.has(column)) continue;
    seen.add(column);
    const held = rowOf.get(column);
    if (held === undefined || serve(inside, held, rowOf, seen)) {
      rowOf.set(column, row);
      return true;
    }
  }
  return false;
}

/** @typedef {{total: number, pieces: number[]}} Option */

/**
 * The most equal assemblies of three or more columns.
 * @param {readonly (readonly number[])[]} weights
 * @param {number[][]} start an arrangement to better
 */
export function assemblies(weights, start) {
  const rows = (weights[0] ?? []).map((first) => options(first, weights.slice(1)));
  let best = start;
  let spread = spreadOf(weights, start);
  const mean = weights.flat().reduce((sum, each) => sum + each, 0) / rows.length;
  const lows = new Set(rows.flatMap((row) => row.map((each) => each.total)));
  for (const low of [...lows].sort((a, b) => b - a)) {
    let found = low <= mean + HAIR && mean < low + spread ? within(rows, low, spread) : null;
    while (found) {
      best = found;
      spread = spreadOf(weights, best);
      found = mean < low + spread ? within(rows, low, spread) : null;
    }
  }
  return best;
}

/**
 * @param {Option[][]} rows
 * @param {number} low
 * @param {number} spread
 */
function within(rows, low, spread) {
  const inside = rows.map((row, place) => ({
    place,
    options: row.filter(({ total }) => low - HAIR <= total && total <= low + spread - 2 * HAIR),
  }));
  inside.sort((a, b) => a.options.length - b.options.length);
  const used = (rows[0]?.[0]?.pieces ?? []).map(() => 0);
  const filled = fill(
    inside.map((each) => each.options),
    0,
    used,
    new Set(),
  );
  const made = filled?.map((pieces, at) => [Number(inside[at]?.place), ...pieces]);
  return made?.sort((a, b) => Number(a[0]) - Number(b[0])) ?? null;
}

/**
 * Every choice of one piece from each other column, with its total.
 * @param {number} first
 * @param {readonly (readonly number[])[]} columns
 */
function options(first, columns) {
  /** @type {Option[]} */
  let made = [{ total: first, pieces: [] }];
  for (const column of columns) {
    made = made.flatMap(({ total, pieces }) =>
      column.map((each, at) => ({ total: total + each, pieces: [...pieces, at] })),
    );
  }
  return made;
}

/**
 * The heaviest total less the lightest.
 * @param {readonly (readonly number[])[]} weights
 * @param {readonly (readonly number[])[]} rows
 */
export function spreadOf(weights, rows) {
  const totals = totalsOf(weights, rows);
  return Math.max(...totals) - Math.min(...totals);
}

/**
 * The total of each assembly.
 * @param {readonly (readonly number[])[]} weights
 * @param {readonly (readonly number[])[]} rows
 */
export const totalsOf = (weights, rows) =>
  rows.map((row) => row.reduce((sum, at, column) => sum + Number(weights[column]?.[at]), 0));

/**
 * Pieces for this place and all after it.
 * @param {Option[][]} inside
 * @param {number} place
 * @param {number[]} used bits of what is taken, column by column
 * @param {Set<string>} hopeless
 * @returns {number[][] | null}
 */
function fill(inside, place, used, hopeless) {
  if (place === inside.length) return [];
  const key = used.join(' ');
  if (hopeless.has(key)) return null;
  for (const { pieces } of inside[place] ?? []) {
    if (pieces.some((at, column) => (Number(used[column]) >> at) & 1)) continue;
    const taken = pieces.map((at, column) => Number(used[column]) | (1 << at));
    const rest = fill(inside, place + 1, taken, hopeless);
    if (rest) return [pieces, ...rest];
  }
  hopeless.add(key);
  return null;
}
