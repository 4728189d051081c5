/** How far two entries of one device lie apart, by its stamps and by its own clock. */

/** @typedef {import('../log/values.js').Fact} Fact */
/**
 * When an entry was made, in milliseconds; null where a clock cannot be read. The step is what
 * one step of the device's clock is worth as it was written: a second, or less.
 * @typedef {{stamp: number | null, made: number | null, step: number}} Moment
 */

const STAMP = /^([0-9a-f]{12})-[0-9a-f]{4}$/;
const MADE =
  /^([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})(?:\.([0-9]{1,9}))?(?:Z|([+-])([0-9]{2}):([0-9]{2}))?$/;
const MINUTE = 60_000;
const SECOND = 1_000;

/**
 * The moment of a fact, by its stamp, which one device only lets rise, and by its clock.
 * @param {Fact & {stamp?: unknown}} fact
 * @returns {Moment}
 */
export function moment(fact) {
  const found = STAMP.exec(typeof fact.stamp === 'string' ? fact.stamp : fact.order);
  return { stamp: found ? Number.parseInt(found[1] ?? '', 16) : null, ...clock(fact.made) };
}

/**
 * Milliseconds from one entry to the next of the same device, or null. The larger of both clocks
 * counts: a stamp stands still while it is ahead of the clock, and a clock may be written in whole
 * seconds only.
 * @param {Moment} earlier
 * @param {Moment} later
 */
export function apart(earlier, later) {
  const gaps = [];
  if (earlier.stamp !== null && later.stamp !== null) gaps.push(later.stamp - earlier.stamp);
  if (earlier.made !== null && later.made !== null) {
    gaps.push(later.made - earlier.made - Math.max(earlier.step, later.step) + 1);
  }
  const known = gaps.filter((gap) => gap >= 0);
  return known.length ? Math.max(...known) : null;
}

/**
 * @param {unknown} made
 * @returns {{made: number | null, step: number}}
 */
function clock(made) {
  const found = typeof made === 'string' ? MADE.exec(made) : null;
  if (!found) return { made: null, step: SECOND };
  const [year, month, day, hour, minute, second] =
    /** @type {[number, number, number, number, number, number]} */ (found.slice(1, 7).map(Number));
  const [fraction = '', sign, offHours = '0', offMinutes = '0'] = found.slice(7);
  const ahead = Number(offHours) * 60 + Number(offMinutes);
  const minutes =
    days(year, month, day) * 1440 + hour * 60 + minute - (sign === '-' ? -ahead : ahead);
  const thousandths = Number(`${fraction}000`.slice(0, 3));
  const step = Math.max(1, Math.floor(SECOND / 10 ** fraction.length));
  return { made: minutes * MINUTE + second * SECOND + thousandths, step };
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
