/** Whether places can use up all pieces together, asked from both ends: half the places each. */

/**
 * What each place uses if together they can use up all, or null.
 * @param {number[][]} inside the choices of each place as bits
 * @param {number[]} half places asked from the one end
 * @param {number[]} rest places asked from the other
 * @param {number} full
 */
export function met(inside, half, rest, full) {
  const one = layers(inside, half);
  const other = layers(inside, rest);
  for (const state of one[half.length] ?? []) {
    if (!other[rest.length]?.has(full ^ state)) continue;
    const used = inside.map(() => 0);
    wayBack(one, inside, half, state, used);
    wayBack(other, inside, rest, full ^ state, used);
    return used;
  }
  return null;
}

/**
 * What can be used up by the first place, by the first two, and so on.
 * @param {number[][]} inside
 * @param {number[]} half
 */
function layers(inside, half) {
  /** @type {Set<number>[]} */
  const made = [new Set([0])];
  for (const [at, place] of half.entries()) {
    made.push(grown(made[at] ?? new Set(), inside[place] ?? []));
  }
  return made;
}

/**
 * @param {Set<number>} states
 * @param {number[]} masks
 */
function grown(states, masks) {
  const next = new Set();
  for (const state of states) {
    for (const mask of masks) if (!(state & mask)) next.add(state | mask);
  }
  return next;
}

/**
 * @param {Set<number>[]} made
 * @param {number[][]} inside
 * @param {number[]} half
 * @param {number} state
 * @param {number[]} used
 */
function wayBack(made, inside, half, state, used) {
  let left = state;
  for (let at = half.length - 1; at >= 0; at--) {
    const place = Number(half[at]);
    const mask = inside[place]?.find((m) => (left & m) === m && made[at]?.has(left ^ m)) ?? 0;
    used[place] = mask;
    left ^= mask;
  }
}
