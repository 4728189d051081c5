/** Workshops that hold only what one question needs. */

import { links } from '../log/workshop.js';
import { makeHeld } from './held.js';
import { lastMoved, readWith, sliceOf } from './mended.js';
import { reading } from './reader.js';
import { countKinds, kindless, sets } from './set_slices.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./reader.js').Reader} Reader
 * @typedef {import('../log/values.js').Subject} Subject
 */

const LATELY = 20;

/** @param {Subject|null} subject @param {string[]} roles */
const ends = (subject, ...roles) =>
  subject
    ? links(subject)
        .filter(({ role }) => roles.includes(role))
        .map(({ to }) => to)
    : [];

/** What something stands in, and that in turn. @param {Reader} reader @param {Subject[]} things */
async function chain(reader, things) {
  const seen = new Set();
  let above = things;
  while (above.length) {
    const next = above.flatMap((one) => ends(one, 'lies-in')).filter((id) => !seen.has(id));
    for (const id of next) seen.add(id);
    above = await reader.all(next);
  }
}

const ABOUT_PART = ['of-kind', 'from-donor', 'for-build', 'fitted-in'];

/** Kinds, donors, builds, labels and places of parts. @param {Reader} reader @param {Subject[]} parts */
async function dress(reader, parts) {
  await Promise.all([
    reader.all(parts.flatMap((part) => ends(part, ...ABOUT_PART))),
    ...parts.map((part) => reader.linked(part.id, 'marks')),
    chain(reader, parts),
  ]);
}

/** @param {Reader} reader @param {Subject[]} joints */
async function joined(reader, joints) {
  const ids = joints.flatMap((joint) => ends(joint, 'clamps', 'holds-with', 'for-build', 'uses'));
  const [parts] = await Promise.all([reader.all(ids), reader.heading('wrench')]);
  await reader.all(parts.flatMap((part) => ends(part, 'of-kind')));
  return parts;
}

/** Single pieces taken from a counted part. @param {Reader} reader @param {Subject|null} found */
async function pieces(reader, found) {
  const single = await reader.all(ends(found, 'piece'));
  if (single.length) await dress(reader, single);
}

/** A donor and the parts that came from it. @param {Reader} reader @param {string} id */
async function donor(reader, id) {
  const [, parts] = await Promise.all([reader.get(id), reader.linked(id, 'from-donor')]);
  await reader.all(parts.flatMap((one) => ends(one, 'of-kind')));
}

/** A kind, all parts of it, the donors they came from, and what they were read with. @param {Reader} reader @param {string} id */
async function kind(reader, id) {
  const [, parts] = await Promise.all([reader.get(id), reader.linked(id, 'of-kind')]);
  await reader.all(parts.flatMap((one) => [...ends(one, 'from-donor'), ...readWith(one)]));
}

/** @param {Reader} reader @param {string} id */
async function part(reader, id) {
  const [found, joints] = await Promise.all([
    reader.get(id),
    reader.linked(id, 'clamps', 'holds-with'),
  ]);
  await Promise.all([
    dress(reader, found ? [found] : []),
    joined(reader, joints),
    pieces(reader, found),
    reader.all(readWith(found)),
  ]);
}

/** @param {Reader} reader @param {string} id */
async function holder(reader, id) {
  const [found, inside, left] = await Promise.all([
    reader.get(id),
    reader.linked(id, 'lies-in'),
    reader.linked(id, 'lay-in'),
  ]);
  left.sort((one, other) => (lastMoved(one) < lastMoved(other) ? 1 : -1));
  const shown = [...(found ? [found] : []), ...inside, ...left.slice(0, LATELY)];
  const inner = shown.filter((one) => one.heading === 'holder' && one.id !== id);
  await Promise.all([
    dress(reader, shown),
    ...inner.map((one) => reader.linked(one.id, 'lies-in')),
  ]);
}

