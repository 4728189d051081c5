/**
 * A gauge study: several people measure several parts several times; what is the gauge worth?
 * readings: person → repeat → part, in one unit, whatever is measured; results stand in the same.
 */
import { many } from './alike.js';
import { aboveZero, finite, notBelowZero } from './amounts.js';
import { sum } from './dimension.js';
import {
  MethodUnknown,
  NoSpread,
  StudyTooLarge,
  StudyTooSmall,
  StudyUneven,
} from './gauge_errors.js';

/** @typedef {readonly (readonly (readonly number[])[])[]} Readings */

const FEWEST = 2;
const MOST = 25;
/** One over d2 of so many repeats. */
const K1 = [
  0.8862, 0.5908, 0.4857, 0.4299, 0.3946, 0.3698, 0.3512, 0.3367, 0.3249, 0.3152, 0.3069, 0.2998,
  0.2935, 0.288, 0.2831, 0.2787, 0.2747, 0.2711, 0.2677, 0.2647, 0.2618, 0.2592, 0.2567, 0.2544,
];
/** One over √(d2² + d3²) of so many people or parts. */
const K2 = [
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a printed factor of four digits
  0.7071, 0.5231, 0.4467, 0.403, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146, 0.3059, 0.2985, 0.2921,
  0.2864, 0.2814, 0.277, 0.2729, 0.2692, 0.2659, 0.2628, 0.2599, 0.2573, 0.2548, 0.2525, 0.2504,
];

/**
 * Gauge study by averages and ranges, as it is done on paper.
 * @param {Readings} readings
 * @param {{k1?: number | null, k2?: number | null, k3?: number | null}} [own] factors
 */
export function averageAndRange(readings, own = {}) {
  const { people, repeats, parts } = checked(readings);
  const cells = inCells(readings);
  const meanRange = mean(cells.flat().map(spread));
  const repeatability = meanRange * factor(own.k1, K1, repeats);
  const means = cells.map((row) => row.map(mean));
  const between = spread(means.map(mean)) * factor(own.k2, K2, people);
  const part = spread(columnsOf(means).map(mean)) * factor(own.k3, K2, parts);
  const person = between ** 2 - repeatability ** 2 / (parts * repeats);
  const study = studied(repeatability ** 2, person, 0, part ** 2);
  return Object.freeze({ mean_range: meanRange, study });
}

/**
 * Gauge study by analysis of variance, parts and people both drawn at random.
 * @param {Readings} readings
 * @param {string} [interaction] kept, or pooled with the repeats
 */
export function analysisOfVariance(readings, interaction = 'pooled') {
  if (!['kept', 'pooled'].includes(interaction)) throw new MethodUnknown({ interaction });
  const { people, repeats, parts } = checked(readings);
  const squares = sumsOfSquares(inCells(readings));
  const mixedFreedom = (parts - 1) * (people - 1);
  const repeatFreedom = parts * people * (repeats - 1);
  const part = squares.part / (parts - 1);
  const person = squares.person / (people - 1);
  const both = squares.mixed / mixedFreedom;
  const repeat = squares.repeat / repeatFreedom;
  const together = (squares.mixed + squares.repeat) / (mixedFreedom + repeatFreedom);
  const kept = interaction === 'kept';
  const error = kept ? both : together;
  const study = studied(
    kept ? repeat : together,
    (person - error) / (parts * repeats),
    kept ? (both - repeat) / repeats : 0,
    (part - error) / (people * repeats),
  );
  return Object.freeze({
    mean_square_part: part,
    mean_square_person: person,
    mean_square_interaction: both,
    mean_square_repeat: repeat,
    study,
  });
}

/**
 * How much of a tolerance the gauge's own scatter takes: 6 · both / tolerance.
 * @param {number} both
 * @param {number} tolerance upper less lower limit
 * @param {number} [width] standard deviations
 */
