/** Whether two entries of one device lie too close, by its stamps and by its own clock. */

/** @typedef {import('../log/values.js').Fact} Fact */

const STAMP = /^([0-9a-f]{12})-[0-9a-f]{4}$/;
const MADE =
  /^([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})(?:\.([0-9]{1,9}))?(?:Z|([+-])([0-9]{2}):([0-9]{2}))?$/;
const MINUTE = 60_000;
const SECOND = 1_000;

/**
 * Whether an entry came less than so many milliseconds after another one of the same device. Both
 * clocks must say so: a stamp stands still while it is ahead of the clock, and a clock may be
 * written in whole seconds only. Where neither can be read, nothing is said.
 * @param {Fact} earlier
 * @param {Fact} later
 * @param {number} least
 */
export function closer(earlier, later, least) {
  const byStamp = stampGap(earlier, later);
  if (byStamp !== null && byStamp >= least) return false;
  const byClock = clockGap(earlier, later);
  if (byClock !== null && byClock >= least) return false;
  return byStamp !== null || byClock !== null;
}

/**
 * @param {Fact} earlier
 * @param {Fact} later
 */
function stampGap(earlier, later) {
  const [from, to] = [STAMP.exec(earlier.stamp), STAMP.exec(later.stamp)];
  if (!from || !to) return null;
  const gap = Number.parseInt(to[1] ?? '', 16) - Number.parseInt(from[1] ?? '', 16);
  return gap < 0 ? null : gap;
}

/**
 * @param {Fact} earlier
 * @param {Fact} later
 */
function clockGap(earlier, later) {
  const [from, to] = [clock(earlier.made), clock(later.made)];
  if (!from || !to) return null;
  const gap = to.ms - from.ms - Math.max(from.step, to.step) + 1;
  return gap < 0 ? null : gap;
}

/**
 * @param {unknown} made
 * @returns {{ms: number, step: number} | null} step: what its last digit is worth
 */
function clock(made) {
  const found = typeof made === 'string' ? MADE.exec(made) : null;
  if (!found) return null;
  const [year, month, day, hour, minute, second] =
    /** @type {[number, number, number, number, number, number]} */ (found.slice(1, 7).map(Number));
  const [fraction = '', sign, offHours = '0', offMinutes = '0'] = found.slice(7);
  const ahead = Number(offHours) * 60 + Number(offMinutes);
  const minutes =
    days(year, month, day) * 1440 + hour * 60 + minute - (sign === '-' ? -ahead : ahead);
  const thousandths = Number(`${fraction}000`.slice(0, 3));
  const step = Math.max(1, Math.floor(SECOND / 10 ** fraction.length));
  return { ms: minutes * MINUTE + second * SECOND + thousandths, step };
}

/**
 * Days since some far day; March begins the year, so that the leap day ends it.
 * @param {number} year
 * @param {number} month
 * @param {number} day
 */
function days(year, month, day) {
  const years = year - (month <= 2 ? 1 : 0);
  const months = (month + 9) % 12;
  const leaps = Math.floor(years / 4) - Math.floor(years / 100) + Math.floor(years / 400);
  return 365 * years + leaps + Math.floor((153 * months + 2) / 5) + day;
}