/** @param {Reader} reader @param {string} id */
async function joint(reader, id) {
  const found = await reader.get(id);
  const parts = await joined(reader, found ? [found] : []);
  await dress(
    reader,
    parts.filter(({ heading }) => heading === 'part'),
  );
}

/** @type {Readonly<Record<string, (reader: Reader, id: string) => Promise<void>>>} */
const BY_HEADING = Object.freeze({ part, holder, joint, donor, kind });

/** @param {Reader} reader @param {string} code */
async function code(reader, code) {
  const label = await reader.get(code);
  const things = await reader.all(ends(label, 'marks'));
  await Promise.all(things.map((one) => BY_HEADING[one.heading ?? '']?.(reader, one.id)));
}

/** @param {Reader} reader @param {string[]} words @returns {Promise<Subject[]>} */
const wanting = async (reader, ...words) =>
  (await Promise.all(words.map((word) => reader.wanting(word)))).flat();

/** @param {Reader} reader */
async function tonight(reader) {
  const [joints, parts] = await Promise.all([
    reader.heading('joint'),
    wanting(reader, 'look', 'put', 'out', 'back'),
  ]);
  await Promise.all([joined(reader, joints), dress(reader, parts)]);
}

/** @param {Reader} reader */
const away = async (reader) => dress(reader, await wanting(reader, 'out', 'back', 'machine'));

/** @param {Core} core @param {(reader: Reader) => Promise<unknown>} need */
function slice(core, need) {
  return reading(core, async (reader) => {
    await need(reader);
    return sliceOf(await reader.found());
  });
}

/** @param {Core} core */
export function slices(core) {
  const held = makeHeld(core);
  /** @param {string} heading @param {string} id */
  const about = (heading, id) =>
    held.answer(
      `${heading} ${id}`,
      () => slice(core, async (reader) => BY_HEADING[heading]?.(reader, id)),
      () => true,
    );
  return {
    /** A part, its labels, places, kind, donor, build, and the joints it takes part in. @param {string} id */
    partSlice: (id) => about('part', id),
    /** A holder, its labels, what it stands in, what lies in it and what left it lately. @param {string} id */
    holderSlice: (id) => about('holder', id),
    /** A joint, the parts it clamps and is held with, and all wrenches. @param {string} id */
    jointSlice: (id) => about('joint', id),
    /** A donor, the parts that came from it, and their kinds. @param {string} id */
    donorSlice: (id) => about('donor', id),
    /** A kind, all parts of it, their donors, and what they were read with. @param {string} id */
    kindSlice: (id) => about('kind', id),
    /** A label and the whole slice of whatever it marks. @param {string} sign the eight-sign code */
    codeSlice: (sign) => held.ofLabel(sign, () => slice(core, (reader) => code(reader, sign))),
    /** A slice of a part, holder or joint that was read already and still holds, or null. @param {string} heading @param {string} id */
    known: (heading, id) => held.known(`${heading} ${id}`),
    /** All joints, parts nobody judged yet, parts lying nowhere, parts that are out or came back. */
    tonightSlice: () => slice(core, tonight),
    /** Parts that are out, came back, or are judged for the machine shop. */
    awaySlice: () => slice(core, away),
    /** Every set with the pieces it holds, kinds and builds. */
    setsSlice: () => slice(core, sets),
    /** The same as kindSlice, not remembered: for who reads one kind after another. @param {string} id */
    kindInPassing: (id) => slice(core, (reader) => kind(reader, id)),
    /** The parts of no kind that is here. */
    kindlessSlice: () => slice(core, kindless),
    /** How many pieces there are of each kind, by kind. */
    countsByKind: () => reading(core, countKinds),
    /** Everything of one heading. @param {string} word */
    allOf: (word) =>
      held.answer(
        `all ${word}`,
        () => slice(core, (reader) => reader.heading(word)),
        ({ heading }) => heading === word,
      ),
  };
}
