/** The plain QR reader: one fast and one patient way to ask it. */
import { prepareZXingModule, readBarcodes } from '../vendor/zxing-wasm/es/reader/index.js';

/** @typedef {{width: number, height: number, data: Uint8ClampedArray<ArrayBuffer>}} Picture RGBA */
/** @typedef {[number, number]} Point */
/**
 * @typedef {object} Sighting
 * @property {string} text what the symbol says; empty when it was found and not read
 * @property {Point[]} box its four corners in pixels of the picture, clockwise from its own top left
 */

const WASM = new URL('../vendor/zxing-wasm/reader/zxing_reader.wasm', import.meta.url).href;

/** @typedef {import('../vendor/zxing-wasm/es/bindings/readerOptions.js').ReaderOptions} Options */

/** @type {Options} */
const SHARED = {
  formats: ['QRCode'],
  maxNumberOfSymbols: 4,
  returnErrors: true,
  textMode: 'Plain',
};
const FAST = { tryHarder: false, tryRotate: false, tryInvert: false, tryDownscale: false };
const PATIENT = { tryHarder: true, tryRotate: true, tryInvert: true, tryDownscale: true };

/**
 * Make the reader ready; without bytes its program is fetched from beside the page.
 * @param {ArrayBuffer} [wasmBinary]
 * @returns {Promise<void>}
 */
export async function prepareReader(wasmBinary) {
  const overrides = wasmBinary ? { wasmBinary } : { locateFile: () => WASM };
  await prepareZXingModule({ overrides, fireImmediately: true });
}

/**
 * Everything that looks like one of our symbols, read or not.
 * @param {Picture} picture
 * @param {boolean} [patient]
 * @returns {Promise<Sighting[]>}
 */
export async function readPicture(picture, patient = false) {
  const options = { ...SHARED, ...(patient ? PATIENT : FAST) };
  const results = await readBarcodes(/** @type {ImageData} */ (picture), options);
  return results.map((result) => ({
    text: result.isValid ? result.text : '',
    box: corners(result.position),
  }));
}

/**
 * @param {import('../vendor/zxing-wasm/es/bindings/position.js').Position} at
 * @returns {Point[]}
 */
function corners(at) {
  return [at.topLeft, at.topRight, at.bottomRight, at.bottomLeft].map(({ x, y }) => [x, y]);
}
