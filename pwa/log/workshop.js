/**
 * The fold: entries about one id become a subject, and subjects together a workshop.
 *
 * subject() never stops: what it cannot read is listed as unread and the rest goes on.
 *
 * @typedef {import('./values.js').Subject} Subject
 * @typedef {import('./values.js').Ordered} Ordered
 * @typedef {import('./values.js').Fact} Fact
 * @typedef {import('./values.js').Unread} Unread
 * @typedef {import('./merge.js').Line} Line
 */
import { headings } from './headings/index.js';
import { links } from './links.js';
import { keepBoth, latestPerField, oneStands, strikeOut, struckBy } from './merge.js';

export { links };

/**
 * Everything about one id, from its entries and the strike-outs of these.
 * The order in which entries come, and how often, makes no difference.
 * @param {string} about
 * @param {Iterable<Ordered>} entries
 * @returns {Subject} source: definition
 */
export function subject(about, entries) {
  const lines = inOrder(entries);
  const unread = lines.flatMap(unreadable);
  const closed = new Set(unread.map(({ id }) => id));
  const open = lines.filter(({ entry }) => !closed.has(entry.id));
  const strikes = of(open, strikeOut);
  const targets = new Set(lines.map(({ entry }) => entry.id));
  for (const { entry } of strikes) targets.delete(entry.id);
  const struck = struckBy(strikes, targets);
  const read = open.map((line) => ({ ...line, struck: struck.get(line.entry.id) ?? null }));
  const first = read.find((line) => headings.get(line.entry.heading)?.names);
  const made = first && merge(first) !== oneStands ? first.entry.id : null;
  const counting = new Set([...struck.values()].map(({ id }) => id));
  return {
    id: about,
    heading: first?.entry.heading ?? null,
    hidden: made !== null && struck.has(made),
    made,
    fields: latestPerField(of(read, latestPerField)).fields,
    facts: facts(read),
    strikes: strikeOut(strikes).strikes.map((strike) => ({
      ...strike,
      counts: counting.has(strike.id),
    })),
    unread,
  };
}

/**
 * What a subject's description says now, or null.
 * @param {Subject | null} subject
 * @param {string} name
 * @returns {any} source: definition
 */
export function value(subject, name) {
  return subject && Object.hasOwn(subject.fields, name) ? subject.fields[name]?.value : null;
}

/**
 * The facts of a heading that stand: none, one, or more, and then a person must say.
 * @param {Subject | null} subject
 * @param {string} heading
 * @returns {Fact[]} source: definition
 */
export function standing(subject, heading) {
  return subject?.facts.filter((fact) => fact.heading === heading && fact.stands) ?? [];
}

/**
 * The subjects that one question needs. Called with or without `new`.
 * @param {Iterable<Subject>} subjects
 */
export function Workshop(subjects) {
  const given = new Map([...subjects].map((subject) => [subject.id, subject]));
  const byId = new Map([...given].sort(([one], [other]) => (one < other ? -1 : 1)));
  /** @type {Map<string, Subject[]>} */
  const byLink = new Map();
  for (const found of byId.values()) {
    for (const { to, role } of links(found)) {
      const key = `${role} ${to}`;
      const others = byLink.get(key);
      if (others) others.push(found);
      else byLink.set(key, [found]);
    }
  }
  return Object.freeze({
    /** The subject of this id, hidden or not, or null. @param {string} id */
    subject: (id) => byId.get(id) ?? null,
    /** The subjects of a heading that are not hidden, by id. @param {string} heading */
    all: (heading) =>
      [...byId.values()].filter((found) => found.heading === heading && !found.hidden),
    /**
     * The subjects that point to this id in this role, by id.
     * @param {string} to
     * @param {string} role
     */
    linked: (to, role) => byLink.get(`${role} ${to}`) ?? [],
  });
}

/** @param {Iterable<Ordered>} entries */
function inOrder(entries) {
  /** @type {Map<string, {key: string, line: Line}>} */
  const once = new Map();
  for (const { entry, order } of entries) {
    // Ids hold no sign below a blank, so the text sorts as its three pieces do.
    const key = `${order}\n${entry.device}\n${entry.id}`;
    const held = once.get(entry.id);
    // Before the server's answer an entry has a later order.
    if (!held || key < held.key) once.set(entry.id, { key, line: { entry, order, struck: null } });
  }
  return [...once.values()].sort(byKey).map(({ line }) => line);
}

/**
 * @param {{key: string}} one
 * @param {{key: string}} other
 */
function byKey(one, other) {
  return one.key < other.key ? -1 : 1;
}

/**
 * @param {Line} line
 * @returns {Unread[]}
 */
function unreadable({ entry }) {
  const heading = headings.get(entry.heading);
  const { id } = entry;
  if (!heading) return [{ id, heading: entry.heading, why: 'heading-unknown' }];
  if (entry.v > heading.v) return [{ id, heading: entry.heading, why: 'newer' }];
  return heading.check(entry.body) ? [{ id, heading: entry.heading, why: 'shape' }] : [];
}

/** @param {Line} line */
function merge(line) {
  return headings.get(line.entry.heading)?.merge;
}

/**
 * @param {Line[]} lines
 * @param {import('./merge.js').Merge} rule
 */
function of(lines, rule) {
  return lines.filter((line) => merge(line) === rule);
}

/** @param {Line[]} lines in order */
function facts(lines) {
  const place = new Map(lines.map(({ entry }, at) => [entry.id, at]));
  const at = (/** @type {Fact} */ { id }) => /** @type {number} */ (place.get(id));
  const both = [...keepBoth(of(lines, keepBoth)).facts, ...oneStands(of(lines, oneStands)).facts];
  return both.sort((one, other) => at(one) - at(other));
}
