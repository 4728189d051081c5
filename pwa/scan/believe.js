/** What is believed of each module: dark, light, or nothing where grease or glare hides it. */
import { sampleModules, surroundings } from './grid.js';

/**
 * @param {import('./planes.js').Plane} plane
 * @param {import('./homography.js').Way} way
 * @param {number} side
 * @returns {Float32Array} above 0 dark, below 0 light, 1 at most either way
 */
export function beliefs(plane, way, side) {
  const rough = new Float32Array(side * side);
  const values = sampleModules(plane, way, side, rough);
  const { middle, half } = surroundings(values, side);
  return values.map((value, i) => {
    const range = half[i] ?? 1;
    const level = ((middle[i] ?? 0) - value) / range;
    // An edge through the middle of a module is the edge of dirt, not of ink.
    const even = 1 / (1 + 4 * ((rough[i] ?? 0) / range) ** 2);
    return even * Math.max(-1, Math.min(1, level));
  });
}

/**
 * How alike two readings are: 1 the same symbol, about 0 two different ones.
 * @param {Float32Array} one
 * @param {Float32Array} two
 * @returns {number}
 */
export function alikeness(one, two) {
  let [both, first, second] = [0, 0, 0];
  one.forEach((a, i) => {
    const b = two[i] ?? 0;
    both += a * b;
    first += a * a;
    second += b * b;
  });
  return both / Math.sqrt(first * second || 1);
}

/**
 * The same with little belief where the modules around are blurred too: there the paper is bent out
 * of the plane, or the light burnt out.
 * @param {Float32Array} given
 * @param {number} side
 * @returns {Float32Array}
 */
export function focused(given, side) {
  return given.map((belief, i) => {
    const [x, y] = [i % side, Math.floor(i / side)];
    let sum = 0;
    let count = 0;
    for (let v = Math.max(0, y - 2); v <= Math.min(side - 1, y + 2); v += 1) {
      for (let u = Math.max(0, x - 2); u <= Math.min(side - 1, x + 2); u += 1) {
        sum += Math.abs(given[v * side + u] ?? 0);
        count += 1;
      }
    }
    return belief * Math.min(1, (1.6 * sum) / count) ** 3;
  });
}
