/** What is kept of a choice from stock: a set; single pieces get their place, counted ones stay a handful. */
import { value } from '../../log/workshop.js';
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';
import { onlyBuild } from './for_build.js';
import { figure } from './says.js';
import { typedOf } from './shells_model.js';

/** @param {any} workshop @param {any} draft @param {any} found @returns {any[]} */
export function entriesOf(workshop, draft, found) {
  const placed = found.places.filter((/** @type {any} */ { piece }) => piece !== null);
  const pieces = placed.flatMap((/** @type {any} */ { name, parts }) =>
    parts.map((/** @type {any} */ part) => ({ part: part.id, place: name, single: part.single })),
  );
  const kind = workshop.subject(draft.kind);
  const build = (draft.build ?? onlyBuild(workshop)) || null;
  const fields = {
    name: t('set.name', {
      n: pieces.length,
      kind: value(kind, 'plural') ?? value(kind, 'name') ?? '',
    }),
    kind: draft.kind,
    build,
    count: pieces.length,
    pieces: pieces.map((/** @type {any} */ { part, place }) => ({ part, place })),
    says: saysOf(draft, placed, found.target),
  };
  return [
    { heading: 'set', about: freshId(), body: { fields } },
    ...pieces
      .filter((/** @type {any} */ { single }) => single)
      .map((/** @type {any} */ { part, place }) => ({
        heading: 'part',
        about: part,
        body: { fields: { build, for: place } },
      })),
  ];
}

/** The clearance of each place, and what was asked for where. @param {any} draft @param {any[]} placed @param {number} target */
function saysOf({ least, most, source, unit }, placed, target) {
  const list = placed
    .map(({ name, clearance_mm }) =>
      t('shells.set-says.one', { place: name, clearance: clearanceOf(clearance_mm, unit) }),
    )
    .join(', ');
  const facts = { list, unit, least, most, target: typedOf(target, unit) };
  const both = least.trim() && most.trim();
  return t(both ? 'shells.set-says' : 'shells.set-says.aim', {
    ...facts,
    source: source.trim() ? ` (${source.trim()})` : '',
  });
}

/** A clearance with the digits that count. @param {number} mm @param {string} unit */
export const clearanceOf = (mm, unit) => figure(Number(typedOf(mm, unit)), unit === 'mm' ? 3 : 4);
