/** What only a person can say about a joint, and which entries the next one must name. */
import * as plain from './plain.js';
import { programme } from './programme.js';
import { progress } from './progress.js';
import { covers, factsOf, fastenerOf, knewOf } from './runs.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./runs.js').Run} Run */
/** @typedef {import('./progress.js').Progress} Progress */
/** @typedef {import('./held.js').JointPart} JointPart */

const MOST_NAMED = 8;

/**
 * Questions: two runs begun apart, pulls on what was loosened, verdicts that differ.
 * @param {Subject} joint
 * @param {Run[]} found
 * @param {Progress | null} now
 * @param {JointPart[]} parts
 * @param {Workshop} workshop
 * @returns {plain.Facts[]}
 */
export function asks(joint, found, now, parts, workshop) {
  const differing = parts.filter(({ verdicts }) => verdicts.length > 1);
  return [
    ...twoRuns(joint, found, workshop),
    ...(now ? onLoosened(now) : []),
    ...differing.map(({ id, name, verdicts }) => ({ ask: 'verdict', part: id, name, verdicts })),
  ];
}

/**
 * What the next begin, pull or loosening names: begins and loosenings seen when it is made.
 * @param {Run[]} found
 * @param {Run | null} run
 */
export function after(found, run) {
  const begun = found.flatMap((each) => (each.begun ? [each.begun] : []));
  const named = [...(run ? factsOf(run, 'loosening') : []), ...begun];
  return plain
    .sorted(named, ({ order, id }) => [order, id])
    .slice(-MOST_NAMED)
    .map(({ id }) => id);
}

/**
 * @param {Subject} joint
 * @param {Run[]} found
 * @param {Workshop} workshop
 */
function twoRuns(joint, found, workshop) {
  const [earlier, later] = found.filter((each) => each.begun).slice(-2);
  if (!earlier?.begun || !later?.begun || knewOf(later.begun, earlier.begun)) return [];
  if (closedBefore(joint, earlier, later.begun.order, workshop)) return [];
  const begins = [earlier.begun.id, later.begun.id];
  return [{ ask: 'two-runs', runs: [earlier.id, later.id], begins }];
}

/**
 * Whether a run was done, or all of it loosened, before another one began.
 * @param {Subject} joint
 * @param {Run} run
 * @param {string} order
 * @param {Workshop} workshop
 */
function closedBefore(joint, run, order, workshop) {
  const loosened = factsOf(run, 'loosening').some(
    (each) => each.order < order && (each.body.fasteners ?? null) === null,
  );
  if (loosened) return true;
  const stood = progress(joint, run, programme(joint), workshop);
  return stood.complete && stood.last !== null && stood.last.fact.order < order;
}

/**
 * Pulls of somebody who did not know that the fastener was loosened meanwhile.
 * @param {Progress} now
 */
function onLoosened(now) {
  const pulled = now.pulls.filter(
    ({ live, accepted, flags }) =>
      live && accepted === null && flags.includes('loosened-meanwhile'),
  );
  return factsOf(now.run, 'loosening').flatMap((loosening) => {
    const over = pulled.filter(
      ({ fact }) => covers(loosening, fastenerOf(fact)) && !knewOf(fact, loosening),
    );
    if (!over.length) return [];
    const numbers = plain.once(over.flatMap(({ fastener }) => (fastener ? [fastener.number] : [])));
    return [
      {
        ask: 'pulled-on-loosened',
        loosening: loosening.id,
        pulls: over.map(({ fact }) => fact.id),
        numbers: plain.sorted(numbers, (number) => number),
      },
    ];
  });
}
