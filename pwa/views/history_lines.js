/** What was found on a part, line by line: inspections, verdicts, readings, the machine shop. */
import { value } from '../log/workshop.js';
import { madeBy, photos } from './joint_lines.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {{part: Subject, fact: Fact, given: Fact | null}} Told given: the verdict of an inspection */

const HEADINGS = ['inspection', 'verdict', 'reading', 'sent', 'returned'];

/**
 * The lines of these parts, newest first and at most so many, and how many there are.
 * @param {Workshop} workshop
 * @param {Subject[]} parts
 * @param {number | null} [most]
 */
export function linesOf(workshop, parts, most = null) {
  const all = parts.flatMap(told).sort(newestFirst);
  const shown = most === null ? all : all.slice(0, Math.max(0, most));
  return { lines: shown.map((each) => line(workshop, each)), of: all.length };
}

/** @param {{fact: Fact}} one @param {{fact: Fact}} other */
const newestFirst = ({ fact: one }, { fact: other }) =>
  plain.inOrder([other.order, other.device, other.id], [one.order, one.device, one.id]);

/** Each fact, an inspection with the verdict that was given with it. @param {Subject} part @returns {Told[]} */
function told(part) {
  const facts = part.facts.filter(({ heading }) => HEADINGS.includes(heading));
  const looks = new Map(
    facts.filter(({ heading }) => heading === 'inspection').map((fact) => [fact.id, fact]),
  );
  /** @type {Map<string, Fact>} */
  const given = new Map();
  for (const fact of facts.filter(({ heading }) => heading === 'verdict')) {
    const look = looks.get(plain.asId(fact.body.inspection));
    if (look && !given.has(look.id) && same(fact, look)) given.set(look.id, fact);
  }
  const joined = new Set([...given.values()].map(({ id }) => id));
  return facts
    .filter(({ id }) => !joined.has(id))
    .map((fact) => ({ part, fact, given: given.get(fact.id) ?? null }));
}

/** Whether both say the same, and both stand or are both struck out. @param {Fact} verdict @param {Fact} look */
const same = (verdict, look) =>
  plain.text(verdict.body.verdict) === plain.text(look.body.verdict) &&
  !verdict.struck === !look.struck;

/** @param {Workshop} workshop @param {Told} told */
function line(workshop, { part, fact, given }) {
  const { body } = fact;
  const kind = workshop.subject(plain.asId(value(part, 'kind')));
  const verdict = given ?? fact;
  return {
    id: fact.id,
    heading: fact.heading,
    part: part.id,
    name: plain.text(value(part, 'name')),
    verdict: plain.text(body.verdict),
    reason: plain.text(body.reason),
    stands: verdict.heading === 'verdict' ? Boolean(verdict.stands) : null,
    note: plain.text(body.note),
    to: plain.text(body.to),
    for: plain.text(body.for),
    bad: bad(kind, body),
    readings: fact.heading === 'reading' ? single(body) : readings(kind, body),
    photos: photos(body),
    ...madeBy(fact),
  };
}

/** What was not good, in the words of the kind. @param {Subject | null} kind @param {plain.Facts} body */
function bad(kind, body) {
  const asked = new Map(
    plain
      .mappings(value(kind, 'criteria'))
      .map(({ id, asks }) => [plain.text(id), plain.text(asks)]),
  );
  return plain
    .mappings(body.looks)
    .filter(({ good }) => good !== true)
    .flatMap(({ criterion }) => plain.text(criterion) ?? [])
    .map((id) => asked.get(id) || id);
}

/** @param {Subject | null} kind @param {plain.Facts} body */
function readings(kind, body) {
  const names = new Map(
    plain
      .mappings(value(kind, 'measures'))
      .map(({ id, name }) => [plain.text(id), plain.text(name)]),
  );
  return plain.mappings(body.readings).flatMap((each) => {
    const kept = plain.measured(each.value);
    return kept
      ? [
          {
            name: names.get(plain.text(each.measure)) ?? null,
            position: plain.text(each.position),
            direction: plain.text(each.direction),
            ...kept,
          },
        ]
      : [];
  });
}

/** A reading kept by itself. @param {plain.Facts} body */
function single(body) {
  const kept = plain.measured(body.value);
  return kept ? [{ name: plain.text(body.of), position: null, direction: null, ...kept }] : [];
}
