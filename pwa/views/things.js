/** What parts and holders have alike: labels, where they lie, verdict, count, history. */
import { standing, value } from '../log/workshop.js';
import { emptied } from './how_many.js';
import { madeBy } from './joint_lines.js';
import * as plain from './plain.js';

export { emptied, left, quantity, single } from './how_many.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

export const VERDICTS = Object.freeze(['use', 'spare', 'machine', 'scrap']);
const DEEPEST = 20;

/**
 * The name of a thing by its id, or null.
 * @param {Workshop} workshop
 * @param {unknown} id
 */
export function nameOf(workshop, id) {
  return plain.text(value(workshop.subject(plain.asId(id)), 'name'));
}

/**
 * Whether it is here, and whether what made it was struck out.
 * @param {Subject | null} subject
 */
export function described(subject) {
  return { here: Boolean(subject?.heading), hidden: subject?.hidden ?? false };
}

/**
 * The codes that mark a thing, and those of them that mark another thing too.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function labels(workshop, id) {
  const marking = workshop.linked(id, 'marks');
  const asks = marking.map((label) => {
    const marked = standing(label, 'label').flatMap(({ body }) => plain.text(body.marks) ?? []);
    return { code: label.id, things: plain.once(marked) };
  });
  return {
    codes: marking.map((label) => label.id),
    codes_ask: asks.filter(({ things }) => things.length > 1),
  };
}

/**
 * Where it lies; several where two were kept and a person must say.
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 */
export function lies(workshop, subject) {
  const lines = standing(subject, 'place').map((fact) => {
    const holder = plain.text(fact.body.in);
    return {
      id: fact.id,
      holder,
      name: nameOf(workshop, holder),
      where: plain.text(fact.body.where),
      gone: plain.text(fact.body.gone),
      chain: chain(workshop, holder),
      ...madeBy(fact),
    };
  });
  const places = lines.map(({ holder, where, gone }) => JSON.stringify([holder, where, gone]));
  return { lies: lines, lies_ask: plain.once(places).length > 1 };
}

/**
 * The holders around a holder, nearest first, without itself.
 * @param {Workshop} workshop
 * @param {string | null} id
 */
export function chain(workshop, id) {
  /** @type {{id: string, name: string | null}[]} */
  const around = [];
  const seen = new Set([id]);
  let at = id ? workshop.subject(id) : null;
  while (at && around.length < DEEPEST) {
    const outer = standing(at, 'place').flatMap(({ body }) => plain.text(body.in) ?? [])[0];
    if (outer === undefined || seen.has(outer)) break;
    seen.add(outer);
    at = workshop.subject(outer);
    around.push({ id: outer, name: plain.text(value(at, 'name')) });
  }
  return around;
}

/**
 * The verdict that stands; word is null when there is none, or two that differ.
 * @param {Subject | null} subject
 */
export function verdict(subject) {
  const lines = standing(subject, 'verdict').map((fact) => ({
    id: fact.id,
    verdict: plain.text(fact.body.verdict),
    reason: plain.text(fact.body.reason),
    inspection: plain.text(fact.body.inspection),
    ...madeBy(fact),
  }));
  const words = plain.once(lines.map((line) => line.verdict));
  return {
    word: words.length === 1 ? (words[0] ?? null) : null,
    ask: words.length > 1,
    standing: lines,
  };
}

/**
 * use, spare, machine, scrap; look where nobody judged it yet, ask where two differ, empty where
 * all of a counted part are single pieces now.
 * @param {Subject | null} subject
 */
export function mark(subject) {
  if (emptied(subject)) return 'empty';
  const { ask, word } = verdict(subject);
  if (ask) return 'ask';
  return word !== null && VERDICTS.includes(word) ? word : 'look';
}

/**
 * Whether it is fitted to a build.
 * @param {Subject | null} part
 */
export const isFitted = (part) => says(part, 'fitted', 'build');

/**
 * Whether it has gone somewhere else for now.
 * @param {Subject | null} part
 */
export const isGone = (part) => says(part, 'place', 'gone');

/**
 * @param {Subject | null} part
 * @param {string} heading
 * @param {string} name
 */
const says = (part, heading, name) =>
  standing(part, heading).some(({ body }) => plain.text(body[name]));

/**
 * What was struck out of it, newest first.
 * @param {Subject | null} subject
 */
export function strikes(subject) {
  if (!subject) return [];
  const headings = new Map(subject.facts.map(({ id, heading }) => [id, heading]));
  const counting = subject.strikes.filter(({ counts }) => counts);
  return counting.reverse().map(({ id, target, reason, made, by, device }) => ({
    id,
    about: target,
    heading: headings.get(target) ?? subject.heading,
    reason,
    made,
    by: by ?? null,
    device,
  }));
}

/**
 * What its description said before, newest first: "was 'tray 4', changed on the tablet".
 * @param {Subject | null} subject
 */
export function lost(subject) {
  const lines = Object.entries(subject?.fields ?? {}).flatMap(([field, said]) =>
    said.lost
      .filter((claim) => !plain.alike(claim.value, said.value))
      .map(({ value: was, device, order, entry }) => ({ field, value: was, device, order, entry })),
  );
  return plain.sorted(lines, ({ order, field, entry }) => [order, field, entry]).reverse();
}
