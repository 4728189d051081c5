/** A gauge study: its table of readings, what is measured next, what asks, what it came to. */
import { convert } from '../trade/units.js';
import { madeBy } from './joint_lines.js';
import * as plain from './plain.js';
import { described, key, orderOf, upTo } from './study_plan.js';
import * as outcome from './study_result.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {import('../trade/units.js').Measured} Measured */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./study_plan.js').At} At */
/** @typedef {{ask: boolean, reading: Measured | null, readings: ReturnType<typeof toldOf>[]}} Cell */
/** @typedef {import('./study_plan.js').Described} Described */

/**
 * A study as it stands: cells are measured round after round, person after person.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function study(workshop, id) {
  const subject = workshop.subject(id);
  const told = described(workshop, subject, id);
  const order = orderOf(told);
  const unit = told.unit ?? '';
  const { inside, beside } = sortedOut(subject, unit, order);
  const cells = new Map(order.map((at) => [key(at), cellOf(inside.get(key(at)) ?? [], unit)]));
  const open = order.filter((at) => !inside.has(key(at)));
  const asks = order.flatMap((at) => {
    const cell = cells.get(key(at));
    return cell?.ask ? { ...at, readings: cell.readings } : [];
  });
  const last = plain.sorted([...inside.values()].flat(), when).at(-1);
  return {
    ...told,
    rows: rows(told, cells),
    done: order.length - open.length,
    of: order.length,
    next: open[0] ?? null,
    nexts: told.people.map((person) => turnOf(person, open)),
    last: last ? toldOf(last) : null,
    asks,
    beside,
    struck: struckOf(subject),
    state: stateOf(order, open, asks),
    ...resultOf(told, order, cells),
  };
}

/** @param {Fact} fact */
const when = ({ order, id }) => [order, id];

/**
 * The readings that stand, by cell, and those that belong to no cell.
 * @param {Subject | null} subject
 * @param {string} unit
 * @param {At[]} order
 */
function sortedOut(subject, unit, order) {
  const known = new Set(order.map(key));
  /** @type {Map<string, Fact[]>} */
  const inside = new Map();
  const beside = [];
  for (const fact of trials(subject).filter(({ struck }) => !struck)) {
    const at = key(atOf(fact));
    const has = known.has(at);
    if (has && readable(fact, unit)) inside.set(at, [...(inside.get(at) ?? []), fact]);
    else beside.push({ ...toldOf(fact), why: has ? 'unit' : 'cell' });
  }
  return { inside, beside };
}

/** @param {Subject | null} subject */
const trials = (subject) => subject?.facts.filter(({ heading }) => heading === 'trial') ?? [];

/** @param {Fact} fact @returns {At} */
function atOf({ body }) {
  const [piece = 0, repeat = 0] = [body.piece, body.repeat].map((each) => plain.whole(each) ?? 0);
  return { piece, person: plain.text(body.person) ?? '', repeat };
}

/** @param {Fact} fact @param {string} unit */
function readable({ body }, unit) {
  const kept = plain.quantity(body.value);
  try {
    return kept !== null && Number.isFinite(convert(Number(kept.value), kept.unit, unit));
  } catch {
    return false;
  }
}

/** @param {Fact} fact */
function toldOf(fact) {
  return { id: fact.id, ...atOf(fact), value: plain.measured(fact.body.value), ...madeBy(fact) };
}

/** One reading; where several that differ stand, a person must say which one counts. @param {Fact[]} facts @param {string} unit @returns {Cell} */
function cellOf(facts, unit) {
  const read = facts.flatMap(({ body }) => plain.quantity(body.value) ?? []);
  const ask = new Set(read.map((each) => outcome.size(each, unit))).size > 1;
  return { ask, reading: ask ? null : (read[0] ?? null), readings: facts.map(toldOf) };
}

/** How much somebody has still to measure, and what first. @param {string} person @param {At[]} open */
function turnOf(person, open) {
  const mine = open.filter((at) => at.person === person);
  return { person, left: mine.length, next: mine[0] ?? null };
}

/** Piece after piece: what each person read of it, repeat after repeat. @param {Described} told @param {Map<string, Cell>} cells */
function rows({ pieces, people, repeats, unit }, cells) {
  if (!cells.size) return [];
  return upTo(pieces).map((piece) => ({
    piece,
    people: people.map((person) =>
      upTo(repeats).map((repeat) => shown(cells.get(key({ piece, person, repeat })), unit ?? '')),
    ),
  }));
}

/** @param {Cell | undefined} cell @param {string} unit */
function shown(cell, unit) {
  const first = cell?.readings[0];
  if (!cell || !first) return null;
  const size = cell.reading && outcome.size(cell.reading, unit);
  return { id: first.id, value: first.value, size, ask: cell.ask };
}

/** Readings that were struck out, newest first. @param {Subject | null} subject */
const struckOf = (subject) =>
  plain
    .sorted(
      trials(subject).filter(({ struck }) => struck),
      when,
    )
    .reverse()
    .map(toldOf);

/** @param {At[]} order @param {At[]} open @param {unknown[]} asks */
function stateOf(order, open, asks) {
  if (!order.length) return 'unclear';
  if (asks.length) return 'ask';
  if (!open.length) return 'done';
  return open.length === order.length ? 'empty' : 'measuring';
}

/** What it came to, from the rounds that are whole; two of them at the least. @param {Described} told @param {At[]} order @param {Map<string, Cell>} cells */
function resultOf(told, order, cells) {
  const { pieces, people, repeats, unit } = told;
  const broken = order.filter((at) => !cells.get(key(at))?.reading).map(({ repeat }) => repeat);
  const rounds = Math.min(repeats, ...broken.map((repeat) => repeat - 1));
  if (!cells.size || rounds < outcome.FEWEST) return { trouble: null, figures: null };
  const readings = people.map((person) =>
    upTo(rounds).map((repeat) =>
      upTo(pieces).flatMap((piece) => cells.get(key({ piece, person, repeat }))?.reading ?? []),
    ),
  );
  return outcome.result(readings, unit ?? '', outcome.width(told.least, told.most));
}
