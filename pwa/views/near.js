/** What sounds like a word that was not found. */

/** @typedef {import('./find.js').Found} Found */

const MOST_NEAR = 5;
const SHORTEST = 3;

/**
 * Things whose name has a word that is nearly the longest typed; the nearest first.
 * @param {Found[]} ready
 * @param {string[]} wanted
 * @param {readonly string[]} headings
 */
export function near(ready, wanted, headings) {
  const longest = wanted.reduce((one, other) => (other.length > one.length ? other : one));
  if (longest.length < SHORTEST) return [];
  const most = longest.length < 5 ? 1 : 2;
  /** @type {Map<string, number>} */
  const far = new Map();
  /** @type {Map<string, {id: string, heading: string, name: string | null}>[]} */
  const byDistance = Array.from({ length: 2 * (most + 1) }, () => new Map());
  const letters = /[^0-9]/.test(longest);
  for (const { row, name, names } of ready.filter((each) => headings.includes(each.row.heading))) {
    const close = names.find(
      (each) => (!letters || /[^0-9]/.test(each)) && distanceOnce(far, longest, each, most) <= most,
    );
    const lines = close === undefined ? new Map() : byDistance[placeOf(far.get(close), row.scrap)];
    if (lines?.has(name)) continue;
    lines?.set(name, { id: row.id, heading: row.heading, name: row.name ?? null });
  }
  return byDistance.flatMap((lines) => [...lines.values()]).slice(0, MOST_NEAR);
}

/**
 * Nearest first, and scrap after the rest of its distance.
 * @param {number | undefined} steps
 * @param {boolean | undefined} scrap
 */
function placeOf(steps, scrap) {
  return 2 * (steps ?? 0) + (scrap === true ? 1 : 0);
}

/**
 * @param {Map<string, number>} far
 * @param {string} one
 * @param {string} other
 * @param {number} most
 */
function distanceOnce(far, one, other, most) {
  const known = far.get(other);
  if (known !== undefined) return known;
  const found = distance(one, other, most);
  far.set(other, found);
  return found;
}

/**
 * Signs to change, add, leave out or swap with a neighbour; most + 1 when it is more.
 * A longer word is compared by its beginning too, as the typed one may not be finished.
 * @param {string} one
 * @param {string} given
 * @param {number} most
 */
export function distance(one, given, most) {
  if (given.length < one.length - most) return most + 1;
  const other = given.length > one.length + most ? given.slice(0, one.length) : given;
  /** @type {number[]} */
  let twoAgo = [];
  let above = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i += 1) {
    const line = lineOf(one, other, i, above, twoAgo);
    if (Math.min(...line) > most) return most + 1;
    [twoAgo, above] = [above, line];
  }
  return Math.min(/** @type {number} */ (above.at(-1)), most + 1);
}

/**
 * One line of the table of distances.
 * @param {string} one
 * @param {string} other
 * @param {number} i
 * @param {number[]} above
 * @param {number[]} twoAgo
 */
function lineOf(one, other, i, above, twoAgo) {
  const line = [i];
  for (let j = 1; j <= other.length; j += 1) {
    const changed = at(above, j - 1) + (one[i - 1] === other[j - 1] ? 0 : 1);
    const cost = Math.min(at(above, j) + 1, at(line, j - 1) + 1, changed);
    const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
    line.push(swapped ? Math.min(cost, at(twoAgo, j - 2) + 1) : cost);
  }
  return line;
}

/**
 * @param {number[]} line
 * @param {number} j
 */
function at(line, j) {
  return /** @type {number} */ (line[j]);
}
