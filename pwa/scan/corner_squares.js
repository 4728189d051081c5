/**
 * Corner squares (finder patterns): dark 1, light 1, dark 3, light 1, dark 1 on a line through the
 * middle. One direction is enough to become a candidate, because dirt often spoils the other.
 * source: ISO/IEC 18004:2015, 6.3.3.
 */

/** @typedef {{x: number, y: number, module: number, hits: number, ways: number}} Candidate */

const MOST = 28;

/**
 * Places where lines of dark and light have the lengths of a corner square, likeliest first.
 * @param {Uint8Array} dark
 * @param {number} width
 * @param {number} height
 * @param {1 | 2} step each line, or every second one
 * @returns {Candidate[]}
 */
export function candidates(dark, width, height, step) {
  /** @type {Candidate[]} */
  const found = [];
  for (let y = 0; y < height; y += step) {
    scanLine(dark, y * width, 1, width, (at, module) => gather(found, at, y, module, 1));
  }
  for (let x = 0; x < width; x += step) {
    scanLine(dark, x, width, height, (at, module) => gather(found, x, at, module, 2));
  }
  return found.sort((a, b) => worth(b, step) - worth(a, step)).slice(0, MOST);
}

/**
 * @param {Candidate} candidate
 * @param {number} step
 * @returns {number} hits per module, the second direction counting much
 */
function worth({ hits, module, ways }, step) {
  return Math.min(3, (hits * step) / module) * (ways === 3 ? 2 : 1);
}

/**
 * @param {Uint8Array} dark
 * @param {number} start
 * @param {number} step
 * @param {number} length
 * @param {(at: number, module: number) => void} hit
 */
function scanLine(dark, start, step, length, hit) {
  // The last five runs, the newest last.
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let e = 0;
  let begun = 0;
  let colour = 0;
  for (let i = 0, place = start; i <= length; i += 1, place += step) {
    const now = i < length ? dark[place] : 1 - colour;
    if (now === colour) continue;
    a = b;
    b = c;
    c = d;
    d = e;
    e = i - begun;
    // Only a line that ends dark and is wide enough is worth a closer look.
    if (colour === 1 && c >= 3 && isSquare(a, b, c, d, e)) {
      hit(i - e - d - c / 2 - 0.5, (a + b + c + d + e) / 7);
    }
    begun = i;
    colour = 1 - colour;
  }
}

/**
 * @param {number} a
 * @param {number} b
 * @param {number} c
 * @param {number} d
 * @param {number} e
 * @returns {boolean}
 */
function isSquare(a, b, c, d, e) {
  const module = (a + b + c + d + e) / 7;
  const slack = module * 0.55 + 0.6;
  if (module < 1.2 || Math.abs(c - 3 * module) > slack * 1.6) return false;
  const most = Math.max(a, b, d, e);
  return most - module < slack && module - Math.min(a, b, d, e) < slack;
}

/**
 * @param {Candidate[]} found
 * @param {number} x
 * @param {number} y
 * @param {number} module
 * @param {number} way
 */
function gather(found, x, y, module, way) {
  for (const one of found) {
    const near = one.module * 1.6;
    const alike = module < one.module * 1.5 && module > one.module * 0.66;
    if (!alike || Math.abs(one.x - x) > near || Math.abs(one.y - y) > near) continue;
    const share = 1 / (one.hits + 1);
    one.x += (x - one.x) * share;
    one.y += (y - one.y) * share;
    one.module += (module - one.module) * share;
    one.hits += 1;
    one.ways |= way;
    return;
  }
  found.push({ x, y, module, hits: 1, ways: way });
}
