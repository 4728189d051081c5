/** Days and hours as the device writes them. */
import { t } from './texts/index.js';

const ONLY_DAY = /^\d{4}-\d{2}-\d{2}$/;

/** @param {string | number | Date | null | undefined} made @returns {Date | null} */
function dateOf(made) {
  if (made === null || made === undefined || made === '') return null;
  // A day without an hour is a day of this place, not of Greenwich.
  const date = new Date(ONLY_DAY.test(String(made)) ? `${made}T00:00` : made);
  return Number.isNaN(date.getTime()) ? null : date;
}

/** @type {Map<string, Intl.DateTimeFormat>} */
const writers = new Map();

/** @param {Intl.DateTimeFormatOptions} shape */
function writer(shape) {
  const key = JSON.stringify(shape);
  const kept = writers.get(key) ?? new Intl.DateTimeFormat(navigator.languages[0], shape);
  writers.set(key, kept);
  return kept;
}

/**
 * A day without its year when it is this year's: "12 Oct".
 * @param {string | number | Date | null | undefined} made
 * @param {Date} [now]
 */
export function day(made, now = new Date()) {
  const date = dateOf(made);
  if (!date) return '';
  const year = date.getFullYear() === now.getFullYear() ? undefined : 'numeric';
  return writer({ day: 'numeric', month: 'short', year }).format(date);
}

/** A day with its year: "12 Oct 2024". @param {Date} date */
export const fullDay = (date) =>
  writer({ day: 'numeric', month: 'short', year: 'numeric' }).format(date);

/**
 * A day and an hour: "12 Oct, 19:42".
 * @param {string | number | Date | null | undefined} made
 * @param {Date} [now]
 */
export function when(made, now = new Date()) {
  const date = dateOf(made);
  if (!date) return '';
  const year = date.getFullYear() === now.getFullYear() ? undefined : 'numeric';
  const shape = { day: 'numeric', month: 'short', year, hour: '2-digit', minute: '2-digit' };
  return writer(/** @type {Intl.DateTimeFormatOptions} */ (shape)).format(date);
}

/**
 * The day of a fact, and that its device's clock was off when it was.
 * @param {{made: string, clock_off?: boolean}} fact
 */
export const dayOf = (fact) =>
  fact.clock_off ? t('clock.off', { day: day(fact.made) }) : day(fact.made);

/** Whole days between then and now. @param {any} made @param {Date} [now] */
export function daysSince(made, now = new Date()) {
  const date = dateOf(made);
  return date ? Math.floor((now.getTime() - date.getTime()) / 86_400_000) : null;
}

/** The date here, as it is kept. @param {Date} [now] */
export function today(now = new Date()) {
  const two = (/** @type {number} */ number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
