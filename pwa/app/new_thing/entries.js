/** What a new part or holder becomes: its description, its label and its place, kept together. */

import { freshId } from '../fresh_id.js';

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
 * @returns {any[]}
 */
export function entriesOf(draft, found, id) {
  /** @type {any[]} */
  const entries = draft.what === 'holder' ? [holder(draft, id)] : part(draft, id);
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

/** @param {any} draft @param {string} id the part, and its kind where that is new too */
function part(draft, id) {
  const kind = draft.newKind ? freshId() : draft.kind;
  const fields = {
    name: draft.name.trim(),
    quantity: draft.quantity,
    ...(kind ? { kind } : {}),
    ...(draft.donor ? { donor: draft.donor } : {}),
  };
  const described = { heading: 'part', about: id, body: { fields } };
  if (!draft.newKind) return [described];
  return [{ heading: 'kind', about: kind, body: { fields: { name: draft.newKind } } }, described];
}
