/** What a reading worker does with one picture. */
import { sortSightings } from './codes.js';
import { makeDeepReader } from './deep.js';
import { prepareReader, readPicture } from './reader.js';

/** @typedef {import('./reader.js').Picture} Picture */
/** @typedef {import('./watch.js').Answer} Answer */
/** @typedef {import('./reader.js').Sighting} Sighting */
/** @typedef {{at: number, bitmap?: ImageBitmap, picture?: Picture}} Question */

/** Brightness is judged by one pixel in so many. */
const SPARSE = 97;

/**
 * @param {'fast' | 'slow'} manner
 * @param {string} [address] this computer's own origin, which most labels carry
 * @returns {(question: Question) => Promise<Answer>}
 */
export function makeAnswerer(manner, address) {
  const ready = prepareReader();
  const look = manner === 'slow' ? makePatientReader(address) : readPicture;
  const pixels = makeUnpacker();
  return async ({ at, bitmap, picture }) => {
    await ready;
    const image = picture ?? pixels(/** @type {ImageBitmap} */ (bitmap));
    const sorted = sortSightings(await look(image));
    return { ...sorted, light: light(image), at };
  };
}

/**
 * The plain reader's patient way, and where that reads nothing, the deep one.
 * @param {string} [address]
 * @returns {(picture: Picture) => Promise<Sighting[]>}
 */
export function makePatientReader(address) {
  const deep = makeDeepReader(address);
  return async (picture) => {
    const plain = await readPicture(picture, true);
    const read = plain.filter(({ text }) => text !== '');
    if (read.length > 0 && read.length === plain.length) return plain;
    return [...read, ...deep(picture)];
  };
}

/**
 * @returns {(bitmap: ImageBitmap) => Picture}
 */
function makeUnpacker() {
  /** @type {OffscreenCanvas | null} */
  let canvas = null;
  return (bitmap) => {
    const { width, height } = bitmap;
    if (canvas?.width !== width || canvas.height !== height) {
      canvas = new OffscreenCanvas(width, height);
    }
    const context = canvas.getContext('2d', { willReadFrequently: true });
    if (!context) throw new Error('no drawing surface');
    context.drawImage(bitmap, 0, 0);
    bitmap.close();
    return context.getImageData(0, 0, width, height);
  };
}

/**
 * @param {Picture} picture
 * @returns {number} mean brightness, 0 to 255
 */
export function light({ data }) {
  let sum = 0;
  let count = 0;
  for (let i = 1; i < data.length; i += 4 * SPARSE) {
    sum += data[i] ?? 0;
    count += 1;
  }
  return count === 0 ? 0 : sum / count;
}
