/** The plan of a gauge study: what is measured, by whom, how often, and in which order. */
import { value } from '../log/workshop.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {{piece: number, person: string, repeat: number}} At */
/** @typedef {ReturnType<typeof described>} Described */

const MOST = 25;

/** What the study says of itself. @param {Workshop} workshop @param {Subject | null} subject @param {string} id */
export function described(workshop, subject, id) {
  const instrument = plain.text(value(subject, 'instrument'));
  const [least = null, most = null] = ['least', 'most'].map((name) => limit(value(subject, name)));
  const named = plain.listed(value(subject, 'people')).map(plain.text);
  return {
    id,
    ...things.described(subject),
    name: plain.text(value(subject, 'name')),
    instrument: instrument && { id: instrument, name: things.nameOf(workshop, instrument) },
    quantity: plain.text(value(subject, 'quantity')),
    unit: plain.text(value(subject, 'unit')),
    least,
    most,
    crossed: least !== null && most !== null && Number(least) >= Number(most),
    pieces: count(value(subject, 'pieces')),
    people: plain.once(named.filter((each) => each !== null)),
    repeats: count(value(subject, 'repeats')),
    invented: value(subject, 'invented') === true,
  };
}

/** A limit as it was typed, where it reads as a number. @param {unknown} kept */
const limit = (kept) => plain.quantity({ value: kept, unit: 'mm' })?.value ?? null;

/** @param {unknown} kept */
const count = (kept) => Math.max(0, plain.whole(kept) ?? 0);

/** A cell by its text. @param {At} at */
export const key = ({ piece, person, repeat }) => `${piece}\n${repeat}\n${person}`;

/**
 * Every cell in the order it is measured; each round begins one piece further on. So nobody
 * measures a piece twice in a row, and no round is a copy of the one before.
 * @param {Described} told
 * @returns {At[]}
 */
export function orderOf({ unit, pieces, people, repeats }) {
  if (!unit || Math.max(pieces, people.length, repeats) > MOST) return [];
  return upTo(repeats).flatMap((repeat) =>
    people.flatMap((person) =>
      upTo(pieces).map((at) => ({ piece: ((at + repeat - 2) % pieces) + 1, person, repeat })),
    ),
  );
}

/** One, two, three. @param {number} n */
export const upTo = (n) => Array.from({ length: n }, (_, at) => at + 1);
