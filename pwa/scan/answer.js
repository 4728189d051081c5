/** What a reading worker does with one picture. */
import { sortSightings } from './codes.js';
import { prepareReader, readPicture } from './reader.js';

/** @typedef {import('./reader.js').Picture} Picture */
/** @typedef {import('./watch.js').Answer} Answer */
/** @typedef {{at: number, bitmap?: ImageBitmap, picture?: Picture}} Question */

/** Brightness is judged by one pixel in so many. */
const SPARSE = 97;

/**
 * @param {'fast' | 'slow'} manner
 * @returns {(question: Question) => Promise<Answer>}
 */
export function makeAnswerer(manner) {
  const ready = prepareReader();
  /** @type {OffscreenCanvas | null} */
  let canvas = null;

  /**
   * @param {ImageBitmap} bitmap
   * @returns {Picture}
   */
  const pixels = (bitmap) => {
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

  return async ({ at, bitmap, picture }) => {
    await ready;
    const image = picture ?? pixels(/** @type {ImageBitmap} */ (bitmap));
    const sorted = sortSightings(await readPicture(image, manner === 'slow'));
    return { ...sorted, light: light(image), at };
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
