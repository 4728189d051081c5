/** The beta distribution: how much of it lies below a share, and the share that so much lies below. */

const MOST_ROUNDS = 100000;
const TINY = 1e-300;
/** Stirling's series: the logarithm of the gamma function beyond 15. */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360];
const SHIFT = 15;
const HALF_LOG = Math.log(2 * Math.PI) / 2;

/** @param {number} x */
const stirling = (x) => STIRLING.reduce((sum, each, i) => sum + each / x ** (2 * i + 1), 0);

/** @param {number} x above zero */
function logGamma(x) {
  let product = 1;
  let at = x;
  for (; at < SHIFT; at++) product *= at;
  return (at - 0.5) * Math.log(at) - at + HALF_LOG + stirling(at) - Math.log(product);
}

/**
 * The logarithm of x^a · (1 − x)^b / B(a, b). Of large a and b the gamma functions nearly cancel,
 * so their difference is written out and not taken.
 * @param {number} x
 * @param {number} a
 * @param {number} b
 */
function logPower(x, a, b) {
  if (a > b) return logPowers(Math.log1p(-x), Math.log(x), b, a);
  return logPowers(Math.log(x), Math.log1p(-x), a, b);
}

/**
 * @param {number} logX
 * @param {number} logY of 1 − x
 * @param {number} small
 * @param {number} large
 */
function logPowers(logX, logY, small, large) {
  const all = small + large;
  if (large < SHIFT) {
    return logX * small + logY * large - logGamma(small) - logGamma(large) + logGamma(all);
  }
  const far = large * (logY + Math.log1p(small / large)) + stirling(all) - stirling(large);
  if (small < SHIFT) {
    const near = small * (logX + Math.log(all) - 1) - logGamma(small);
    return near + far - Math.log1p(small / large) / 2;
  }
  const near = small * (logX + Math.log(all / small)) - stirling(small) - HALF_LOG;
  return near + far + Math.log((small / all) * large) / 2;
}

/**
 * The share of a beta distribution that lies below x.
 * @param {number} x from 0 to 1
 * @param {number} a
 * @param {number} b
 */
export function below(x, a, b) {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const known = logPower(x, a, b);
  // The fraction runs fast on this side of the mean only.
  return x < (a + 1) / (a + b + 2)
    ? (Math.exp(known) * fraction(x, a, b)) / a
    : 1 - (Math.exp(known) * fraction(1 - x, b, a)) / b;
}

/** @param {number} number */
const apart = (number) => (Math.abs(number) < TINY ? TINY : number);

/**
 * The continued fraction of the incomplete beta function, by Lentz's way.
 * @param {number} x
 * @param {number} a
 * @param {number} b
 */
function fraction(x, a, b) {
  let c = 1;
  let d = 1 / apart(1 - ((a + b) * x) / (a + 1));
  let found = d;
  for (let m = 1; m <= MOST_ROUNDS; m++) {
    const before = found;
    for (const step of steps(m, x, a, b)) {
      d = 1 / apart(1 + step * d);
      c = apart(1 + step / c);
      found *= d * c;
    }
    if (Math.abs(found - before) <= 1e-16 * Math.abs(found)) break;
  }
  return found;
}

/**
 * @param {number} m
 * @param {number} x
 * @param {number} a
 * @param {number} b
 */
function steps(m, x, a, b) {
  const even = a + 2 * m;
  return [
    (m * (b - m) * x) / ((even - 1) * even),
    (-(a + m) * (a + b + m) * x) / (even * (even + 1)),
  ];
}

/**
 * The share below which so much of a beta distribution lies. A root between two sides that always
 * hold it: Newton's step where it stays between them, else the middle by its logarithm.
 * @param {number} part above 0 and below 1
 * @param {number} a
 * @param {number} b
 */
export function quantile(part, a, b) {
  // Near 1 the distance from 1 is what counts, so the smaller side is looked for.
  return below(0.5, a, b) < part ? 1 - root(1 - part, b, a) : root(part, a, b);
}

/**
 * @param {number} aim
 * @param {number} a
 * @param {number} b
 */
function root(aim, a, b) {
  let low = 0;
  let high = 0.5 + 1e-9;
  let x = a / (a + b) < high ? a / (a + b) : high / 2;
  for (let round = 0; round < 2000; round++) {
    const off = below(x, a, b) - aim;
    if (off === 0) return x;
    if (off < 0) low = x;
    else high = x;
    const density = Math.exp(logPower(x, a, b)) / (x * (1 - x));
    const next = between(x - off / density, low, high);
    if (Math.abs(next - x) <= 1e-15 * x || high - low <= 1e-15 * high) return next;
    x = next;
  }
  return x;
}

/**
 * @param {number} x
 * @param {number} low
 * @param {number} high
 */
function between(x, low, high) {
  if (x > low && x < high) return x;
  return low > 0 ? Math.sqrt(low) * Math.sqrt(high) : high / 16;
}
