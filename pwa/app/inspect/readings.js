/** What has been read on a piece: in which unit, where the next one goes, and what they tell together. */

import { value } from '../../log/workshop.js';
import * as plain from '../../views/plain.js';
import { sameSort, spotOf } from '../../views/reading.js';
import { sameSpot, spotsOf, told } from '../../views/told.js';
import { benchUnits, quantityIn } from '../quantities.js';

/** A micrometer shows ten-thousandths. */
export const DECIMALS = 4;

/** The measures of a kind that can be read: each needs a unit. @param {any} kind @returns {any[]} */
export function measuresOf(kind) {
  return plain
    .mappings(value(kind, 'measures'))
    .filter((one) => plain.text(one.id) && unitsOf(one).length)
    .map((one) => ({ ...one, unit: unitsOf(one)[0] }));
}

const MOST_UNITS = 4;

/** The units a measure is read in, its own first; one row of keys. @param {any} measure @returns {string[]} */
export function unitsOf(measure) {
  const all = benchUnits(quantityIn(measure.unit) ?? measure.quantity, measure.unit);
  const own = all.filter((word) => word === measure.unit);
  return [...own, ...all.filter((word) => word !== measure.unit)].slice(0, MOST_UNITS);
}

/**
 * What was read of a measure; a reading in another kind of unit was meant for what it was before.
 * @param {any} measure
 * @param {any[]} readings
 */
export const readingsOf = (measure, readings) =>
  readings.filter((one) => one.measure === measure.id && sameSort(one.value.unit, measure.unit));

/** The spot to be read next: the first that was read least often. @param {any} measure @param {any[]} readings */
export function nextSpot(measure, readings) {
  const read = readingsOf(measure, readings).map(spotOf);
  const spots = spotsOf(measure).map((spot) => ({
    spot,
    round: read.filter((one) => sameSpot(one, spot)).length,
  }));
  const round = Math.min(...spots.map((each) => each.round));
  return { spot: spots.find((each) => each.round === round)?.spot ?? null, round };
}

/**
 * A reading as it is kept: what is not there is not written.
 * @param {any} measure
 * @param {any} spot
 * @param {any} amount
 * @param {string | null} instrument
 */
export function readingOf(measure, spot, amount, instrument) {
  return {
    measure: measure.id,
    ...(spot?.position ? { position: spot.position } : {}),
    ...(spot?.direction ? { direction: spot.direction } : {}),
    value: amount,
    ...(instrument ? { instrument } : {}),
  };
}

/**
 * What a measure tells so far.
 * @param {any} measure
 * @param {any[]} readings
 * @param {any} tools a Workshop with the instruments
 */
export const toldOf = (measure, readings, tools) =>
  told(measure, readingsOf(measure, readings), (id) => tools?.subject(id) ?? null);

/** Whether its least lies above its most, so that nothing is judged by them. @param {any} measure */
export const isCrossed = ({ least, most }) =>
  Boolean(least) && Boolean(most) && Number(least) > Number(most);

/**
 * Whether nothing that was read speaks against use; what is not read yet says
 * nothing, and limits that cross cannot say that it is good.
 * @param {any[]} measures
 * @param {any[]} readings
 * @param {any} tools
 */
export const noneAgainst = (measures, readings, tools) =>
  !measures.some(isCrossed) &&
  measures.every((one) => ['inside', null].includes(toldOf(one, readings, tools).verdict));
