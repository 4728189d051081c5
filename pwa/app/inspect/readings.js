/** What has been read on a piece: which reading is next, their mean, and whether it keeps its limits. */

import { value } from '../../log/workshop.js';
import { fromResolution } from '../../trade/dimension.js';
import { guardBand, judge } from '../../trade/limits.js';
import { convert, UNIT_WORDS } from '../../trade/units.js';
import * as plain from '../../views/plain.js';
import { sameSort } from '../../views/reading.js';

/** A micrometer shows ten-thousandths. */
export const DECIMALS = 4;
const MOST_DECIMALS = 8;

/** The measures of a kind that can be read: each needs a unit. @param {any} kind @returns {any[]} */
export function measuresOf(kind) {
  return plain
    .mappings(value(kind, 'measures'))
    .filter((one) => plain.text(one.id) && unitsOf(one).length);
}

/** Units no instrument of a bench shows; a measure described in one of them keeps it. */
const RARE = new Set(['cm', 'm', 'ft', 'km']);
const MOST_UNITS = 4;

/** The units a measure is read in, its own first; one row of keys. @param {any} measure @returns {string[]} */
export function unitsOf(measure) {
  const words = /** @type {Record<string, Record<string, unknown>>} */ (UNIT_WORDS);
  const same = Object.values(words).find((each) => measure.unit in each);
  const all = Object.keys(same ?? words[measure.quantity] ?? {});
  const own = all.filter((word) => word === measure.unit);
  const others = all.filter((word) => word !== measure.unit && !RARE.has(word));
  return [...own, ...others].slice(0, MOST_UNITS);
}

/** The unit a measure's mean is told in. @param {any} measure @returns {string} */
export const unitOf = (measure) => unitsOf(measure)[0] ?? '';

/** Where a measure is read, one after another. @param {any} measure @returns {any[]} */
export function slotsOf(measure) {
  const positions = plain.texts(measure.positions);
  const directions = plain.texts(measure.directions);
  return (positions.length ? positions : [null]).flatMap((position) =>
    (directions.length ? directions : [null]).map((direction) => ({
      ...(position === null ? {} : { position }),
      ...(direction === null ? {} : { direction }),
    })),
  );
}

/** @param {any} slot */
const key = (slot) => `${slot.position ?? ''}\n${slot.direction ?? ''}`;

/**
 * What was read of a measure; a reading in another kind of unit was meant for what it was before.
 * @param {any} measure
 * @param {any[]} readings
 */
export const readingsOf = (measure, readings) =>
  readings.filter((one) => one.measure === measure.id && sameSort(one.value.unit, unitOf(measure)));

/** @param {any} reading @param {string} unit what its last digit is worth there */
function stepOf({ value }, unit) {
  const decimals = value.value.split('.')[1]?.length ?? 0;
  return Math.abs(convert(10 ** -decimals, value.unit, unit));
}

/** The place to be read next: the first that was read least often. @param {any} measure @param {any[]} readings */
export function nextSlot(measure, readings) {
  const read = readingsOf(measure, readings).map(key);
  const times = (/** @type {any} */ slot) => read.filter((one) => one === key(slot)).length;
  const slots = slotsOf(measure);
  const least = Math.min(...slots.map(times));
  return { slot: slots.find((slot) => times(slot) === least), round: least };
}

/** @param {string | null | undefined} limit */
const limit = (limit) =>
  limit === null || limit === undefined || limit === '' ? null : Number(limit);

/**
 * The mean at one place against the limits, with what the last digit leaves open.
 * @param {any} measure
 * @param {any[]} read readings at one place
 */
function atPlace(measure, read) {
  const unit = unitOf(measure);
  const sizes = read.map((one) => convert(Number(one.value.value), one.value.unit, unit));
  const mean = sizes.reduce((sum, one) => sum + one, 0) / sizes.length;
  const [least, most] = [limit(measure.least), limit(measure.most)];
  const crossed = least !== null && most !== null && least > most;
  if (crossed || (least === null && most === null)) return { mean, lies: null };
  const step = Math.max(...read.map((one) => stepOf(one, unit)));
  const guard = guardBand(fromResolution(step));
  return { mean, lies: judge(mean, least, most, guard).lies };
}

const WORST = ['outside', 'too-close-to-call', 'inside'];

/**
 * What a measure tells so far: how many places are read, the mean of all, and the worst of its places.
 * @param {any} measure
 * @param {any[]} readings
 */
export function told(measure, readings) {
  const mine = readingsOf(measure, readings);
  const slots = slotsOf(measure);
  const places = slots
    .map((slot) => mine.filter((one) => key(one) === key(slot)))
    .filter((read) => read.length);
  const each = places.map((read) => atPlace(measure, read));
  const mean = each.length ? each.reduce((sum, one) => sum + one.mean, 0) / each.length : null;
  const lies = WORST.find((word) => each.some((one) => one.lies === word)) ?? null;
  const step = Math.min(1, ...mine.map((one) => stepOf(one, unitOf(measure))));
  const digits = Math.ceil(-Math.log10(step) - 1e-9) + (mine.length > 1 ? 1 : 0);
  return {
    times: mine.length,
    read: each.length,
    of: slots.length,
    mean: mean === null ? null : mean.toFixed(Math.min(MOST_DECIMALS, digits)),
    lies,
    whole: each.length === slots.length,
  };
}

/** Whether nothing that was read speaks against use; what is not read yet says nothing. @param {any[]} measures @param {any[]} readings */
export const noneAgainst = (measures, readings) =>
  measures.every((one) => {
    const { lies } = told(one, readings);
    return lies === null || lies === 'inside';
  });
