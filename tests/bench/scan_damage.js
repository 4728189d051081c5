/**
 * Reads pictures from standard input and answers one line of JSON each: what the plain reader and
 * what ours made of it. A picture is a line of JSON (width, height, fresh, plain) and its bytes.
 */
import { readFileSync } from 'node:fs';
import { makePatientReader } from '../../pwa/scan/answer.js';
import { codeOf } from '../../pwa/scan/codes.js';
import { prepareReader, readPicture } from '../../pwa/scan/reader.js';

const WASM = new URL('../../pwa/vendor/zxing-wasm/reader/zxing_reader.wasm', import.meta.url);
const ADDRESS = process.argv[2];

const bytes = readFileSync(WASM);
await prepareReader(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));

/** @param {{text: string}[]} sightings */
const codesOf = (sightings) => [
  ...new Set(sightings.map(({ text }) => codeOf(text)).filter((code) => code !== null)),
];

let patient = makePatientReader(ADDRESS);
let rest = Buffer.alloc(0);
/** @type {{width: number, height: number, fresh: boolean, only: string} | null} */
let head = null;

for await (const chunk of process.stdin) {
  rest = Buffer.concat([rest, chunk]);
  for (;;) {
    if (head === null) {
      const end = rest.indexOf(10);
      if (end < 0) break;
      head = JSON.parse(rest.subarray(0, end).toString());
      rest = rest.subarray(end + 1);
    }
    const size = head.width * head.height * 4;
    if (rest.length < size) break;
    const data = new Uint8ClampedArray(rest.subarray(0, size));
    rest = rest.subarray(size);
    process.stdout.write(`${JSON.stringify(await answer({ ...head, data }))}\n`);
    head = null;
  }
}

/** @param {{width: number, height: number, fresh: boolean, data: Uint8ClampedArray}} picture */
async function answer(picture) {
  if (picture.fresh) patient = makePatientReader(ADDRESS);
  const fast = codesOf(await readPicture(picture));
  const plain = [...new Set([...fast, ...codesOf(await readPicture(picture, true))])];
  const begun = performance.now();
  const ours = codesOf(picture.deep ? await patient(picture) : []);
  return { plain, ours: [...new Set([...fast, ...ours])], ms: performance.now() - begun };
}