export function shareOfTolerance(both, tolerance, width = 6) {
  notBelowZero(both, 'both');
  return (aboveZero(width, 'width') * both) / aboveZero(tolerance, 'tolerance');
}

/**
 * Whether a gauge is good enough, by its share of the total scatter or of the tolerance.
 * @param {number} share
 * @returns {'good' | 'may-do' | 'not-good-enough'}
 */
export function goodEnough(share) {
  if (notBelowZero(share, 'share') < 0.1) return 'good';
  return share <= 0.3 ? 'may-do' : 'not-good-enough';
}

/** @param {Readings} readings */
function checked(readings) {
  const people = many(readings, 'readings').map((person) => many(person, 'readings'));
  const repeats = people.map((person) => person.length);
  const parts = people.flat().map((repeat) => many(repeat, 'readings').length);
  if (readings.length < FEWEST || Math.min(...repeats) < FEWEST || Math.min(...parts) < FEWEST) {
    throw new StudyTooSmall();
  }
  if (new Set(repeats).size > 1 || new Set(parts).size > 1) throw new StudyUneven();
  const shape = { people: readings.length, repeats: repeats[0] ?? 0, parts: parts[0] ?? 0 };
  if (Math.max(...Object.values(shape)) > MOST) throw new StudyTooLarge();
  const listed = readings.flat(2).map((each) => finite(each, 'reading'));
  if (new Set(listed).size === 1) throw new NoSpread();
  return shape;
}

/** @param {Readings} readings person → part → repeats */
function inCells(readings) {
  return readings.map((person) => columnsOf(person));
}

/** @param {readonly (readonly number[])[]} rows */
function columnsOf(rows) {
  return (rows[0] ?? []).map((_, j) => rows.map((row) => row[j] ?? 0));
}

/** @param {number[][][]} cells */
function sumsOfSquares(cells) {
  const repeats = cells[0]?.[0]?.length ?? 0;
  const means = cells.map((row) => row.map(mean));
  const persons = means.map(mean);
  const columns = columnsOf(means).map(mean);
  const grand = mean(persons);
  /** @param {number[]} listed */
  const about = (listed) => sum(listed.map((each) => (each - grand) ** 2));
  const mixed = means.flatMap((row, i) =>
    row.map((each, j) => (each - (persons[i] ?? 0) - (columns[j] ?? 0) + grand) ** 2),
  );
  const within = cells.flat().flatMap((cell) => cell.map((each) => (each - mean(cell)) ** 2));
  return {
    part: persons.length * repeats * about(columns),
    person: columns.length * repeats * about(persons),
    mixed: repeats * sum(mixed),
    repeat: sum(within),
  };
}

/**
 * @param {number} repeat
 * @param {number} person
 * @param {number} mixed
 * @param {number} part
 */
function studied(repeat, person, mixed, part) {
  const [first = 0, second = 0, third = 0, last = 0] = [repeat, person, mixed, part].map((each) =>
    Math.max(0, each),
  );
  const both = Math.sqrt(sum([first, second, third]));
  const total = Math.sqrt(sum([first, second, third, last]));
  return Object.freeze({
    repeatability: Math.sqrt(first),
    reproducibility: Math.sqrt(second),
    interaction: Math.sqrt(third),
    both,
    part: Math.sqrt(last),
    total,
    both_over_total: total ? both / total : 0,
    categories: both ? Math.floor((Math.SQRT2 * Math.sqrt(last)) / both) : 0,
  });
}

/**
 * @param {number | null | undefined} own
 * @param {number[]} table
 * @param {number} count
 */
function factor(own, table, count) {
  return aboveZero(own ?? table[count - FEWEST] ?? 0, 'factor');
}

/** @param {readonly number[]} listed */
function mean(listed) {
  return sum(listed) / listed.length;
}

/** @param {readonly number[]} listed */
function spread(listed) {
  return Math.max(...listed) - Math.min(...listed);
}
