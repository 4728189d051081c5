/** Writes a ZIP archive whose files are stored as they are: photos do not shrink further. */

import { crc32 } from './crc32.js';

const UTF8_NAMES = 0x0800;
const VERSION = 20;

/** @typedef {{name: string, bytes: Uint8Array}} File */

/** @param {[size: 2|4, value: number][]} fields little-endian */
function record(fields) {
  const bytes = new Uint8Array(fields.reduce((sum, [size]) => sum + size, 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [size, value] of fields) {
    if (size === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += size;
  }
  return bytes;
}

/** Date and time as such an archive writes them. @param {Date} at @returns {[2, number][]} */
function stamped(at) {
  const time = (at.getHours() << 11) | (at.getMinutes() << 5) | (at.getSeconds() >> 1);
  const day = ((at.getFullYear() - 1980) << 9) | ((at.getMonth() + 1) << 5) | at.getDate();
  return [
    [2, time],
    [2, day],
  ];
}

/** @param {Uint8Array} name @param {Uint8Array} bytes @param {Date} at @returns {[2|4, number][]} */
const shared = (name, bytes, at) => [
  [2, VERSION],
  [2, UTF8_NAMES],
  [2, 0],
  ...stamped(at),
  [4, crc32(bytes)],
  [4, bytes.length],
  [4, bytes.length],
  [2, name.length],
  [2, 0],
];

/**
 * @param {AsyncIterable<File>|Iterable<File>} files @param {Date} at
 * @returns {Promise<Blob>} below 4 GiB and 65 536 files
 */
export async function zip(files, at) {
  const parts = [];
  const directory = [];
  let offset = 0;
  for await (const { name, bytes } of files) {
    const title = new TextEncoder().encode(name);
    const common = shared(title, bytes, at);
    const head = record([[4, 0x04034b50], ...common]);
    const place = record([
      [2, 0],
      [2, 0],
      [2, 0],
      [4, 0],
      [4, offset],
    ]);
    directory.push(record([[4, 0x02014b50], [2, VERSION], ...common]), place, title);
    parts.push(new Blob([head, title, /** @type {any} */ (bytes)]));
    offset += head.length + title.length + bytes.length;
  }
  const size = directory.reduce((sum, one) => sum + one.length, 0);
  const count = directory.length / 3;
  const end = record([
    [4, 0x06054b50],
    [2, 0],
    [2, 0],
    [2, count],
    [2, count],
    [4, size],
    [4, offset],
    [2, 0],
  ]);
  return new Blob([...parts, ...directory, end], { type: 'application/zip' });
}
