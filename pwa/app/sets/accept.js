/** The entries an accepted set becomes; all are kept at once. */
import { standing } from '../../log/workshop.js';
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';

/**
 * @param {{workshop: any, pool: any, asked: any, seats: any[], draft: any, build: string | null, name: string, says: string}} told
 * @returns {any[]}
 */
export function entriesOf(told) {
  const { pool, asked, seats, build, name, says } = told;
  const spares = asked.found.spares.map((/** @type {any} */ each) => each.name);
  const fields = {
    name,
    kind: pool.kind,
    build,
    count: asked.count,
    pieces: seats.map(({ piece, place }) => ({ part: piece.id, place })),
    spares,
    measures: asked.measures.map((/** @type {any} */ one) => ({
      measure: one.id,
      weight: String(one.weight),
    })),
    excluded: asked.wish.excluded,
    pinned: asked.wish.pinned,
    says,
  };
  return [
    { heading: 'set', about: freshId(), body: { fields } },
    ...seats.map(({ piece, place }) => ({
      heading: 'part',
      about: piece.id,
      body: { fields: { build, for: place } },
    })),
    ...notes(told),
    ...verdicts(told, spares),
  ];
}

/** Why a piece does not go back to its own place stands on the piece. @param {any} told */
const notes = ({ seats, draft }) =>
  seats
    .filter((/** @type {any} */ seat) => seat.elsewhere)
    .map((/** @type {any} */ { piece, place, own }) => ({
      heading: 'note',
      about: piece.id,
      body: { text: t('set.place.note', { place, own, why: draft.why.trim() }) },
    }));

/** Only where the person asks for it. @param {any} told @param {string[]} spares */
function verdicts({ workshop, pool, draft, name }, spares) {
  if (draft.rest !== 'spare') return [];
  const uses = new Set(
    pool.pieces
      .filter((/** @type {any} */ one) => one.verdict === 'use')
      .map((/** @type {any} */ one) => one.id),
  );
  return spares.flatMap((id, at) =>
    uses.has(id)
      ? {
          heading: 'verdict',
          about: id,
          after: standing(workshop.subject(id), 'verdict').map((fact) => fact.id),
          body: { verdict: 'spare', reason: t('set.rest.reason', { n: at + 1, name }) },
        }
      : [],
  );
}

/**
 * The strike-outs that undo a set: the set itself, the place it gave each piece, where no later
 * description has changed it, and the verdicts it gave the spares, where they still stand.
 * @param {any} workshop
 * @param {string} id
 * @param {string} reason
 * @returns {any[]}
 */
export function undone(workshop, id, reason) {
  const set = workshop.subject(id);
  const { order, value } = set.fields.pieces ?? { order: '', value: [] };
  const given = value.flatMap((/** @type {any} */ { part, place }) => {
    const said = workshop.subject(part)?.fields.for;
    return said && said.value === place && said.order > order ? [said.entry] : [];
  });
  return [set.made, ...given, ...rankedBy(workshop, set)].map((about) => ({
    heading: 'strike-out',
    about,
    body: { reason },
  }));
}

/** The standing verdicts that say which spare of this set a piece is. @param {any} workshop @param {any} set @returns {string[]} */
function rankedBy(workshop, { fields }) {
  const name = fields.name?.value ?? '';
  return (fields.spares?.value ?? []).flatMap(
    (/** @type {string} */ id, /** @type {number} */ at) =>
      standing(workshop.subject(id), 'verdict')
        .filter(({ body }) => body.reason === t('set.rest.reason', { n: at + 1, name }))
        .map((fact) => fact.id),
  );
}
