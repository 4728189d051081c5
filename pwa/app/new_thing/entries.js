/** What a new part or holder becomes: its description, its label and its place, kept together. */

import { freshId } from '../fresh_id.js';
import { startOf } from '../kinds/ready.js';

/** A label about which nothing has been said. */
export const EMPTY = Object.freeze({
  what: 'part',
  form: 'bag',
  name: '',
  named: false,
  kind: '',
  newKind: '',
  quantity: 1,
  donor: '',
  holder: '',
});

/**
 * @param {any} draft
 * @param {{code: string, after: string[]}} found what the code view says of the label
 * @param {string} id
 * @param {{id: string, name: string}[]} [kinds] those of the workshop
 * @returns {any[]}
 */
export function entriesOf(draft, found, id, kinds = []) {
  /** @type {any[]} */
  const entries = draft.what === 'holder' ? [holder(draft, id)] : part(draft, id, kinds);
  entries.push({ heading: 'label', about: found.code, after: found.after, body: { marks: id } });
  if (draft.holder) entries.push({ heading: 'place', about: id, body: { in: draft.holder } });
  return entries;
}

/** @param {any} draft @param {string} id */
const holder = (draft, id) => ({
  heading: 'holder',
  about: id,
  body: { fields: { name: draft.name.trim(), form: draft.form } },
});

/**
 * The part, and its kind where that is new too: a ready one brings its criteria.
 * @param {any} draft
 * @param {string} id
 * @param {{id: string, name: string}[]} kinds
 */
function part(draft, id, kinds) {
  const kind = draft.newKind ? freshId() : draft.kind;
  const fields = {
    name: draft.name.trim(),
    quantity: draft.quantity,
    ...(kind ? { kind } : {}),
    ...(draft.donor ? { donor: draft.donor } : {}),
  };
  const described = { heading: 'part', about: id, body: { fields } };
  if (!draft.newKind) return [described];
  const start = startOf(draft.newKind, kinds);
  return [{ heading: 'kind', about: kind, body: { fields: start } }, described];
}
