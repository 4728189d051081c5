/**
 * The patient way to read spoilt labels: find the symbol by what is left of it, believe each module
 * as far as it can be seen, add up what several pictures and twin symbols show, and decipher.
 */
import { alikeness, beliefs, focused } from './believe.js';
import { decipher } from './decipher.js';
import { layoutOf } from './layout.js';
import { boxOf, locate } from './locate.js';
import { planeOf } from './planes.js';

/** @typedef {import('./reader.js').Picture} Picture */
/** @typedef {import('./reader.js').Sighting} Sighting */
/** @typedef {import('./locate.js').Symbol} Symbol */
/** @typedef {{version: number, beliefs: Float32Array, pictures: number, last: number}} Memory */

/** Pictures after which an unread symbol that does not come again is forgotten. */
const KEPT = 12;
/** Two symbols more alike than this say the same: frame and margins alone make about 0.4. */
const SAME = 0.7;
const MOST = 4;
/** A symbol that looks less like one is not worth the person's patience. */
const LIKE_A_LABEL = 0.5;
/** @type {import('./planes.js').Channel[]} */
const OTHER_CHANNELS = ['red', 'best'];

/**
 * @param {string} [address] this computer's own, to be tried first
 * @returns {(picture: Picture) => Sighting[]}
 */
export function makeDeepReader(address) {
  /** @type {Memory[]} */
  let memory = [];
  let count = 0;

  return (picture) => {
    count += 1;
    memory = memory.filter(({ last }) => count - last <= KEPT);
    const { symbols, plane } = look(picture);
    return symbols
      .slice(0, MOST)
      .map((symbol) => {
        const text = readSymbol(symbol, plane, picture) ?? fromMemory(symbol, plane);
        return { text: text ?? '', box: boxOf(symbol.way), score: symbol.score };
      })
      .filter(({ text, score }) => text !== '' || score > LIKE_A_LABEL);
  };

  /**
   * @param {Symbol} symbol
   * @param {import('./planes.js').Plane} plane
   * @returns {string | null}
   */
  function fromMemory({ way, version }, plane) {
    const seen = beliefs(plane, way, layoutOf(version).side);
    const known = memory.find(
      (one) => one.version === version && alikeness(one.beliefs, seen) > SAME,
    );
    if (!known) {
      memory.push({ version, beliefs: seen, pictures: 1, last: count });
      return null;
    }
    known.pictures += 1;
    known.last = count;
    const share = 1 / known.pictures;
    known.beliefs = known.beliefs.map((old, i) => old + ((seen[i] ?? 0) - old) * share);
    return decipher(known.beliefs, version, address);
  }

  /**
   * @param {Symbol} symbol
   * @param {import('./planes.js').Plane} plane
   * @param {Picture} picture
   * @returns {string | null}
   */
  function readSymbol(symbol, plane, picture) {
    for (const seen of beliefsIn(symbol, plane, picture)) {
      const text = decipher(seen, symbol.version, address);
      if (text !== null) return text;
    }
    return null;
  }
}

/**
 * @param {Picture} picture
 * @returns {{symbols: Symbol[], plane: import('./planes.js').Plane}}
 */
function look(picture) {
  const plane = planeOf(picture, 'grey');
  const { symbols } = locate(plane);
  if (symbols.length > 0) return { symbols, plane };
  const red = planeOf(picture, 'red');
  return { symbols: locate(red).symbols, plane: red };
}

/**
 * What may be believed of a symbol, one after the other as long as none is readable.
 * @param {Symbol} symbol
 * @param {import('./planes.js').Plane} plane
 * @param {Picture} picture
 * @returns {Generator<Float32Array, void>}
 */
function* beliefsIn({ way, version, score }, plane, picture) {
  const { side } = layoutOf(version);
  const grey = beliefs(plane, way, side);
  yield grey;
  yield focused(grey, side);
  if (score <= LIKE_A_LABEL) return;
  for (const channel of OTHER_CHANNELS) yield beliefs(planeOf(picture, channel), way, side);
}
