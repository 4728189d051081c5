/** Which fields of a description may be changed, how they are shown, and what a change writes. */

import { value } from '../../log/workshop.js';
import { quantity } from '../../views/things.js';

/** Fields by heading, in the order of the form. @type {Record<string, string[]>} */
export const FORMS = {
  part: ['name', 'kind', 'quantity', 'donor', 'from', 'for', 'thread', 'single_use', 'note'],
  holder: ['name', 'form', 'note'],
  donor: ['name', 'engine', 'note'],
  build: ['name', 'engine', 'note'],
};

/**
 * What stands in the form at first. A count is the one people see: as described, with what was added
 * and taken since.
 * @param {any} subject
 * @returns {Record<string, any>}
 */
export function shownFields(subject) {
  const names = FORMS[subject.heading] ?? [];
  const said = Object.fromEntries(names.map((name) => [name, value(subject, name)]));
  return names.includes('quantity') ? { ...said, quantity: quantity(subject) } : said;
}

/**
 * What an entry has to say: only what is different from what stands.
 * @param {any} subject
 * @param {Record<string, any>} draft
 * @returns {Record<string, any>}
 */
export function changes(subject, draft) {
  const shown = shownFields(subject);
  const typed = Object.entries(draft).filter(([name]) => name in shown);
  const now = typed.map(([name, to]) => [name, written(to)]);
  return Object.fromEntries(
    now
      .filter(([name, to]) => to !== (shown[name] ?? null))
      .map(([name, to]) => [name, name === 'quantity' ? described(subject, to) : to]),
  );
}

/** Empty words take a field away. @param {any} typed */
const written = (typed) => (typeof typed === 'string' ? typed.trim() || null : (typed ?? null));

/** The described count that shows as `wanted` with what was added and taken. @param {any} subject @param {number} wanted */
function described(subject, wanted) {
  const said = value(subject, 'quantity') ?? 1;
  return wanted - ((quantity(subject) ?? said) - said);
}
