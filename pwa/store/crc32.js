/** The check sum of ZIP files. */

const TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let rest = n;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/**
 * @param {Uint8Array} bytes
 * @returns {number} 0 to 2^32−1; source: ISO 3309, polynomial 04C11DB7, as ZIP files use it
 */
export function crc32(bytes) {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = /** @type {number} */ (TABLE[(sum ^ byte) & 0xff]) ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
