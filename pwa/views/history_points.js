/** What was read of one measure over time: a point for each place and inspection. */
import { value } from '../log/workshop.js';
import { fromResolution } from '../trade/dimension.js';
import { guardBand, judge } from '../trade/limits.js';
import { convert, convertDifference } from '../trade/units.js';
import * as plain from './plain.js';
import { measuresOf } from './sizes.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {{part: string, fact: Fact, found: plain.Facts[]}} Read */
/** @typedef {{size: number, decimals: number, step: number}} Size */
/** @typedef {[number | null, number | null]} Ends */
/** @typedef {ReturnType<typeof pointsOf>[number]} Point */
/** @typedef {ReturnType<typeof plotsOf>[number]} Drawn */

const READ = ['inspection', 'returned'];

/**
 * Each measure of a kind with all that was read of it on these parts, oldest first.
 * @param {Subject | null} kind
 * @param {Subject[]} parts
 */
export function plotsOf(kind, parts) {
  const facts = parts
    .flatMap((part) => part.facts.map((fact) => ({ part: part.id, fact })))
    .filter(({ fact }) => READ.includes(fact.heading))
    .sort(({ fact: one }, { fact: other }) => plain.inOrder(keyOf(one), keyOf(other)));
  const sources = new Map(
    plain
      .mappings(value(kind, 'measures'))
      .map(({ id, source }) => [plain.text(id), plain.text(source)]),
  );
  return measuresOf(kind).map((measure) => plot(measure, sources.get(measure.id) ?? null, facts));
}

/** @param {Fact} fact */
const keyOf = ({ order, device, id }) => [order, device, id];

/**
 * @param {import('./sizes.js').Measure} measure
 * @param {string | null} source
 * @param {{part: string, fact: Fact}[]} facts
 */
function plot(measure, source, facts) {
  const read = facts.map(({ part, fact }) => ({ part, fact, found: readOf(fact, measure.id) }));
  const unit = measure.unit ?? lastUnit(read);
  /** @type {Ends} */
  const ends = [limit(measure.least, unit), limit(measure.most, unit)];
  const points = unit === null ? [] : read.flatMap((each) => pointsOf(each, unit, ends));
  return { ...measure, unit, source, points, ...told(points) };
}

/** What the points say together, those struck out left aside. @param {Point[]} points */
function told(points) {
  const open = points.filter(({ struck }) => !struck);
  const sizes = open.map(({ size }) => size);
  const of = (/** @type {string} */ word) => open.filter(({ lies }) => lies === word).length;
  const most = (/** @type {number} */ one, /** @type {number} */ other) => Math.max(one, other);
  return {
    pieces: new Set(open.map(({ part }) => part)).size,
    low: sizes.length ? sizes.reduce((one, other) => Math.min(one, other)) : null,
    high: sizes.length ? sizes.reduce(most) : null,
    mean: sizes.length ? sizes.reduce((all, each) => all + each, 0) / sizes.length : null,
    decimals: open.map(({ decimals }) => decimals).reduce(most, 0),
    outside: of('outside'),
    close: of('too-close-to-call'),
  };
}

/** @param {Fact} fact @param {string} measure */
const readOf = (fact, measure) =>
  plain.mappings(fact.body.readings).filter((each) => each.measure === measure);

/** Where a kind names no unit, that of the latest reading. @param {Read[]} read */
function lastUnit(read) {
  const all = read.flatMap(({ found }) =>
    found.flatMap((each) => plain.quantity(each.value) ?? []),
  );
  return all.at(-1)?.unit ?? null;
}

/**
 * The mean at each place, what its last digit leaves open, and how it lies to the limits.
 * @param {Read} read
 * @param {string} unit
 * @param {Ends} ends
 */
function pointsOf({ part, fact, found }, unit, ends) {
  /** @type {Map<string, {position: string | null, direction: string | null, sizes: Size[]}>} */
  const places = new Map();
  for (const each of found) {
    const size = inUnit(each.value, unit);
    if (!size) continue;
    const [position, direction] = [plain.text(each.position), plain.text(each.direction)];
    const key = JSON.stringify([position, direction]);
    const place = places.get(key) ?? { position, direction, sizes: [] };
    place.sizes.push(size);
    places.set(key, place);
  }
  return [...places.values()].map(({ position, direction, sizes }) => ({
    entry: fact.id,
    part,
    made: fact.made,
    struck: fact.struck !== null,
    position,
    direction,
    times: sizes.length,
    ...judged(sizes, ends),
  }));
}

/** @param {Size[]} sizes @param {Ends} ends */
function judged(sizes, [low, high]) {
  const size = sizes.reduce((all, each) => all + each.size, 0) / sizes.length;
  const guard = guardBand(fromResolution(Math.max(...sizes.map(({ step }) => step))));
  return {
    size,
    decimals: Math.max(...sizes.map(({ decimals }) => decimals)),
    guard,
    lies: lies(size, low, high, guard),
  };
}

/**
 * The size in a unit, with how many decimals it was read, and what the last one is worth.
 * @param {unknown} kept
 * @param {string} unit
 * @returns {Size | null}
 */
function inUnit(kept, unit) {
  const read = plain.quantity(kept);
  if (!read) return null;
  const decimals = read.value.split('.')[1]?.length ?? 0;
  const step = 10 ** -decimals;
  if (unit === read.unit) return { size: Number(read.value), decimals, step };
  try {
    const size = convert(Number(read.value), read.unit, unit);
    return { size, decimals, step: Math.abs(convertDifference(step, read.unit, unit)) };
  } catch {
    return null;
  }
}

/** @param {string | null} typed @param {string | null} unit */
function limit(typed, unit) {
  const kept = plain.quantity({ value: typed, unit });
  return kept && Number(kept.value);
}

/** @param {number} size @param {number | null} low @param {number | null} high @param {number} guard */
function lies(size, low, high, guard) {
  try {
    return judge(size, low, high, guard).lies;
  } catch {
    return null;
  }
}
