/** A counted part and its single pieces: how many of each, what may be counted together again. */
import { standing, value } from '../log/workshop.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/** More pieces than anybody judges one by one are not made at once. */
const MOST = 400;

/**
 * How many are left and how many are single; the pieces to make when all are to be judged singly,
 * those that may go back, and those another device judged while they went back.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function counted(workshop, id) {
  const subject = workshop.subject(id);
  const out = things.single(subject);
  const left = things.quantity(subject) ?? 0;
  const pieces = out.map((piece) => lineOf(workshop, subject, piece));
  return {
    id,
    left,
    single: out.length,
    make: toMake(subject, left, out),
    pieces,
    back: pieces.filter(({ touched }) => !touched).map((piece) => piece.id),
    judged_back: judgedBack(workshop, subject, out),
    lost: lostOf(workshop, subject, out),
  };
}

/**
 * The pieces that become single next: the lowest numbers that are counted. A piece has the same id
 * on every device, so two that make it make one; one that went back is struck out for good, and
 * its number gets another id.
 * @param {Subject | null} subject
 * @param {number} left
 * @param {string[]} out
 */
function toMake(subject, left, out) {
  const made = [];
  const ever = everTaken(subject);
  const numbers = out.map((id) => numberOf(subject, id));
  const whole = !plain.text(value(subject, 'bag')) && left + out.length >= 2 && left <= MOST;
  for (let number = 1; whole && made.length < left; number += 1) {
    if (numbers.includes(number)) continue;
    made.push({ id: freshId(subject, number, ever), number, name: nameOf(subject, number) });
  }
  return made;
}

/** Every piece that was taken by name, once. @param {Subject | null} subject */
function everTaken(subject) {
  const taken = subject?.facts.filter(({ heading, struck }) => heading === 'take' && !struck) ?? [];
  return plain.once(taken.flatMap(({ body }) => plain.texts(body.pieces)));
}

/** @param {Subject | null} subject @param {number} number @param {string[]} ever */
function freshId(subject, number, ever) {
  const first = `${subject?.id}-${number}`;
  let id = first;
  for (let round = 2; ever.includes(id); round += 1) id = `${first}.${round}`;
  return id;
}

/** The number of a piece by its id. @param {Subject | null} subject @param {string} id */
function numberOf(subject, id) {
  const [own, rest = ''] = [
    id.slice(0, subject?.id.length),
    id.slice((subject?.id.length ?? 0) + 1),
  ];
  const digits = /^([1-9][0-9]{0,5})(\.[0-9]+)?$/.exec(rest)?.[1];
  return own === subject?.id && digits ? Number(digits) : null;
}

/** @param {Subject | null} subject @param {number} number */
const nameOf = (subject, number) =>
  [plain.text(value(subject, 'name')), number].filter(Boolean).join(' ');

/**
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 * @param {string} id
 */
function lineOf(workshop, subject, id) {
  const piece = workshop.subject(id);
  return {
    id,
    name: plain.text(value(piece, 'name')),
    number: plain.whole(value(piece, 'number')),
    mark: things.mark(piece),
    touched: touched(workshop, subject, piece),
    descriptions: descriptions(piece),
  };
}

/** Entries that describe it and would be struck out. @param {Subject | null} piece */
function descriptions(piece) {
  const said = Object.values(piece?.fields ?? {});
  return plain
    .once(said.flatMap(({ entry, lost }) => [entry, ...lost.map((claim) => claim.entry)]))
    .sort();
}

/**
 * Why a piece stays single: judged, fitted or told of, with a label of its own, or not where the
 * counted part lies. One that is not here is left alone.
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 * @param {Subject | null} piece
 */
function touched(workshop, subject, piece) {
  if (!piece) return 'not-here';
  if (told(piece)) return 'facts';
  if (workshop.linked(piece.id, 'marks').length) return 'label';
  return places(piece) === places(subject) ? null : 'moved';
}

/** Where it lies; said twice by two devices is said once. @param {Subject | null} subject */
const places = (subject) =>
  plain
    .once(
      standing(subject, 'place').map(({ body }) =>
        JSON.stringify([plain.text(body.in), plain.text(body.gone)]),
      ),
    )
    .sort()
    .join();

/**
 * Pieces counted together again on one device and judged or told of on another: nothing is lost,
 * and somebody has to say that they are single.
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 * @param {string[]} out
 */
function judgedBack(workshop, subject, out) {
  const single = out.map((id) => numberOf(subject, id));
  return everTaken(subject)
    .filter((id) => !out.includes(id) && told(workshop.subject(id)))
    .map((id) => ({ id, number: numberOf(subject, id) }))
    .filter(({ number }) => !single.includes(number));
}

/**
 * Single pieces that are told of but shown nowhere, and what each becomes when made again. One
 * device made them and counted them together, another made the same ones later: what strikes out
 * the first description hides the piece, though the other description stands.
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 * @param {string[]} out
 */
function lostOf(workshop, subject, out) {
  const ever = everTaken(subject);
  return out.flatMap((was) => {
    const [piece, number] = [workshop.subject(was), numberOf(subject, was)];
    if (!subject || !piece?.hidden || number === null) return [];
    if (value(piece, 'bag') !== subject.id || !told(piece)) return [];
    return [{ id: freshId(subject, number, ever), number, name: nameOf(subject, number), was }];
  });
}

/** Whether anything but its place is kept about it, a note in its description included. @param {Subject | null} piece */
const told = (piece) =>
  Boolean(
    piece?.facts.some(({ heading, struck }) => heading !== 'place' && !struck) ||
      plain.text(value(piece, 'note')),
  );
