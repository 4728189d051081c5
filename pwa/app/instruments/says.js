/** What is said of a wrench or an instrument: range, how sure it is, how old its calibration is. */
import { fullDay } from '../dates.js';
import { hasText, t } from '../texts/index.js';
import '../texts/instruments.js';
import '../texts/quantities.js';
import { local } from '../values.js';

/** Up to so many days are counted as days; longer ago it is months and years. */
const MOST_DAYS = 60;

/** "2 years 9 months ago", "12 days ago", "today". @param {{years: number, months: number, days: number}} age */
export function agoSays({ years, months, days }) {
  if (days <= MOST_DAYS || (years === 0 && months === 0)) return t('cal.days', { n: days });
  const parts = [years && t('cal.years', { n: years }), months && t('cal.months', { n: months })];
  return t('cal.ago', { age: parts.filter(Boolean).join(' ') });
}

/** A written day with its year; what is no day, as it was written. @param {string} written */
export function daySays(written) {
  const date = new Date(`${written}T00:00`);
  return Number.isNaN(date.getTime()) ? written : fullDay(date);
}

/** How old the calibration is, in words. @param {any} calibration as the view gives it */
export function calibratedSays({ state, calibrated, age }) {
  if (calibrated === null) return t('cal.none');
  if (age) return t('cal.when', { ago: agoSays(age), day: daySays(calibrated) });
  return t(state === 'to-come' ? 'cal.to-come' : 'cal.unclear', { day: daySays(calibrated) });
}

/** Why it wants calibrating, or nothing. @param {any} calibration as the view gives it */
export function dueSays({ state, due, age }) {
  if (state === 'overdue') return t('cal.overdue', { day: daySays(due) });
  if (state === 'old') return t('cal.old', { ago: agoSays(age) });
  return state === 'to-come' ? t('cal.ahead') : '';
}

/** "0.004 mm"; degrees stand close. @param {string} value @param {string | null} unit */
export const sized = (value, unit) =>
  unit === '°' ? `${local(value)}°` : [local(value), unit].filter(Boolean).join(' ');

/** "± 0.004 mm". @param {string} value @param {string | null} unit */
export const within = (value, unit) => `± ${sized(value, unit)}`;

/** "50 to 75 mm", "from 40 N·m", "up to 6 kg", or nothing. @param {any} tool as the view gives it */
export function rangeSays({ least, most, unit }) {
  if (least && most) return t('wrench.range', { least: local(least), most: sized(most, unit) });
  if (least) return t('wrench.from', { least: sized(least, unit) });
  return most ? t('wrench.up-to', { most: sized(most, unit) }) : '';
}

/** How far it may be off. @param {any} tool as the view gives it */
export function offSays({ permitted, deviation, uncertainty, unit, heading }) {
  if (heading === 'wrench') return permitted ? within(permitted.percent, '%') : '';
  const sure = uncertainty ?? deviation;
  return sure ? within(sure, unit) : '';
}

/** What sort it is, in our words or in those of its owner. @param {any} tool */
export function sortSays({ heading, sort }) {
  if (!sort) return t(`tool.${heading}`);
  const key = `${heading}.sort.${sort.replaceAll(' ', '-')}`;
  if (heading === 'wrench') return t('tool.wrench.sort', { sort: hasText(key) ? t(key) : sort });
  return hasText(key) ? t(key) : sort;
}

/** One line of a list: why it wants calibrating first, else how old that is. @param {any} tool */
export function lineSays(tool) {
  const calibrated = dueSays(tool.calibration) || calibratedSays(tool.calibration);
  return [rangeSays(tool), offSays(tool), calibrated].filter(Boolean).join(' · ');
}

/** What does not go together, and what to do about it. @param {string} trouble @param {any} tool or what stands in its form */
export const troubleSays = (trouble, { unit, quantity }) =>
  t(`tool.trouble.${trouble}`, { unit: unit ?? '', quantity: t(`quantity.${quantity}`) });
