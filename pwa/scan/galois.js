/**
 * Reed-Solomon code words of QR symbols: GF(256) with x^8+x^4+x^3+x^2+1.
 * source: ISO/IEC 18004:2015, 7.5.2 and annex A.
 */

const POWER = new Uint8Array(512);
const LOGARITHM = new Uint8Array(256);
for (let i = 0, value = 1; i < 255; i += 1) {
  POWER[i] = value;
  POWER[i + 255] = value;
  LOGARITHM[value] = i;
  value = value & 128 ? (value << 1) ^ 285 : value << 1;
}

/**
 * @param {number} a
 * @param {number} b
 * @returns {number}
 */
export function times(a, b) {
  if (a === 0 || b === 0) return 0;
  return POWER[(LOGARITHM[a] ?? 0) + (LOGARITHM[b] ?? 0)] ?? 0;
}

/**
 * The generator polynomial with the given number of correction codewords, highest power first,
 * without its leading 1.
 * @param {number} count
 * @returns {Uint8Array}
 */
export function generator(count) {
  let poly = Uint8Array.of(1);
  for (let i = 0; i < count; i += 1) {
    const longer = new Uint8Array(poly.length + 1);
    poly.forEach((value, at) => {
      longer[at] = (longer[at] ?? 0) ^ value;
      longer[at + 1] = (longer[at + 1] ?? 0) ^ times(value, POWER[i] ?? 0);
    });
    poly = longer;
  }
  return poly.subarray(1);
}

/**
 * The correction codewords that follow the given data.
 * @param {Uint8Array} data
 * @param {number} count
 * @returns {Uint8Array}
 */
export function correction(data, count) {
  const poly = generator(count);
  const rest = new Uint8Array(count + 1);
  for (const value of data) {
    const lead = (rest[0] ?? 0) ^ value;
    for (let i = 0; i < count; i += 1) rest[i] = (rest[i + 1] ?? 0) ^ times(lead, poly[i] ?? 0);
  }
  return rest.subarray(0, count);
}

/** @type {Map<string, Uint8Array[]>} */
const made = new Map();

/**
 * One row of bits per data bit: the word that this bit alone makes. Words are sums of rows.
 * @param {number} data codewords of data
 * @param {number} count codewords of correction
 * @returns {Uint8Array[]}
 */
export function bitRows(data, count) {
  const name = `${data},${count}`;
  let rows = made.get(name);
  if (!rows) {
    rows = Array.from({ length: data * 8 }, (_, bit) => {
      const word = new Uint8Array(data);
      word[bit >> 3] = 128 >> (bit & 7);
      return toBits([...word, ...correction(word, count)]);
    });
    made.set(name, rows);
  }
  return rows;
}

/**
 * @param {ArrayLike<number>} bytes
 * @returns {Uint8Array}
 */
export function toBits(bytes) {
  const bits = new Uint8Array(bytes.length * 8);
  for (let i = 0; i < bits.length; i += 1) bits[i] = ((bytes[i >> 3] ?? 0) >> (7 - (i & 7))) & 1;
  return bits;
}
