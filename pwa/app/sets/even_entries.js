/** What an accepted arrangement becomes: one set a kind, places given, kept at once. */
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';

/**
 * A set that was chosen before gets its places; free pieces become a set.
 * @param {{asked: any, found: any, draft: any, build: string | null, says: string, apart: any[]}} told
 * @returns {any[]}
 */
export function entriesOf({ asked, found, draft, build, says, apart }) {
  const { columns, count } = asked;
  const seats = columns.map((/** @type {any} */ _, /** @type {number} */ at) =>
    found.rows.map((/** @type {any} */ { place, pieces }) => ({ part: pieces[at].id, place })),
  );
  return [
    ...columns.map((/** @type {any} */ column, /** @type {number} */ at) =>
      setOf(column, seats[at], { count, build, says, together: asked.together.flat() }),
    ),
    ...seats.flat().map((/** @type {any} */ { part, place }) => ({
      heading: 'part',
      about: part,
      body: { fields: { build, for: place } },
    })),
    ...apart.map(({ piece, place, own }) => ({
      heading: 'note',
      about: piece.id,
      body: { text: t('even.note', { place, own, why: draft.why.trim() }) },
    })),
  ];
}

/** @param {any} column @param {any[]} pieces @param {any} told */
function setOf({ id, name, from, measure, pieces: all }, pieces, { count, build, says, together }) {
  const places = { pieces, count, build, says };
  // A set that is used only in part would lose the others: it stays, and another one is made.
  if (from && all.length === count)
    return { heading: 'set', about: from, body: { fields: places } };
  const fields = {
    name: t('set.name', { n: count, kind: name }),
    kind: id,
    ...places,
    spares: [],
    measures: [{ measure: measure.id, weight: '1' }],
    excluded: [],
    pinned: pieces.map(({ part }) => part).filter((part) => together.includes(part)),
  };
  return { heading: 'set', about: freshId(), body: { fields } };
}
