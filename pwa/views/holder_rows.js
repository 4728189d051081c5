/** The rows of a holder: how many of a kind, and what is known of them. */
import { standing, value } from '../log/workshop.js';
import { placeOf } from './own_place.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/**
 * @typedef {{id: string, name: string | null, quantity: number, mark: string,
 *   own_place: string | null, gone: string | null, lies_ask: boolean}} Piece
 * @typedef {{id: string | null, heading: string, kind: string | null, name: string | null,
 *   quantity: number, verdicts: Record<string, number>, gone: number, mark: string,
 *   parts: Piece[]}} Row
 */

const MARKS = [...things.VERDICTS, 'look', 'ask'];

/** @returns {Record<string, number>} */
function nothing() {
  return Object.fromEntries(MARKS.map((mark) => [mark, 0]));
}

/**
 * One row for the parts of one kind.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {Subject[]} group
 * @returns {Row}
 */
export function partRow(workshop, id, group) {
  const parts = group.map((each) => piece(workshop, id, each));
  const verdicts = nothing();
  const full = parts.filter(({ mark }) => mark !== 'empty');
  for (const { mark, quantity } of full) verdicts[mark] = (verdicts[mark] ?? 0) + quantity;
  const kind = plain.text(value(group[0] ?? null, 'kind'));
  const several = parts.length > 1;
  const first = /** @type {Piece} */ (parts[0]);
  const ofKind = kind ? workshop.subject(kind) : null;
  const plural = plain.text(value(ofKind, 'plural')) ?? things.nameOf(workshop, kind);
  return {
    id: several ? null : first.id,
    heading: 'part',
    kind,
    name: (several ? plural : null) ?? first.name ?? plural,
    quantity: parts.reduce((sum, { quantity }) => sum + quantity, 0),
    verdicts,
    gone: parts.filter(({ gone }) => gone).length,
    mark: markOf(full.length ? full : parts),
    parts,
  };
}

/** The one mark of all, or mixed. @param {Piece[]} parts */
function markOf(parts) {
  const marks = plain.once(parts.map(({ mark }) => mark));
  return (marks.length === 1 ? marks[0] : null) ?? 'mixed';
}

/**
 * @param {Workshop} workshop
 * @param {string} id
 * @param {Subject} part
 * @returns {Piece}
 */
function piece(workshop, id, part) {
  const places = standing(part, 'place');
  const gone = places.filter(({ body }) => body.in === id).map(({ body }) => plain.text(body.gone));
  return {
    id: part.id,
    name: plain.text(value(part, 'name')),
    quantity: things.quantity(part) ?? 0,
    mark: things.mark(part),
    own_place: placeOf(workshop, part.id),
    gone: gone.find((each) => each) ?? null,
    lies_ask: plain.once(places.map(({ body }) => plain.text(body.in))).length > 1,
  };
}

/**
 * A holder in a holder.
 * @param {Subject} inner
 * @returns {Row}
 */
export function holderRow(inner) {
  return {
    id: inner.id,
    heading: 'holder',
    kind: null,
    name: plain.text(value(inner, 'name')),
    quantity: 1,
    verdicts: nothing(),
    gone: 0,
    mark: 'holder',
    parts: [],
  };
}

/**
 * All rows together.
 * @param {Row[]} rows
 */
export function countsOf(rows) {
  const parts = rows.filter(({ heading }) => heading === 'part');
  /** @param {(row: Row) => number} each */
  const sum = (each) => parts.reduce((total, row) => total + each(row), 0);
  const marks = MARKS.map((mark) => [mark, sum(({ verdicts }) => verdicts[mark] ?? 0)]);
  return {
    parts: sum(({ quantity }) => quantity),
    holders: rows.length - parts.length,
    gone: sum(({ gone }) => gone),
    .../** @type {{use: number, spare: number, machine: number, scrap: number, look: number,
      ask: number}} */ (Object.fromEntries(marks)),
  };
}
