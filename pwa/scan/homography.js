/**
 * Plane to plane: a label's own square (-1 to 1 both ways) onto the picture. Nine numbers in rows,
 * the last one 1.
 */

/** @typedef {import('./reader.js').Point} Point */
/** @typedef {Float64Array} Way */

/**
 * @param {Way} way
 * @param {number} p
 * @param {number} q
 * @returns {Point}
 */
export function across(way, p, q) {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = way;
  const w = g * p + h * q + 1;
  return [(a * p + b * q + c) / w, (d * p + e * q + f) / w];
}

/**
 * The way that takes the points of the square nearest to those of the picture.
 * @param {Point[]} square
 * @param {Point[]} picture
 * @returns {Way | null}
 */
export function wayThrough(square, picture) {
  const sums = new Float64Array(64);
  const right = new Float64Array(8);
  square.forEach(([p, q], i) => {
    const [x, y] = /** @type {Point} */ (picture[i]);
    addTo(sums, right, [p, q, 1, 0, 0, 0, -x * p, -x * q], x);
    addTo(sums, right, [0, 0, 0, p, q, 1, -y * p, -y * q], y);
  });
  const solved = solve(sums, right);
  return solved && Float64Array.of(...solved, 1);
}

/**
 * Add one line of a least-squares problem.
 * @param {Float64Array} sums
 * @param {Float64Array} right
 * @param {ArrayLike<number>} line
 * @param {number} value
 * @param {number} [weight]
 */
export function addTo(sums, right, line, value, weight = 1) {
  const n = right.length;
  for (let i = 0; i < n; i += 1) {
    const part = /** @type {number} */ (line[i]) * weight;
    if (part === 0) continue;
    right[i] = /** @type {number} */ (right[i]) + part * value;
    for (let j = 0; j < n; j += 1) {
      sums[i * n + j] =
        /** @type {number} */ (sums[i * n + j]) + part * /** @type {number} */ (line[j]);
    }
  }
}

/**
 * Gauss elimination with pivoting.
 * @param {Float64Array} given n by n
 * @param {Float64Array} right
 * @returns {Float64Array | null} null when there is no single answer
 */
export function solve(given, right) {
  const n = right.length;
  const rows = Array.from({ length: n }, (_, i) => [
    ...given.subarray(i * n, i * n + n),
    right[i] ?? 0,
  ]);
  for (let i = 0; i < n; i += 1) {
    const best = steepest(rows, i);
    const lead = /** @type {number[]} */ (rows[best]);
    if (size(lead, i) < 1e-12) return null;
    rows[best] = /** @type {number[]} */ (rows[i]);
    rows[i] = lead;
    for (const row of rows) if (row !== lead) subtract(row, lead, i);
  }
  return Float64Array.from(rows, (row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}

/**
 * @param {number[][]} rows
 * @param {number} i
 * @returns {number} the row from i on with the largest entry i
 */
function steepest(rows, i) {
  let best = i;
  for (let j = i + 1; j < rows.length; j += 1) if (size(rows[j], i) > size(rows[best], i)) best = j;
  return best;
}

/**
 * @param {number[] | undefined} row
 * @param {number} i
 * @returns {number}
 */
function size(row, i) {
  return Math.abs(row?.[i] ?? 0);
}

/**
 * Take the leading row so often from another that its entry there is nothing.
 * @param {number[]} row
 * @param {number[]} lead
 * @param {number} i
 */
function subtract(row, lead, i) {
  const times = (row[i] ?? 0) / (lead[i] ?? 1);
  for (let j = i; j < row.length; j += 1) row[j] = (row[j] ?? 0) - times * (lead[j] ?? 0);
}
