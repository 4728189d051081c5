/** How long ago a tool was calibrated, and whether it wants it again. */
import { YEAR } from '../trade/wrench.js';
import { days } from './away.js';
import * as plain from './plain.js';

const MONTHS = 12;

/**
 * overdue past its due date, old after a year, else current; unknown, unclear or to-come.
 * A year is common practice, no source, where the owner gives no earlier day.
 * @param {unknown} calibrated
 * @param {unknown} due
 * @param {string} today
 */
export function calibration(calibrated, due, today) {
  return {
    state: stateOf(plain.text(calibrated), days(calibrated, today), days(due, today)),
    calibrated: plain.text(calibrated),
    due: plain.text(due),
    age: age(calibrated, today),
    late: age(due, today),
  };
}

/**
 * @param {string | null} calibrated
 * @param {number | null} since
 * @param {number | null} late
 */
function stateOf(calibrated, since, late) {
  if (late !== null && late > 0) return 'overdue';
  if (calibrated === null) return 'unknown';
  if (since === null) return 'unclear';
  if (since < 0) return 'to-come';
  return since > YEAR ? 'old' : 'current';
}

/**
 * Whole years and the whole months over them, and all days; null for no day or one to come.
 * @param {unknown} then
 * @param {string} today
 */
export function age(then, today) {
  const since = days(then, today);
  if (since === null || since < 0) return null;
  const [first, last] = [then, today].map(partsOf);
  const apart = (/** @type {number} */ at) => (last?.[at] ?? 0) - (first?.[at] ?? 0);
  const months = apart(0) * MONTHS + apart(1) - (apart(2) < 0 ? 1 : 0);
  return { years: Math.floor(months / MONTHS), months: months % MONTHS, days: since };
}

/** @param {unknown} day */
const partsOf = (day) => (plain.text(day) ?? '').split('-').map(Number);
