/** What is put together so that the totals are even: which kinds, which pieces, at which place. */
import { value } from '../../log/workshop.js';
import { balance } from '../../trade/assemblies.js';
import { best } from '../../trade/sets.js';
import { convert } from '../../trade/units.js';
import { compared } from '../../views/own_place.js';
import { pool as poolOf } from '../../views/pool.js';
import { kindsIn } from './kinds.js';
import { seated } from './places.js';

/**
 * A choice nothing has been said in: kinds in the order chosen, where the pieces come from by kind
 * (a set, or none for what is free), the weight that counts by kind, lines of pieces that stay together.
 * @type {Record<string, any>}
 */
export const FRESH = Object.freeze({
  kinds: [],
  from: {},
  measure: {},
  count: 0,
  together: [],
  build: null,
  why: '',
});

/** @param {any} workshop the kinds a weight is measured on */
export const weighedKinds = (workshop) => kindsIn(workshop, 'g');

/** The standing sets of a kind. @param {any} workshop @param {string} kind @returns {{id: string, name: string}[]} */
const setsOf = (workshop, kind) =>
  workshop
    .all('set')
    .filter((/** @type {any} */ set) => value(set, 'kind') === kind)
    .map((/** @type {any} */ set) => ({ id: set.id, name: value(set, 'name') ?? '' }));

/**
 * A column: the pieces of one kind that may be taken, with their weights in grams.
 * @param {any} workshop
 * @param {any} kind
 * @param {any} draft
 */
function column(workshop, kind, draft) {
  const sets = setsOf(workshop, kind.id);
  const set = draft.from[kind.id] ?? sets[0]?.id ?? '';
  const from = sets.some(({ id }) => id === set) ? set : '';
  const pool = poolOf(workshop, kind.id, from || null);
  const wanted = draft.measure[kind.id] ?? kind.measures[0].id;
  const at = pool.measures.findIndex(({ id }) => id === wanted);
  const measure = pool.measures[at] ?? null;
  const held = from ? (value(workshop.subject(from), 'pieces') ?? []) : [];
  const members = from
    ? new Set(held.map((/** @type {any} */ { part }) => /** @type {string} */ (part)))
    : null;
  const offered = pool.pieces.filter(({ id }) => !members || members.has(id));
  const pieces = offered.flatMap((piece) => {
    const size = piece.sizes[at];
    return size ? { ...piece, size, grams: convert(size.size, measure?.unit ?? 'g', 'g') } : [];
  });
  const off = members ? members.size - pieces.length : offered.length - pieces.length;
  return { ...kind, sets, from, held, measure, pieces, off };
}

/**
 * What is asked: the columns with as many pieces as there are places, and what stays together.
 * Kinds that go back to their own place come first, so that their pieces name the places.
 * @param {any} workshop
 * @param {any[]} kinds
 * @param {any} draft
 */
export function askedOf(workshop, kinds, draft) {
  const wanted = draft.kinds.flatMap(
    (/** @type {string} */ id) => kinds.find((kind) => kind.id === id) ?? [],
  );
  const all = wanted.map((/** @type {any} */ kind) => column(workshop, kind, draft));
  const columns = [...all].sort((one, other) => Number(other.ownPlace) - Number(one.ownPlace));
  const most = Math.min(...columns.map(({ pieces }) => pieces.length), 32);
  const enough = columns.length > 1 && most > 0;
  const count = enough ? Math.min(draft.count || most, most) : 0;
  const kept = draft.together.flat();
  const taken = columns.map((one) => ({
    ...one,
    taken: /** @type {any[]} */ (enough ? taking(one, count, kept) : []),
  }));
  const here = new Set(taken.flatMap((one) => one.taken.map((/** @type {any} */ { id }) => id)));
  const together = draft.together.filter((/** @type {string[]} */ line) =>
    line.every((id) => here.has(id)),
  );
  const key = JSON.stringify([
    taken.map((one) => one.taken.map((/** @type {any} */ { id, grams }) => [id, grams])),
    together,
  ]);
  return { columns: taken, count, most: enough ? most : 0, enough, together, key };
}

/** What a set keeps of its own when only some of it is used here. @param {any} one @returns {{part: string, place: string | null}[]} */
export const remaining = ({ held, taken }) =>
  held.filter(
    (/** @type {any} */ { part }) => !taken.some((/** @type {any} */ { id }) => id === part),
  );

/** The pieces of a column closest in weight, those that stay together among them. @param {any} one @param {number} count @param {string[]} kept @returns {any[]} */
function taking({ pieces }, count, kept) {
  if (pieces.length === count) return pieces;
  const pinned = pieces.filter((/** @type {any} */ { id }) => kept.includes(id));
  const listed = pieces.map((/** @type {any} */ { id, grams }) => ({ name: id, sizes: [grams] }));
  const { chosen } = best(listed, [{ name: 'weight' }], count, {
    pinned: pinned.slice(0, count).map((/** @type {any} */ { id }) => id),
  });
  return pieces.filter((/** @type {any} */ { id }) => chosen.includes(id));
}

/**
 * The most even totals, place by place, and what the heavier ones have to lose.
 * @param {ReturnType<typeof askedOf>} asked
 */
export function evened({ columns, together, key }) {
  const lines = together.map((/** @type {string[]} */ line) =>
    columns.map(({ taken }) => {
      const at = taken.findIndex((/** @type {any} */ { id }) => line.includes(id));
      return at < 0 ? null : at + 1;
    }),
  );
  const found = balance(
    columns.map(({ taken }) => taken.map((/** @type {any} */ { grams }) => grams)),
    lines,
  );
  const unit = columns[0]?.measure?.unit ?? 'g';
  const decimals = Math.max(
    ...columns.flatMap(({ taken }) => taken.map((/** @type {any} */ { size }) => size.decimals)),
  );
  const totals = found.totals_g.map((total) => convert(total, 'g', unit));
  const low = Math.min(...totals);
  const seats = seated(columns[0]?.taken ?? [], {});
  const rows = seats.map(({ piece, place }) => {
    const row = (columns[0]?.taken ?? []).indexOf(piece);
    const pieces = (found.assemblies[row] ?? []).map((at, i) => columns[i]?.taken[at - 1]);
    const total = Number(totals[row]);
    return { place, pieces, total, off: total - low };
  });
  return { key, rows, unit, decimals, low, high: Math.max(...totals), proved: found.proved };
}

/** Pieces that would go elsewhere than to their own place. @param {any[]} rows @returns {{piece: any, place: string, own: string}[]} */
export const elsewhere = (rows) =>
  rows.flatMap(({ place, pieces }) =>
    pieces.flatMap((/** @type {any} */ piece) =>
      compared(piece.own_place ?? null, place) === 'elsewhere'
        ? { piece, place, own: piece.own_place }
        : [],
    ),
  );

/** Lines with these pieces put into one; what had one of them joins. @param {string[][]} lines @param {string[]} ids */
export function joinedLines(lines, ids) {
  const touched = lines.filter((line) => line.some((id) => ids.includes(id)));
  return [
    ...lines.filter((line) => !touched.includes(line)),
    [...new Set([...touched.flat(), ...ids])],
  ];
}
