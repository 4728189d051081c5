/** What is being fitted where, and the entries it becomes. */
import { heldBack } from '../../views/own_place.js';
import { freshId } from '../fresh_id.js';

export const OFF = 'off';

/**
 * What the form means now. The first build of a workshop begins with the first part fitted to it.
 * @param {any} workshop
 * @param {any} part
 * @param {{value: string}[]} builds
 * @param {{build: string, name: string, place: string, reason: string}} draft
 */
export function meant(workshop, part, builds, draft) {
  const only = builds.length === 1 ? (builds[0]?.value ?? '') : '';
  const known = draft.build || part.for.build || only;
  const first = !builds.length && !known ? draft.name.trim() : '';
  const off = known === OFF;
  const place = draft.place.trim();
  const held = off ? [] : heldBack(workshop, part.id, place);
  const reason = held.length ? draft.reason.trim() : '';
  return { known, first, build: known || first, off, place, held, reason };
}

/** @param {any} part @param {ReturnType<typeof meant>} said @returns {any[]} */
export function entriesOf(part, { known, first, off, place, reason }) {
  const { id: about, after } = part;
  const fitted = { heading: 'fitted', about, after: after.fitted };
  if (off) return [{ ...fitted, body: { build: null } }];
  const build = known || freshId();
  const said = { build, ...(place ? { place } : {}), ...(reason ? { reason } : {}) };
  const begun = { heading: 'build', about: build, body: { fields: { name: first } } };
  return [...(first ? [begun] : []), { ...fitted, body: said }];
}
