/** What an accepted arrangement becomes: one set a kind, places given, kept at once. */
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';
import { remaining } from './even_model.js';

/**
 * A set that was chosen before gets its places; free pieces, and those taken out of one, become a set.
 * @param {{asked: any, found: any, draft: any, build: string | null, says: string, apart: any[]}} told
 * @returns {any[]}
 */
export function entriesOf({ asked, found, draft, build, says, apart }) {
  const { columns, count } = asked;
  const seats = columns.map((/** @type {any} */ _, /** @type {number} */ at) =>
    found.rows.map((/** @type {any} */ { place, pieces }) => ({ part: pieces[at].id, place })),
  );
  return [
    ...columns.flatMap((/** @type {any} */ column, /** @type {number} */ at) =>
      setsOf(column, seats[at], { count, build, says, together: asked.together.flat() }),
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

/**
 * A set used whole gets its places; one used in part gives up what moves to a new one and keeps the rest.
 * @param {any} column @param {any[]} pieces @param {any} told @returns {any[]}
 */
function setsOf(column, pieces, { count, build, says, together }) {
  const { id, name, from, measure } = column;
  const places = { pieces, count, build, says };
  const rest = remaining(column);
  if (from && !rest.length) return [{ heading: 'set', about: from, body: { fields: places } }];
  const fields = {
    name: t('set.name', { n: count, kind: name }),
    kind: id,
    ...places,
    spares: [],
    measures: [{ measure: measure.id, weight: '1' }],
    excluded: [],
    pinned: pieces.map(({ part }) => part).filter((part) => together.includes(part)),
  };
  const kept = { pieces: rest, count: rest.length };
  return [
    ...(from ? [{ heading: 'set', about: from, body: { fields: kept } }] : []),
    { heading: 'set', about: freshId(), body: { fields } },
  ];
}
