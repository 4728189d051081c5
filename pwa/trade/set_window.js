/** Windows over pieces held in the order of one measure. */

/** @typedef {import('./set_pick.js').Pool} Pool */

/**
 * Put one more piece where it belongs, and tell where that is.
 * @param {Int32Array} held
 * @param {number} length
 * @param {number} place
 * @param {Int32Array} ranks where each piece stands in that order
 */
export function insert(held, length, place, ranks) {
  const rank = Number(ranks[place]);
  let at = length;
  for (; at > 0 && Number(ranks[Number(held[at - 1])]) > rank; at--)
    held[at] = Number(held[at - 1]);
  held[at] = place;
  return at;
}

/**
 * The first window that can hold the one at that place, with those as large as its last.
 * @param {Int32Array} held
 * @param {readonly number[]} column
 * @param {number} choose
 * @param {number} latecomer
 */
export function begin(held, column, choose, latecomer) {
  let low = latecomer - choose + 1;
  if (low <= 0) return 0;
  const own = column[Number(held[latecomer])];
  while (low > 0 && column[Number(held[low + choose - 2])] === own) low--;
  return low;
}

/**
 * Where a window must begin at the latest, and end at the earliest.
 * @param {Pool} pool
 * @param {Int32Array} held
 * @param {number} length
 * @returns {[number, number]}
 */
export function pinnedAt({ pinned }, held, length) {
  if (!pinned.size) return [length, 0];
  const must = [];
  for (let at = 0; at < length; at++) if (pinned.has(Number(held[at]))) must.push(at);
  return must.length < pinned.size ? [-1, 0] : [Number(must[0]), Number(must[must.length - 1])];
}

/**
 * All in the window, with those as large as its last.
 * @param {Int32Array} held
 * @param {number} length
 * @param {number} low
 * @param {number} high
 * @param {readonly number[]} column
 */
export function box(held, length, low, high, column) {
  let last = high;
  while (last + 1 < length && column[Number(held[last + 1])] === column[Number(held[high])]) last++;
  return [...held.subarray(low, last + 1)];
}
