/** What a part measures: for each measure of its kind every reading, and what the latest tell. */
import { value } from '../log/workshop.js';
import { madeBy } from './joint_lines.js';
import * as plain from './plain.js';
import { spotOf } from './reading.js';
import { sizeTold, told } from './told.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {ReturnType<typeof measuresOf>[number]} Measure */
/** @typedef {{id: string, unit: string | null} & plain.Facts} Asked */
/** @typedef {{size: number, decimals: number, order: string}} Size */

/** What may bring readings. */
export const READ = ['inspection', 'returned'];

/** The measures of a kind. @param {Subject | null} kind */
export function measuresOf(kind) {
  return plain.mappings(value(kind, 'measures')).flatMap((each) => {
    const id = plain.text(each.id);
    if (id === null) return [];
    return {
      id,
      name: plain.text(each.name),
      quantity: plain.text(each.quantity),
      unit: plain.text(each.unit),
      instrument: plain.text(each.instrument),
      positions: plain.texts(each.positions),
      directions: plain.texts(each.directions),
      least: plain.text(each.least),
      most: plain.text(each.most),
      source: plain.text(each.source),
    };
  });
}

/**
 * Every measure of a part's kind, with its readings, newest round first. A round is what one
 * inspection, or one coming back, read; the latest that was not struck out and tells a size counts.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function measured(workshop, id) {
  const part = workshop.subject(id);
  const kind = workshop.subject(plain.text(value(part, 'kind')) ?? '');
  return measuresOf(kind).map((measure) => {
    const rounds = roundsOf(workshop, part, measure);
    const counts = rounds.find((round) => !round.struck && round.size !== null);
    const now = counts ?? { ...told(measure, [], () => null), inspection: null, order: null };
    const { inspection, order, unit, value: mean, size, decimals, uncertainty, from } = now;
    return {
      ...measure,
      unit: measure.unit ?? unit,
      inspection,
      order,
      value: mean,
      size,
      decimals,
      uncertainty,
      from,
      verdict: now.verdict,
      out_of_round: now.out_of_round,
      taper: now.taper,
      readings: rounds.flatMap((round) => round.readings),
      rounds,
    };
  });
}

/**
 * What each fact that read a measure told, newest first; struck ones, too.
 * @param {Workshop} workshop
 * @param {Subject | null} part
 * @param {Measure} measure
 */
function roundsOf(workshop, part, measure) {
  return newestFirst(part).flatMap((fact) => {
    const readings = readingsOf(fact, measure);
    if (!readings.length) return [];
    const found = told(measure, readings, (id) => workshop.subject(id));
    const by = { inspection: fact.id, heading: fact.heading, order: fact.order, ...madeBy(fact) };
    const lines = readings.map((each) => ({
      ...spotOf(each),
      ...(plain.measured(each.value) ?? { value: null, unit: null }),
      instrument: plain.text(each.instrument),
      ...by,
    }));
    return [{ ...by, ...found, readings: lines }];
  });
}

/** @param {Subject | null} part */
const newestFirst = (part) =>
  part?.facts.filter(({ heading }) => READ.includes(heading)).reverse() ?? [];

/** What a fact read of a measure, as far as it can be shown. @param {Fact} fact @param {Asked} measure */
const readingsOf = (fact, measure) =>
  plain
    .mappings(fact.body.readings)
    .filter((each) => each.measure === measure.id && plain.measured(each.value));

/**
 * The size of a part on one measure, in the unit of that measure, or null.
 * @param {Subject | null} part
 * @param {Asked} measure
 * @returns {Size | null}
 */
export function sizeOf(part, measure) {
  for (const fact of newestFirst(part)) {
    if (fact.struck) continue;
    const found = sizeTold(measure, readingsOf(fact, measure));
    if (found) return { ...found, order: fact.order };
  }
  return null;
}
