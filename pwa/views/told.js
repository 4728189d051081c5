/** What the readings of one measure tell together: mean, uncertainty, verdict, how round and straight. */
import { combined, expanded, repeats, sum } from '../trade/dimension.js';
import { guardBand, judge } from '../trade/limits.js';
import { rounded } from '../trade/units.js';
import { outOfRoundOf, taperOf } from './out_of_round.js';
import * as plain from './plain.js';
import { inUnit, lineIn, MOST_DECIMALS, sureness } from './reading.js';

/** @typedef {plain.Facts} Facts */
/** @typedef {(id: string) => import('../log/values.js').Subject | null} Instruments */
/** @typedef {import('./reading.js').Spot} Spot */
/** @typedef {import('./reading.js').Line} Line */
/** @typedef {ReturnType<typeof atSpot>} AtSpot */

const WORST = ['outside', 'too-close', 'inside'];
const NOTHING = Object.freeze({
  value: null,
  size: null,
  decimals: null,
  uncertainty: null,
  from: null,
  verdict: null,
  out_of_round: null,
  taper: null,
});

/**
 * Where a measure is read, one spot after another.
 * @param {Facts} measure
 * @returns {Spot[]}
 */
export function spotsOf(measure) {
  const positions = plain.texts(measure.positions);
  const directions = plain.texts(measure.directions);
  return (positions.length ? positions : [null]).flatMap((position) =>
    (directions.length ? directions : [null]).map((direction) => ({ position, direction })),
  );
}

/** @param {Spot} one @param {Spot} other */
export function sameSpot(one, other) {
  return one.position === other.position && one.direction === other.direction;
}

/**
 * What readings of a measure tell; one that is of another quantity, or cannot be read, tells nothing.
 * The value is the mean over the spots, the uncertainty (k = 2) that of the least sure spot, the
 * verdict that of the worst. All sizes stand in `unit`.
 * @param {Facts} measure
 * @param {Facts[]} readings in the order they were taken
 * @param {Instruments} instrumentOf
 */
export function told(measure, readings, instrumentOf) {
  const { unit, lines } = inOneUnit(measure, readings);
  const spots = spotsRead(measure, lines).map((spot) => {
    const mine = lines.filter((line) => sameSpot(line, spot));
    return atSpot(measure, mine, (line) =>
      sureness(instrumentOf(line.instrument), unit, line.step),
    );
  });
  const asked = spotsOf(measure);
  const read = asked.filter((spot) => spots.some((each) => sameSpot(each, spot))).length;
  const count = { unit: unit || null, times: lines.length, read, of: asked.length, spots };
  const found = sizeOver(spots, lines);
  if (!found) return { ...count, ...NOTHING };
  const shown = Math.min(MOST_DECIMALS, found.decimals + (lines.length > 1 ? 1 : 0));
  const uncertainty = Math.max(...spots.map((spot) => spot.uncertainty));
  return {
    ...count,
    value: rounded(found.size, shown),
    ...found,
    uncertainty,
    from: spots.find((spot) => spot.uncertainty === uncertainty)?.from ?? null,
    verdict: WORST.find((word) => spots.some(({ verdict }) => verdict === word)) ?? null,
    out_of_round: outOfRoundOf(spots, unit),
    taper: taperOf(measure, spots, unit),
  };
}

/**
 * The size alone: the mean over the spots of the mean at each, and the finest decimals of all.
 * @param {Facts} measure
 * @param {Facts[]} readings
 */
export function sizeTold(measure, readings) {
  const { lines } = inOneUnit(measure, readings);
  const spots = spotsRead(measure, lines).map((spot) => ({
    mean: meanOf(lines.filter((line) => sameSpot(line, spot))),
  }));
  return sizeOver(spots, lines);
}

/** @param {{mean: number}[]} spots @param {Line[]} lines */
function sizeOver(spots, lines) {
  if (!lines.length) return null;
  return {
    size: sum(spots.map(({ mean }) => mean)) / spots.length,
    decimals: Math.max(...lines.map((line) => line.decimals)),
  };
}

/** @param {Line[]} lines */
const meanOf = (lines) => sum(lines.map(({ size }) => size)) / lines.length;

/**
 * The readings in the measure's unit, else in that of the first of them.
 * @param {Facts} measure
 * @param {Facts[]} readings
 */
function inOneUnit(measure, readings) {
  const known = readings.map((each) => ({ each, read: plain.quantity(each.value) }));
  const first = known.find(({ read }) => read !== null)?.read;
  const unit = plain.text(measure.unit) ?? first?.unit ?? '';
  return { unit, lines: known.flatMap(({ each, read }) => lineIn(each, read, unit) ?? []) };
}

/**
 * The spots that were read: those the measure names, then others as they come.
 * @param {Facts} measure
 * @param {Line[]} lines
 */
function spotsRead(measure, lines) {
  const known = [...spotsOf(measure), ...lines];
  return known.filter(
    (spot, at) =>
      lines.some((line) => sameSpot(line, spot)) &&
      known.findIndex((each) => sameSpot(each, spot)) === at,
  );
}

/**
 * What was read at one spot. Several instruments are as sure as the least sure of them; from two
 * repeats on their scatter counts, too.
 * @param {Facts} measure
 * @param {Line[]} lines
 * @param {(line: Line) => {u: number, from: string}} sureOf
 */
function atSpot(measure, lines, sureOf) {
  const parts = lines.map(sureOf);
  const unsure = Math.max(...parts.map((part) => part.u));
  const scatter = lines.length > 1 ? [repeats(lines.map(({ size }) => size))] : [];
  const u = combined([unsure, ...scatter.map((each) => each.standard_uncertainty_of_mean)]);
  const mean = meanOf(lines);
  return {
    position: lines[0]?.position ?? null,
    direction: lines[0]?.direction ?? null,
    times: lines.length,
    mean,
    uncertainty: expanded(u),
    from: parts.find((part) => part.u === unsure)?.from ?? null,
    verdict: verdictOf(measure, mean, u),
  };
}

/**
 * Held against the limits by ISO 14253-1; limits that cross, or have no unit, judge nothing.
 * @param {Facts} measure
 * @param {number} mean
 * @param {number} u
 */
function verdictOf(measure, mean, u) {
  const unit = plain.text(measure.unit) ?? '';
  const [least = null, most = null] = ['least', 'most'].map((name) =>
    inUnit(plain.quantity({ value: measure[name], unit }), unit),
  );
  if (least === null && most === null) return null;
  if (least !== null && most !== null && least > most) return null;
  const { lies } = judge(mean, least, most, guardBand(u));
  return lies === 'too-close-to-call' ? 'too-close' : lies;
}
