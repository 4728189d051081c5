/** What is asked of a set on this device, and the set that answers it. */
import { best } from '../../trade/sets.js';
import { t } from '../texts/index.js';
import '../texts/sets.js';

/** A choice nothing has been said in. @type {Record<string, any>} */
export const FRESH = Object.freeze({
  count: 0,
  weights: {},
  pinned: [],
  excluded: [],
  places: {},
  build: null,
  rest: 'leave',
  why: '',
  about: '',
});

/** As many as are asked for first: what most engines have, or all there are. */
const USUAL = [16, 12, 8, 6, 4, 3, 2, 1];

/** @param {number} many pieces in the pool */
export const usualCount = (many) => USUAL.find((count) => count < many) ?? 1;

/** How much a measure counts; the first one counts until something else is said. @param {any} draft @param {any} measure @param {number} at */
export const weightOf = (draft, measure, at) =>
  Number(draft.weights[measure.id] ?? (at === 0 ? 1 : 0));

/** The measures that count, with where each stands among the sizes. @param {any} pool @param {any} draft @returns {any[]} */
export const counting = (pool, draft) =>
  pool.measures
    .map((/** @type {any} */ measure, /** @type {number} */ at) => ({
      ...measure,
      at,
      weight: weightOf(draft, measure, at),
    }))
    .filter((/** @type {any} */ { weight }) => weight > 0);

/**
 * The best set, or why there is none.
 * @param {any} pool
 * @param {any} draft
 * @returns {any}
 */
export function reckon(pool, draft) {
  const measures = counting(pool, draft);
  const count = draft.count || usualCount(pool.pieces.length);
  const measured = pool.pieces.filter((/** @type {any} */ piece) =>
    measures.every(({ at }) => piece.sizes[at]),
  );
  const known = new Set(measured.map((/** @type {any} */ piece) => piece.id));
  const wish = {
    pinned: draft.pinned.filter((/** @type {string} */ id) => known.has(id)),
    excluded: draft.excluded.filter((/** @type {string} */ id) => known.has(id)),
  };
  const unread = pool.pieces.filter(
    (/** @type {any} */ { id }) => draft.pinned.includes(id) && !known.has(id),
  );
  const asked = { measures, count, measured, wish, unread };
  return { ...asked, ...tried(asked, wish) };
}

/**
 * @param {any} asked
 * @param {{pinned: string[], excluded: string[]}} wish
 */
function tried({ measures, count, measured, unread }, wish) {
  const held = heldBack(measures, unread);
  if (held || !measures.length || !measured.length) return { found: null, trouble: held };
  try {
    return {
      found: best(measured.map(pieceOf(measures)), measures.map(scaled(measured)), count, wish),
      trouble: null,
    };
  } catch (error) {
    const { says, next } = byName(/** @type {any} */ (error), measures, measured);
    if (!says) throw error;
    return { found: null, trouble: `${says} ${next}` };
  }
}

/** So many measures are searched at a time. */
const MOST_MEASURES = 3;

/** Why nothing is searched. @param {any[]} measures @param {any[]} unread pinned, and not read on all that counts */
function heldBack(measures, unread) {
  if (measures.length > MOST_MEASURES) return t('set.most-measures');
  const [piece] = unread;
  const missing = piece && measures.find(({ at }) => !piece.sizes[at]);
  if (!missing) return null;
  return t('set.pinned-unread', {
    name: piece.name ?? piece.id,
    measure: missing.name ?? missing.id,
  });
}

/** The same trouble with the names of piece and measure for their ids. @param {any} error @param {any[]} measures @param {any[]} measured */
function byName(error, measures, measured) {
  const { name, measure } = error.facts ?? {};
  const of = (/** @type {any[]} */ list, /** @type {string} */ id) =>
    list.find((one) => one.id === id)?.name ?? id;
  return error.facts
    ? new error.constructor({
        ...error.facts,
        name: of(measured, name),
        measure: of(measures, measure),
      })
    : error;
}

/** @param {any[]} measures @returns {(piece: any) => any} */
const pieceOf =
  (measures) =>
  ({ id, sizes, verdict, donor }) => ({
    name: id,
    sizes: measures.map(({ at }) => sizes[at].size),
    wear: verdict === 'use' ? 0 : 1,
    donor: donor?.id ?? null,
  });

/**
 * Measures of different units are compared by the share of what all pieces span.
 * @param {any[]} measured
 * @returns {(measure: any) => any}
 */
const scaled =
  (measured) =>
  ({ id, at, weight, least, most }) => {
    const sizes = measured.map(({ sizes: all }) => all[at].size);
    const span = Math.max(...sizes) - Math.min(...sizes);
    return {
      name: id,
      weight,
      scale: span > 0 ? span : null,
      lower: least === null ? null : Number(least),
      upper: most === null ? null : Number(most),
    };
  };

/** The set if one more piece had to be in, or out. @param {any} asked @param {'pinned' | 'excluded'} how @param {string} id */
export const ifOnly = (asked, how, id) => {
  const others = { pinned: asked.wish.pinned, excluded: asked.wish.excluded };
  const bare = {
    pinned: others.pinned.filter((/** @type {string} */ one) => one !== id),
    excluded: others.excluded.filter((/** @type {string} */ one) => one !== id),
  };
  return tried(asked, { ...bare, [how]: [...bare[how], id] });
};

/** The set nothing was asked of. @param {any} asked */
export const withoutWish = (asked) => tried(asked, { pinned: [], excluded: [] });

/**
 * What each piece of the pool is in this set.
 * @param {any} pool
 * @param {any} asked
 * @returns {any[]} each piece with its state and rank
 */
export function stated(pool, { found, wish, measured }) {
  const known = new Set(measured.map((/** @type {any} */ each) => each.id));
  const ranks = new Map(names(found?.spares).map((name, at) => [name, at + 1]));
  // Later lines go over earlier ones.
  const states = new Map([
    ...pool.pieces.map((/** @type {any} */ { id }) => [id, known.has(id) ? 'idle' : 'missing']),
    ...names(found?.spares).map((name) => [name, 'spare']),
    ...names(found?.outside).map((name) => [name, 'outside']),
    ...(found?.chosen ?? []).map((/** @type {string} */ name) => [name, 'in']),
    ...(found ? wish.pinned : []).map((/** @type {string} */ name) => [name, 'pinned']),
    ...wish.excluded.map((/** @type {string} */ name) => [name, 'out']),
  ]);
  return pool.pieces.map((/** @type {any} */ piece) => ({
    ...piece,
    state: states.get(piece.id),
    rank: ranks.get(piece.id) ?? null,
  }));
}

/** @param {readonly {name: string}[] | undefined} each @returns {string[]} */
const names = (each) => (each ?? []).map(({ name }) => name);
