/** Whole numbers over whole numbers: sums and products without a lost digit. */

/** @typedef {{up: bigint, down: bigint}} Ratio down is above zero */

/**
 * @param {string} text plain decimal, or one over another
 * @returns {Ratio}
 */
export function ratioOf(text) {
  const [above = '', below = '1'] = text.split('/');
  const [one, other] = [decimal(above), decimal(below)];
  return { up: one.up * other.down, down: one.down * other.up };
}

/**
 * @param {string} text
 * @returns {Ratio}
 */
export function decimal(text) {
  const [whole = '', part = ''] = text.replace('-', '').split('.');
  const up = BigInt(whole + part || '0');
  return { up: text.startsWith('-') ? -up : up, down: 10n ** BigInt(part.length) };
}

/**
 * A float as the exact ratio it is.
 * @param {number} number
 * @returns {Ratio}
 */
export function exact(number) {
  let down = 1n;
  let scaled = number;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    down *= 2n;
  }
  return { up: BigInt(scaled), down };
}

/**
 * The float nearest to a ratio, near enough for any reading: some 60 binary digits are divided.
 * @param {Ratio} ratio
 */
export function float({ up, down }) {
  const length = (/** @type {bigint} */ n) => (n < 0n ? -n : n).toString(2).length;
  const shift = Math.max(0, 64 - length(up) + length(down));
  return Number((up << BigInt(shift)) / down) / 2 ** shift;
}

/**
 * One and another together.
 * @param {Ratio} one
 * @param {Ratio} other
 */
export const sum = (one, other) => ({
  up: one.up * other.down + other.up * one.down,
  down: one.down * other.down,
});

/**
 * @param {Ratio} one
 * @param {Ratio} other
 */
export const product = (one, other) => ({ up: one.up * other.up, down: one.down * other.down });

/**
 * Plain decimal text with so many decimals, rounded half away from zero.
 * @param {Ratio} amount
 * @param {number} decimals
 */
export function roundedRatio(amount, decimals) {
  const above = (amount.up < 0n ? -amount.up : amount.up) * 10n ** BigInt(decimals);
  const steps = (2n * above + amount.down) / (2n * amount.down);
  const digits = String(steps).padStart(decimals + 1, '0');
  const cut = digits.length - decimals;
  const text = decimals ? `${digits.slice(0, cut)}.${digits.slice(cut)}` : digits;
  return amount.up < 0n && steps > 0n ? `-${text}` : text;
}
