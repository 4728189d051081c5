/** What was read of one measure over time: a point for each spot and inspection. */
import { sum } from '../trade/dimension.js';
import { measuresOf, READ } from './measured.js';
import * as plain from './plain.js';
import { told } from './told.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./measured.js').Measure} Measure */
/** @typedef {{part: string, fact: Fact, readings: plain.Facts[]}} Read */
/** @typedef {ReturnType<typeof pointsOf>[number]} Point */

/** So many inspections are told between two breaths. */
const SLICE = 100;

/**
 * Each measure of a kind with all that was read of it on these parts, oldest first.
 * @param {Workshop} workshop
 * @param {Subject | null} kind
 * @param {Subject[]} parts
 */
export function plotsOf(workshop, kind, parts) {
  const facts = factsOf(parts);
  return measuresOf(kind).map((measure) => {
    const { asked, read } = readsOf(measure, facts);
    return plotted(
      asked,
      read.flatMap((each) => pointsOf(workshop, asked, each)),
    );
  });
}

/**
 * The same, told in slices.
 * @param {Workshop} workshop
 * @param {Subject | null} kind
 * @param {Subject[]} parts
 * @param {() => Promise<unknown>} breathe
 */
export async function plotsInSlices(workshop, kind, parts, breathe) {
  const facts = factsOf(parts);
  const plots = [];
  for (const measure of measuresOf(kind)) {
    const { asked, read } = readsOf(measure, facts);
    const points = [];
    for (let at = 0; at < read.length; at += SLICE) {
      await breathe();
      points.push(...read.slice(at, at + SLICE).flatMap((each) => pointsOf(workshop, asked, each)));
    }
    plots.push(plotted(asked, points));
  }
  return plots;
}

/** All that was read on these parts, oldest first. @param {Subject[]} parts */
const factsOf = (parts) =>
  parts
    .flatMap((part) => part.facts.map((fact) => ({ part: part.id, fact })))
    .filter(({ fact }) => READ.includes(fact.heading))
    .map((each) => ({ ...each, key: keyOf(each.fact) }))
    .sort((one, other) => plain.inOrder(one.key, other.key));

/** @param {Fact} fact */
const keyOf = ({ order, device, id }) => [order, device, id];

/**
 * @param {Measure} measure
 * @param {{part: string, fact: Fact}[]} facts
 */
function readsOf(measure, facts) {
  const read = facts
    .map(({ part, fact }) => ({ part, fact, readings: readingsOf(fact, measure.id) }))
    .filter(({ readings }) => readings.length > 0);
  // Limits without a unit judge nothing, even where the readings bring one.
  const known = measure.unit ? {} : { unit: lastUnit(read), least: null, most: null };
  return { asked: { ...measure, ...known }, read };
}

/** @param {Measure} asked @param {Point[]} points */
const plotted = ({ id, name, unit, least, most, source }, points) => ({
  ...{ id, name, unit, least, most, source },
  points,
  ...summed(points),
});

/** What the points say together, those struck out left aside. @param {Point[]} points */
function summed(points) {
  const open = points.filter(({ struck }) => !struck);
  const sizes = open.map(({ size }) => size);
  const of = (/** @type {string} */ word) => open.filter(({ verdict }) => verdict === word).length;
  const most = (/** @type {number} */ one, /** @type {number} */ other) => Math.max(one, other);
  return {
    pieces: new Set(open.map(({ part }) => part)).size,
    low: sizes.length ? sizes.reduce((one, other) => Math.min(one, other)) : null,
    high: sizes.length ? sizes.reduce(most) : null,
    mean: sizes.length ? sum(sizes) / sizes.length : null,
    decimals: open.map(({ decimals }) => decimals ?? 0).reduce(most, 0),
    outside: of('outside'),
    close: of('too-close'),
  };
}

/** @param {Fact} fact @param {string} measure */
const readingsOf = (fact, measure) =>
  plain.mappings(fact.body.readings).filter((each) => each.measure === measure);

/** Where a kind names no unit, that of the latest reading. @param {Read[]} read */
function lastUnit(read) {
  const all = read.flatMap(({ readings }) =>
    readings.flatMap((each) => plain.quantity(each.value) ?? []),
  );
  return all.at(-1)?.unit ?? null;
}

/**
 * The mean at each spot, how sure it is (k = 2), and how it lies to the limits.
 * @param {Workshop} workshop
 * @param {plain.Facts} measure
 * @param {Read} read
 */
function pointsOf(workshop, measure, { part, fact, readings }) {
  const found = told(measure, readings, (id) => workshop.subject(id));
  return found.spots.map((spot) => ({
    entry: fact.id,
    part,
    made: fact.made,
    struck: fact.struck !== null,
    position: spot.position,
    direction: spot.direction,
    times: spot.times,
    size: spot.mean,
    decimals: found.decimals,
    uncertainty: spot.uncertainty,
    from: spot.from,
    verdict: spot.verdict,
  }));
}
