/** Parts sent out to be worked on: what is out, with whom, since when, due when; what came back. */
import { standing, value } from '../log/workshop.js';
import { madeBy } from './joint_lines.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */

const DAY = 86_400_000;

/**
 * What is out, what came back, and what is judged for the machine shop and still here.
 * @param {Workshop} workshop
 * @param {string | null} [today] the date, for how late something is
 */
export function away(workshop, today = null) {
  const parts = workshop.all('part').filter((part) => !things.emptied(part));
  const out = parts.flatMap((part) =>
    unreturned(part).map((fact) => ({
      ...about(workshop, part),
      ...sending(fact),
      days: days(fact.body.due, today),
    })),
  );
  const back = parts.flatMap((part) =>
    said(part, 'returned').map((fact) => ({ ...about(workshop, part), ...coming(part, fact) })),
  );
  const ready = parts.filter(
    (part) => things.mark(part) === 'machine' && !unreturned(part).length && !cameBack(part),
  );
  return {
    out: plain.sorted(out, (line) => [
      line.due ?? '~',
      line.to,
      plain.natural(line.name),
      line.part,
      line.id,
    ]),
    back: plain.sorted(back, ({ order, id }) => [order, id]).reverse(),
    look: byName(parts.filter(cameBack)).map((part) => about(workshop, part)),
    ready: byName(ready).map((part) => about(workshop, part)),
  };
}

/** @param {Subject[]} parts */
const byName = (parts) =>
  plain.sorted(parts, (part) => [plain.natural(plain.text(value(part, 'name'))), part.id]);

/**
 * Where a part is now, as far as it was sent out and has not come back.
 * @param {Subject | null} part
 * @param {string | null} [today]
 */
export function out(part, today = null) {
  return unreturned(part).map((fact) => ({ ...sending(fact), days: days(fact.body.due, today) }));
}

/** Whether it is not in the workshop: said to be gone, or sent out and moved meanwhile. @param {Subject | null} part */
export const isAway = (part) => things.isGone(part) || unreturned(part).length > 0;

/**
 * Whether it is here again and was not judged since: the verdict before is of what it was.
 * @param {Subject | null} part
 */
export function cameBack(part) {
  const judged = plain.sorted(standing(part, 'verdict'), ({ order }) => [order]).at(-1);
  return (
    !unreturned(part).length &&
    said(part, 'returned').some(({ order }) => !judged || order > judged.order)
  );
}

/**
 * How many days a date is past; less than nothing when it is still to come.
 * @param {unknown} due
 * @param {unknown} today
 */
export function days(due, today) {
  const [then, now] = [dateOf(due), dateOf(today)];
  return then === null || now === null ? null : (now - then) / DAY;
}

/** @param {unknown} kept */
function dateOf(kept) {
  const text = plain.text(kept) ?? '';
  if (!/^[1-9][0-9]{3}-[0-9]{2}-[0-9]{2}$/.test(text)) return null;
  const read = new Date(`${text}T00:00:00Z`);
  if (Number.isNaN(read.getTime())) return null;
  return read.toISOString().startsWith(text) ? read.getTime() : null;
}

/** @param {Subject | null} part @param {string} heading @returns {Fact[]} */
const said = (part, heading) =>
  part?.facts.filter((fact) => fact.heading === heading && !fact.struck) ?? [];

/** Sendings that nothing came back of. @param {Subject | null} part */
function unreturned(part) {
  const ended = new Set(said(part, 'returned').map(({ body }) => plain.text(body.sent)));
  return said(part, 'sent').filter(({ id }) => !ended.has(id));
}

/** @param {Fact} fact */
const sending = (fact) => ({
  to: plain.text(fact.body.to) ?? '',
  for: plain.text(fact.body.for),
  due: plain.text(fact.body.due),
  price: plain.measured(fact.body.price),
  note: plain.text(fact.body.note),
  id: fact.id,
  ...madeBy(fact),
});

/** @param {Subject} part @param {Fact} fact */
function coming(part, fact) {
  const sent = part.facts.find(({ id }) => id === fact.body.sent);
  return {
    sent: plain.text(fact.body.sent),
    to: plain.text(sent?.body.to),
    for: plain.text(sent?.body.for),
    note: plain.text(fact.body.note),
    readings: plain.mappings(fact.body.readings).flatMap(({ value: kept }) => {
      const read = plain.measured(kept);
      return read ? [read] : [];
    }),
    order: fact.order,
    id: fact.id,
    ...madeBy(fact),
  };
}

/** @param {Workshop} workshop @param {Subject} part */
function about(workshop, part) {
  return {
    part: part.id,
    name: plain.text(value(part, 'name')),
    kind: things.nameOf(workshop, value(part, 'kind')),
    quantity: things.quantity(part),
    codes: things.labels(workshop, part.id).codes,
  };
}
