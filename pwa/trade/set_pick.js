/** Which of the pieces in a box make the set: least wear, then fewest donors. */

/**
 * Pieces by their place in the pool, all inside the limits.
 * @typedef {object} Pool
 * @property {readonly (readonly number[])[]} columns sizes of all pieces, measure by measure
 * @property {readonly number[]} factors cost of each measure's spread: weight / scale
 * @property {number} choose
 * @property {ReadonlySet<number>} pinned
 * @property {readonly number[]} wear
 * @property {readonly string[]} donors
 */

/**
 * @typedef {object} Rank
 * @property {number} wear
 * @property {number} donors
 * @property {readonly number[]} places
 */

/**
 * The cheapest so far: boxes not yet asked which of them make the set, and the best of those asked.
 * @typedef {{cost: number, rank: Rank | null, boxes: number[][]}} Found
 */

/**
 * The size of one piece.
 * @param {readonly number[]} column
 * @param {number | undefined} at
 */
export const size = (column, at) => Number(column[Number(at)]);

/**
 * Whether one set is better than another of the same cost.
 * @param {Rank} one
 * @param {Rank} other
 */
export function before(one, other) {
  if (one.wear !== other.wear) return one.wear < other.wear;
  if (one.donors !== other.donors) return one.donors < other.donors;
  const at = one.places.findIndex((each, i) => each !== other.places[i]);
  return at >= 0 && size(one.places, at) < size(other.places, at);
}

/**
 * The set of least wear in a box, of those the one of fewest donors.
 * @param {Pool} pool
 * @param {number[]} inside
 * @returns {Rank}
 */
export function picked(pool, inside) {
  const { wear, donors, pinned, choose } = pool;
  const first = [...pinned];
  const left = inside
    .filter((each) => !pinned.has(each))
    .sort((a, b) => size(wear, a) - size(wear, b) || a - b);
  const most = size(wear, left[choose - first.length - 1]);
  const sure = choose > first.length ? left.filter((each) => size(wear, each) < most) : [];
  const alike = left.filter((each) => size(wear, each) === most);
  const base = [...first, ...sure];
  const places = [...base, ...fewestDonors(pool, alike, base)].sort((a, b) => a - b);
  return {
    wear: places.reduce((sum, each) => sum + size(wear, each), 0),
    donors: new Set(places.map((each) => donors[each])).size,
    places,
  };
}

/**
 * Of pieces worn alike as many as are missing: donors already in, then the largest groups.
 * @param {Pool} pool
 * @param {number[]} alike
 * @param {number[]} chosen
 */
function fewestDonors({ donors, choose }, alike, chosen) {
  const known = new Set(chosen.map((each) => donors[each]));
  const groups = new Map();
  for (const each of alike) {
    const donor = donors[each];
    groups.set(donor, [...(groups.get(donor) ?? []), each]);
  }
  const ranked = [...groups].sort(
    ([a, one], [b, other]) =>
      Number(!known.has(a)) - Number(!known.has(b)) ||
      other.length - one.length ||
      one[0] - other[0],
  );
  return ranked.flatMap(([, group]) => group).slice(0, choose - chosen.length);
}

/**
 * Pick from the boxes that wait.
 * @param {Pool} pool
 * @param {Found} found
 */
export function settle(pool, found) {
  for (const inside of found.boxes) {
    const rank = picked(pool, inside);
    if (!found.rank || before(rank, found.rank)) found.rank = rank;
  }
  found.boxes.length = 0;
}
