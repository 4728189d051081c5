/**
 * The pairs whose totals lie closest together, found exactly. A window over the sorted totals is
 * moved and narrowed; whether all pairs lie in it is a matching.
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
