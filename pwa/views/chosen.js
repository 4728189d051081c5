/** A set: its pieces and their places, ranked spares, what they span, what changed since. */
import { standing, value } from '../log/workshop.js';
import * as plain from './plain.js';
import { measuresOf, sizeOf } from './sizes.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('./sizes.js').Measure} Measure */
/** @typedef {plain.Workshop} Workshop */

/**
 * A set as it stands now.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function chosen(workshop, id) {
  const set = workshop.subject(id);
  const kind = plain.text(value(set, 'kind'));
  const build = plain.text(value(set, 'build'));
  const measures = compared(set, measuresOf(kind ? workshop.subject(kind) : null));
  const since = set?.fields.pieces?.order ?? '';
  /** @param {string} part */
  const told = (part) => line(workshop, part, measures, { since, build });
  const pieces = plain
    .mappings(value(set, 'pieces'))
    .map(({ part, place }) => ({ ...told(plain.asId(part)), place: plain.text(place) }));
  const spares = plain
    .texts(value(set, 'spares'))
    .map((part, at) => ({ ...told(part), rank: at + 1 }));
  return {
    id,
    ...things.described(set),
    name: plain.text(value(set, 'name')),
    kind: kind && { id: kind, name: things.nameOf(workshop, kind) },
    build: build && { id: build, name: things.nameOf(workshop, build) },
    count: plain.whole(value(set, 'count')),
    says: plain.text(value(set, 'says')),
    pieces,
    spares,
    spread: measures.map((measure, at) => ({ ...measure, ...spread(pieces, at) })),
    changed: pieces.filter(({ changes }) => changes.length).map((each) => each.id),
    invented: value(set, 'invented') === true,
  };
}

/**
 * The measures the set was compared by, with their weights.
 * @param {Subject | null} set
 * @param {Measure[]} measures
 */
function compared(set, measures) {
  return plain.mappings(value(set, 'measures')).flatMap(({ measure, weight }) => {
    const found = measures.find((each) => each.id === measure);
    return found ? { ...found, weight: plain.text(weight) } : [];
  });
}

/**
 * @param {Workshop} workshop
 * @param {string} id
 * @param {Measure[]} measures
 * @param {{since: string, build: string | null}} set
 */
function line(workshop, id, measures, { since, build }) {
  const part = workshop.subject(id);
  const sizes = measures.map((measure) => sizeOf(part, measure));
  return {
    id,
    name: plain.text(value(part, 'name')),
    verdict: things.mark(part),
    sizes: sizes.map((found) => found && { size: found.size, decimals: found.decimals }),
    changes: changesOf(part, sizes, since, build),
  };
}

/**
 * What became of a piece since it was chosen.
 * @param {Subject | null} part
 * @param {(import('./sizes.js').Size | null)[]} sizes
 * @param {string} since
 * @param {string | null} build
 */
function changesOf(part, sizes, since, build) {
  if (part?.heading !== 'part' || part.hidden) return ['missing'];
  const mark = things.mark(part);
  const elsewhere = standing(part, 'fitted').some(({ body }) => {
    const fitted = plain.text(body.build);
    return fitted !== null && fitted !== build;
  });
  return [
    ...(mark === 'use' || mark === 'spare' ? [] : [mark]),
    ...(sizes.some((found) => found && found.order > since) ? ['measured-again'] : []),
    ...(elsewhere ? ['fitted-elsewhere'] : []),
  ];
}

/**
 * @param {{sizes: ({size: number, decimals: number} | null)[]}[]} pieces
 * @param {number} at
 */
function spread(pieces, at) {
  const found = pieces.flatMap(({ sizes }) => sizes[at] ?? []);
  if (!found.length) return { low: null, high: null, spread: null, decimals: null };
  const low = Math.min(...found.map(({ size }) => size));
  const high = Math.max(...found.map(({ size }) => size));
  const decimals = Math.max(...found.map((each) => each.decimals));
  return { low, high, spread: high - low, decimals };
}
