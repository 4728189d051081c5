/** Reading the modules of a symbol through its way, and pulling the way tight over all of them. */
import { alignStep } from './align.js';
import { brightness } from './planes.js';

/** @typedef {import('./planes.js').Plane} Plane */
/** @typedef {import('./homography.js').Way} Way */
/** @typedef {{p: number, q: number}} Spot in the symbol's own square */

const OFFSETS = [-0.27, 0, 0.27];
/** Modules to each side that make up the surroundings of one. */
const AROUND = 3;

/**
 * Mean brightness of each module, row by row.
 * @param {Plane} plane
 * @param {Way} way
 * @param {number} side
 * @param {Float32Array} [rough] is given how uneven each module is
 * @returns {Float32Array}
 */
export function sampleModules(plane, way, side, rough) {
  const result = new Float32Array(side * side);
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = way;
  for (let i = 0; i < result.length; i += 1) {
    const column = i % side;
    const row = (i - column) / side;
    let sum = 0;
    let squares = 0;
    for (const dv of OFFSETS) {
      const q = ((row + 0.5 + dv) * 2) / side - 1;
      for (const du of OFFSETS) {
        const p = ((column + 0.5 + du) * 2) / side - 1;
        const w = g * p + h * q + 1;
        const value = brightness(plane, (a * p + b * q + c) / w, (d * p + e * q + f) / w);
        sum += value;
        squares += value * value;
      }
    }
    result[i] = sum / 9;
    if (rough) rough[i] = Math.sqrt(Math.max(0, squares / 9 - (sum / 9) ** 2));
  }
  return result;
}

/**
 * Middle and half range of the brightness around each module, from mean and spread.
 * @param {Float32Array} values
 * @param {number} side
 * @returns {{middle: Float32Array, half: Float32Array}}
 */
export function surroundings(values, side) {
  const middle = new Float32Array(values.length);
  const half = new Float32Array(values.length);
  for (let i = 0; i < values.length; i += 1) {
    const column = i % side;
    const row = (i - column) / side;
    let [sum, squares, count] = [0, 0, 0];
    const bottom = Math.min(side - 1, row + AROUND);
    const right = Math.min(side - 1, column + AROUND);
    for (let y = Math.max(0, row - AROUND); y <= bottom; y += 1) {
      for (let x = Math.max(0, column - AROUND); x <= right; x += 1) {
        const value = values[y * side + x] ?? 0;
        sum += value;
        squares += value * value;
        count += 1;
      }
    }
    middle[i] = sum / count;
    half[i] = Math.max(2, Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2)));
  }
  return { middle, half };
}

/**
 * Pull the way tight: what each module seems to be is taken as what it is, and the edges between
 * modules are laid where the picture has them. Begins around the anchors and grows from there.
 * @param {Plane} plane
 * @param {Way} way changed in place
 * @param {number} side
 * @param {Spot[]} anchors
 * @param {number[]} reaches in modules, one step each
 * @param {Int8Array} [fixed] per module what it must be: 1 dark, -1 light, 0 not known
 * @returns {void}
 */
export function tighten(plane, way, side, anchors, reaches, fixed) {
  for (const reach of reaches) {
    const pattern = patternSeen(sampleModules(plane, way, side), side, fixed);
    weigh(pattern.weight, side, anchors, reach);
    alignStep(plane, way, pattern, reach < side * 0.7 ? 0.05 : 0.001);
  }
}

/**
 * What the picture should look like if each module is what it seems to be, or must be.
 * @param {Float32Array} values
 * @param {number} side
 * @param {Int8Array} [fixed]
 * @returns {import('./align.js').Pattern}
 */
function patternSeen(values, side, fixed) {
  const { middle, half } = surroundings(values, side);
  const seen = values.map((value, i) => {
    const sure = fixed?.[i] ?? 0;
    return sure !== 0 ? -sure : soft((value - (middle[i] ?? 0)) / (half[i] ?? 1));
  });
  return edges(seen, middle, half, side);
}

/**
 * @param {number} level
 * @returns {number}
 */
function soft(level) {
  return level > 0.6 ? 1 : level < -0.6 ? -1 : level / 0.6;
}

/**
 * Four samples a module, each a mix of its module and the neighbours on its side, as a lens mixes.
 * @param {Float32Array} seen
 * @param {Float32Array} middle
 * @param {Float32Array} half
 * @param {number} side
 * @returns {import('./align.js').Pattern}
 */
function edges(seen, middle, half, side) {
  const fine = side * 2;
  const total = fine * fine;
  const pattern = {
    p: new Float32Array(total),
    q: new Float32Array(total),
    target: new Float32Array(total),
    weight: new Float32Array(total),
    middle: new Float32Array(total),
    half: new Float32Array(total),
    modules: side,
  };
  for (let i = 0; i < total; i += 1) {
    const u = i % fine;
    const v = (i - u) / fine;
    const [x, y] = [u >> 1, v >> 1];
    const nx = Math.max(0, Math.min(side - 1, x - 1 + 2 * (u & 1)));
    const ny = Math.max(0, Math.min(side - 1, y - 1 + 2 * (v & 1)));
    const own = y * side + x;
    pattern.p[i] = (u + 0.5) / side - 1;
    pattern.q[i] = (v + 0.5) / side - 1;
    pattern.middle[i] = middle[own] ?? 0;
    pattern.half[i] = half[own] ?? 1;
    // The mean of two mixes: of the rows of this module and its neighbour above or below.
    const row = 0.75 * (seen[own] ?? 0) + 0.25 * (seen[y * side + nx] ?? 0);
    const next = 0.75 * (seen[ny * side + x] ?? 0) + 0.25 * (seen[ny * side + nx] ?? 0);
    pattern.target[i] = 0.75 * row + 0.25 * next;
  }
  return pattern;
}

/**
 * @param {Float32Array} weight
 * @param {number} side
 * @param {Spot[]} anchors
 * @param {number} reach
 */
function weigh(weight, side, anchors, reach) {
  const fine = side * 2;
  for (let i = 0; i < weight.length; i += 1) {
    const u = ((i % fine) + 0.5) / 2;
    const v = (Math.floor(i / fine) + 0.5) / 2;
    let near = Number.POSITIVE_INFINITY;
    for (const { p, q } of anchors) {
      near = Math.min(near, (u - ((p + 1) * side) / 2) ** 2 + (v - ((q + 1) * side) / 2) ** 2);
    }
    weight[i] = near < 4 * reach * reach ? Math.exp(-near / (2 * reach * reach)) : 0;
  }
}
