/** What find looks through for one thing: its name, what is said of it, where it lies. */
import { standing, value } from '../log/workshop.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {plain.Workshop} Workshop */
/**
 * @typedef {{id: string, heading: string, name: string | null, words: string,
 *   codes?: string[], at?: string | null, verdict?: string | null, scrap?: boolean}} Row
 */

export const HEADINGS = Object.freeze([
  'part',
  'holder',
  'joint',
  'step',
  'wrench',
  'instrument',
  'donor',
  'build',
]);
const OWN = ['from', 'for', 'thread', 'note', 'engine', 'plural', 'noun', 'sort', 'lies'];

/**
 * What find looks through for one thing, or null for what is not looked for by name.
 * @param {Workshop} workshop
 * @param {string} id
 * @returns {Row | null}
 */
export function row(workshop, id) {
  const subject = workshop.subject(id);
  if (!subject?.heading || !HEADINGS.includes(subject.heading) || subject.hidden) return null;
  const { lies } = things.lies(workshop, subject);
  const said = [
    ...['kind', 'donor'].map((name) => things.nameOf(workshop, value(subject, name))),
    ...OWN.map((name) => plain.text(value(subject, name))),
    ...lies.flatMap(({ name, where, gone }) => [name, where, gone]),
    ...lies.flatMap(({ chain }) => chain.map(({ name }) => name)),
    ...standing(subject, 'fitted').map(({ body }) => plain.text(body.place)),
    things.nameOf(workshop, value(subject, 'build')),
    ...standing(subject, 'fitted').map(({ body }) => things.nameOf(workshop, body.build)),
    ...subject.facts
      .filter(({ heading, struck }) => heading === 'note' && !struck)
      .map(({ body }) => plain.text(body.text)),
  ];
  const { word } = things.verdict(subject);
  return {
    id,
    heading: subject.heading,
    name: plain.text(value(subject, 'name')) || things.nameOf(workshop, value(subject, 'kind')),
    words: plain.once(said.filter((each) => each)).join(' '),
    codes: things.labels(workshop, id).codes,
    at: placeOf(workshop, subject, lies),
    verdict: word,
    scrap: word === 'scrap',
  };
}

/**
 * The build it is fitted to, else what it lies in, all of them where several are kept; else what
 * its description says of that.
 * @param {Workshop} workshop
 * @param {import('../log/values.js').Subject} subject
 * @param {{name: string | null}[]} lies
 */
function placeOf(workshop, subject, lies) {
  const builds = standing(subject, 'fitted').map(({ body }) => things.nameOf(workshop, body.build));
  const fitted = builds.filter((name) => name);
  const names = fitted.length ? fitted : lies.map(({ name }) => name).filter((name) => name);
  return plain.once(names).join(', ') || plain.text(value(subject, 'lies'));
}
