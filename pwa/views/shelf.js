/** The spares of all builds and donors by kind, and the scrap with its reasons. */
import { value } from '../log/workshop.js';
import { isAway } from './away.js';
import * as plain from './plain.js';
import { usedInSets } from './pool.js';
import { measuresOf, sizeOf } from './sizes.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {{set: {id: string, name: string | null}, rank: number}} Rank */

/**
 * What lies on the shelf.
 * @param {Workshop} workshop
 */
export function shelf(workshop) {
  const ranks = ranksOf(workshop);
  const used = usedInSets(workshop);
  const parts = workshop.all('part').filter((part) => !things.emptied(part));
  const rows = parts
    .filter((part) => isSpare(part, ranks.has(part.id)))
    .map((part) => {
      const left = things.left(part, used.get(part.id));
      return row(workshop, part, ranks.get(part.id) ?? null, left);
    })
    .filter(({ id, quantity }) => quantity !== 0 || !used.has(id));
  return {
    groups: groupsOf(rows),
    free: rows.filter(({ build }) => build === null).length,
    scrap: plain.sorted(
      parts.filter((part) => things.mark(part) === 'scrap').map((part) => scrapped(workshop, part)),
      ({ name, id }) => [plain.natural(name), id],
    ),
  };
}

/** The rank of each spare of a standing set. @param {Workshop} workshop */
function ranksOf(workshop) {
  /** @type {Map<string, Rank>} */
  const ranks = new Map();
  for (const set of workshop.all('set')) {
    const name = plain.text(value(set, 'name'));
    for (const [at, id] of plain.texts(value(set, 'spares')).entries()) {
      ranks.set(id, { set: { id: set.id, name }, rank: at + 1 });
    }
  }
  return ranks;
}

/**
 * Judged spare, or left over from a set; neither fitted nor away.
 * @param {Subject} part
 * @param {boolean} ranked
 */
function isSpare(part, ranked) {
  const mark = things.mark(part);
  if (mark !== 'spare' && !(ranked && mark === 'use')) return false;
  return !things.isFitted(part) && !isAway(part);
}

/**
 * @param {Workshop} workshop
 * @param {Subject} part
 * @param {Rank | null} ranked
 * @param {number | null} left
 */
function row(workshop, part, ranked, left) {
  const kind = plain.text(value(part, 'kind'));
  const found = kind ? workshop.subject(kind) : null;
  const seen = part.facts.filter(({ heading, struck }) => heading === 'inspection' && !struck);
  return {
    id: part.id,
    name: plain.text(value(part, 'name')),
    kind: kind ? { id: kind, name: plain.text(value(found, 'name')) } : null,
    plural: plain.text(value(found, 'plural')),
    quantity: left,
    verdict: things.mark(part),
    reason: things.verdict(part).standing.at(-1)?.reason ?? null,
    set: ranked?.set ?? null,
    rank: ranked?.rank ?? null,
    sizes: measuresOf(found).flatMap((measure) => {
      const size = sizeOf(part, measure);
      return size
        ? [{ name: measure.name, unit: measure.unit, size: size.size, decimals: size.decimals }]
        : [];
    }),
    lies: things.lies(workshop, part).lies.map(({ name, where, chain }) => ({
      name,
      where,
      chain: chain.map((each) => each.name),
    })),
    donor: things.nameOf(workshop, value(part, 'donor')),
    from: plain.text(value(part, 'from')),
    build: plain.text(value(part, 'build')),
    build_name: things.nameOf(workshop, value(part, 'build')),
    for: plain.text(value(part, 'for')),
    inspected: seen.at(-1)?.made ?? null,
  };
}

/** By kind, ranked ones first. @param {ReturnType<typeof row>[]} rows */
function groupsOf(rows) {
  /** @type {Map<string, ReturnType<typeof row>[]>} */
  const groups = new Map();
  for (const each of rows) {
    const key = each.kind?.id ?? '';
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  const lines = [...groups.values()].map((group) => ({
    kind: group[0]?.kind ?? null,
    name: group[0]?.plural ?? group[0]?.kind?.name ?? null,
    count: group.reduce((sum, each) => sum + (each.quantity ?? 0), 0),
    rows: plain.sorted(group, (each) => [each.rank ?? 10_000, plain.natural(each.name), each.id]),
  }));
  return plain.sorted(lines, (line) => [
    line.kind ? 0 : 1,
    plain.natural(line.name),
    line.kind?.id ?? '',
  ]);
}

/** @param {Workshop} workshop @param {Subject} part */
function scrapped(workshop, part) {
  const said = things.verdict(part).standing.at(-1);
  return {
    id: part.id,
    name: plain.text(value(part, 'name')),
    kind: things.nameOf(workshop, value(part, 'kind')),
    quantity: things.quantity(part),
    reason: said?.reason ?? null,
    made: said?.made ?? null,
  };
}
