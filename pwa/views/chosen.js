/** A set: its pieces and their places, ranked spares, what they span, what changed since. */
import { standing, value } from '../log/workshop.js';
import { isAway } from './away.js';
import * as plain from './plain.js';
import { inSets, usedInSets } from './pool.js';
import { measuresOf, sizeOf } from './sizes.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('./sizes.js').Measure} Measure */
/** @typedef {plain.Workshop} Workshop */

/**
 * A set as it stands now. changed: pieces that are no longer as they were; claimed: pieces another
 * standing set holds too, so that a person must say which of them keeps it.
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
  const also = alsoIn(workshop, id);
  const pieces = plain.mappings(value(set, 'pieces')).map((each) => {
    const part = plain.asId(each.part);
    return { ...told(part), place: plain.text(each.place), also: also(part) };
  });
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
    claimed: pieces.filter((each) => each.also.length).map((each) => each.id),
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
    changes: changesOf(
      part,
      measures.map((measure, at) => readSince(part, measure, sizes[at] ?? null, since)),
      build,
    ),
  };
}

/**
 * Other standing sets that hold a piece, where all of them together want more than there are. Sets
 * may share what is counted, as long as there is enough of it.
 * @param {Workshop} workshop
 * @param {string} own
 * @returns {(part: string) => {id: string, name: string | null}[]}
 */
function alsoIn(workshop, own) {
  /** @type {Map<string, string[]>} */
  const others = workshop.subject(own)?.hidden ? new Map() : inSets(workshop, own);
  const used = usedInSets(workshop);
  return (part) => {
    const enough = (used.get(part) ?? 0) <= (things.quantity(workshop.subject(part)) || 1);
    const held = enough ? [] : (others.get(part) ?? []);
    return held.map((id) => ({ id, name: things.nameOf(workshop, id) }));
  };
}

/**
 * What became of a piece since it was chosen.
 * @param {Subject | null} part
 * @param {(string | null)[]} read what became of its readings
 * @param {string | null} build
 */
function changesOf(part, read, build) {
  if (part?.heading !== 'part' || part.hidden) return ['missing'];
  const mark = things.mark(part);
  const elsewhere = standing(part, 'fitted').some(({ body }) => {
    const fitted = plain.text(body.build);
    return fitted !== null && fitted !== build;
  });
  return [
    ...(mark === 'use' || mark === 'spare' ? [] : [mark]),
    ...['measured-again', 'reading-struck', 'no-reading'].filter((word) => read.includes(word)),
    ...(isAway(part) ? ['away'] : []),
    ...(elsewhere ? ['fitted-elsewhere'] : []),
  ];
}

/**
 * What became of the reading a piece was chosen by.
 * @param {Subject | null} part
 * @param {Measure} measure
 * @param {import('./sizes.js').Size | null} now
 * @param {string} since
 */
function readSince(part, measure, now, since) {
  if (now && now.order > since) return 'measured-again';
  const was = part?.strikes.length ? sizeOf(asItWas(part, since), measure) : now;
  if (!was || now?.order === was.order) return null;
  return now ? 'reading-struck' : 'no-reading';
}

/**
 * A part with the facts there were then, of which only what was struck by then is struck.
 * @param {Subject} part
 * @param {string} since
 * @returns {Subject}
 */
function asItWas(part, since) {
  const then = new Set(part.strikes.filter(({ order }) => order <= since).map(({ id }) => id));
  const facts = part.facts.filter(({ order }) => order <= since);
  return {
    ...part,
    facts: facts.map((fact) =>
      fact.struck && !then.has(fact.struck.id) ? { ...fact, struck: null } : fact,
    ),
  };
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
