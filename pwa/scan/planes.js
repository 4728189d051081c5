/** Grey pictures: what of the colours is looked at, and what counts as dark in its surroundings. */

/** @typedef {{width: number, height: number, data: Uint8Array}} Plane brightness, 0 to 255 */
/** @typedef {'grey' | 'red' | 'best'} Channel */

/**
 * Brown grease and rust let red through and stop blue; "best" takes the brightest colour of each
 * pixel, which is paper's wherever anything at all comes through.
 * @param {import('./reader.js').Picture} picture
 * @param {Channel} channel
 * @returns {Plane}
 */
export function planeOf({ width, height, data }, channel) {
  const result = new Uint8Array(width * height);
  for (let i = 0, j = 0; i < result.length; i += 1, j += 4) {
    const r = data[j] ?? 0;
    const g = data[j + 1] ?? 0;
    const b = data[j + 2] ?? 0;
    if (channel === 'grey') result[i] = (r * 77 + g * 150 + b * 29) >> 8;
    else if (channel === 'red') result[i] = r;
    else result[i] = Math.max(r, g, b);
  }
  return { width, height, data: result };
}

/**
 * 1 where a pixel is darker than the mean of the square around it.
 * @param {Plane} plane
 * @param {number} reach half the side of the square in pixels
 * @returns {Uint8Array}
 */
export function darkPixels({ width, height, data }, reach) {
  const result = new Uint8Array(width * height);
  const columns = new Uint32Array(width);
  let rows = 0;
  /**
   * @param {number} y
   * @param {1 | -1} sign
   */
  const addRow = (y, sign) => {
    if (y < 0 || y >= height) return;
    for (let x = 0, at = y * width; x < width; x += 1, at += 1) {
      columns[x] = (columns[x] ?? 0) + sign * (data[at] ?? 0);
    }
    rows += sign;
  };
  for (let y = 0; y < reach; y += 1) addRow(y, 1);
  for (let y = 0; y < height; y += 1) {
    addRow(y + reach, 1);
    addRow(y - reach - 1, -1);
    darkRow(result.subarray(y * width, y * width + width), data, y * width, columns, rows, reach);
  }
  return result;
}

/**
 * @param {Uint8Array} result
 * @param {Uint8Array} data
 * @param {number} start
 * @param {Uint32Array} columns sums of the rows around
 * @param {number} rows how many rows those are
 * @param {number} reach
 */
function darkRow(result, data, start, columns, rows, reach) {
  const width = result.length;
  let sum = 0;
  let count = 0;
  for (let x = -reach; x < width; x += 1) {
    const coming = x + reach;
    if (coming < width) {
      sum += /** @type {number} */ (columns[coming]);
      count += 1;
    }
    if (x < 0) continue;
    if (x > reach) {
      sum -= /** @type {number} */ (columns[x - reach - 1]);
      count -= 1;
    }
    // A little below the mean, so that the grain of an empty surface does not count.
    const value = /** @type {number} */ (data[start + x]);
    result[x] = value * count * rows < sum * 0.97 - 2 * count * rows ? 1 : 0;
  }
}

/**
 * Brightness between pixels; beyond the border it is that of the border.
 * @param {Plane} plane
 * @param {number} x
 * @param {number} y
 * @returns {number}
 */
export function brightness({ width, height, data }, x, y) {
  const cx = Math.max(0, Math.min(width - 1.001, x));
  const cy = Math.max(0, Math.min(height - 1.001, y));
  const left = cx | 0;
  const top = cy | 0;
  const at = top * width + left;
  const fx = cx - left;
  const fy = cy - top;
  const upper =
    /** @type {number} */ (data[at]) * (1 - fx) + /** @type {number} */ (data[at + 1]) * fx;
  const lower =
    /** @type {number} */ (data[at + width]) * (1 - fx) +
    /** @type {number} */ (data[at + width + 1]) * fx;
  return upper * (1 - fy) + lower * fy;
}
