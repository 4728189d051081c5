/**
 * What a label of ours must say, as bits: the address is known but for the computer's name, so that
 * only the code itself and a few signs have to be read.
 * source: ISO/IEC 18004:2015, 7.4.4 (alphanumeric mode), 7.4.9 and 7.4.10 (end and padding).
 */

export const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
/** Stands for a sign nobody knows yet. */
const OPEN = '?';
export const UNKNOWN = 2;
const LONGEST_NAME = 12;

/**
 * The shapes a label's text may have: this computer's own address first, then any name.
 * @param {string} [address] the origin of the page, as https://name.local:8443
 * @returns {string[]}
 */
export function shapes(address) {
  const code = OPEN.repeat(8);
  const own = address?.toUpperCase();
  const port = /:\d+$/.exec(own ?? '')?.[0];
  const ports = new Set([':8443', port ?? '', '']);
  const result = own ? [`${own}/L/${code}`] : [];
  for (const end of ports) {
    for (let length = 1; length <= LONGEST_NAME; length += 1) {
      result.push(`HTTPS://${OPEN.repeat(length)}.LOCAL${end}/L/${code}`);
    }
  }
  return result;
}

/**
 * The data bits of a text with open signs: 0, 1 or UNKNOWN; null when it does not fit.
 * @param {string} text
 * @param {number} codewords of data
 * @returns {Uint8Array | null}
 */
export function expectedBits(text, codewords) {
  const bits = [0, 0, 1, 0, ...binary(text.length, 9)];
  for (let i = 0; i < text.length; i += 2) bits.push(...signBits(text.slice(i, i + 2)));
  const room = codewords * 8;
  if (bits.length > room) return null;
  for (let i = 0; i < 4 && bits.length < room; i += 1) bits.push(0);
  while (bits.length % 8 !== 0) bits.push(0);
  for (let i = 0; bits.length < room; i += 1) bits.push(...binary(i % 2 === 0 ? 0xec : 0x11, 8));
  return Uint8Array.from(bits);
}

/**
 * @param {string} pair one or two signs
 * @returns {number[]}
 */
function signBits(pair) {
  const width = pair.length === 2 ? 11 : 6;
  if (pair.includes(OPEN)) return Array.from({ length: width }, () => UNKNOWN);
  const value = [...pair].reduce((sum, sign) => sum * 45 + SIGNS.indexOf(sign), 0);
  return binary(value, width);
}

/**
 * @param {number} value
 * @param {number} width
 * @returns {number[]}
 */
function binary(value, width) {
  return Array.from({ length: width }, (_, i) => (value >> (width - 1 - i)) & 1);
}

/**
 * The text of alphanumeric data bits, or null when they are none.
 * @param {number[]} bits
 * @returns {string | null}
 */
export function textOf(bits) {
  /**
   * @param {number} from
   * @param {number} width
   */
  const number = (from, width) => Number.parseInt(bits.slice(from, from + width).join(''), 2);
  const length = number(4, 9);
  if (number(0, 4) !== 2 || 13 + Math.ceil(length * 5.5) > bits.length) return null;
  let text = '';
  for (let at = 13; text.length + 1 < length; at += 11) text += pairOf(number(at, 11));
  if (length % 2 === 1) text += SIGNS[number(13 + ((length - 1) / 2) * 11, 6)] ?? '';
  return text.length === length ? text : null;
}

/**
 * @param {number} value
 * @returns {string} two signs; a value past the last pair gives other than two, or nothing readable
 */
function pairOf(value) {
  return value < 2025 ? `${SIGNS[Math.floor(value / 45)]}${SIGNS[value % 45]}` : '\0\0';
}
