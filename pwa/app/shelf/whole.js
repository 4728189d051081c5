/** The whole shelf, told kind by kind: the first ones are shown while the others are read. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { value, Workshop } from '../../log/workshop.js';
import * as plain from '../../views/plain.js';
import { shelf as shelfView } from '../../views/shelf.js';
import { breath, comesBack } from '../later.js';
import { readAll } from '../read_all.js';
import { untilChanged } from '../until_changed.js';
import { AROUND, readShelf } from './read.js';

/** With no more parts than these all are read at once. */
const AT_ONCE = 200;
/** After the first kind so many come together. */
const KINDS = 8;

const ALL = 'shelf';
const SO_FAR = 'shelf so far';

/**
 * @typedef {ReturnType<typeof shelfView>} Shelf
 * @typedef {Shelf & {builds: any[], whole: boolean, parted: boolean}} Told whole: nothing is missing;
 *   parted: there is so much that each kind shows its first few
 */

/** Who sees what is there so far. @type {Set<(part: Told) => void>} */
const seen = new Set();

/** Reads it, unless that is done or under way; what is there so far is remembered beside it. @param {any} store @returns {Promise<Told>} */
function toldOnce(store) {
  const kept = untilChanged(store);
  const had = kept.get(ALL);
  if (had) return had;
  const told = wholeShelf(store, (part) => {
    if (kept !== untilChanged(store)) return;
    kept.set(SO_FAR, part);
    for (const show of seen) show(part);
  });
  kept.set(ALL, told);
  told.then(
    (all) => kept.set(SO_FAR, all),
    () => kept.delete(ALL),
  );
  return told;
}

/** @param {Shelf[]} shelves @param {any} workshop @param {boolean} whole @returns {Told} */
const together = (shelves, workshop, whole) => ({
  groups: shelves.flatMap(({ groups }) => groups),
  free: shelves.reduce((sum, { free }) => sum + free, 0),
  scrap: plain.sorted(
    shelves.flatMap(({ scrap }) => scrap),
    ({ name, id }) => [plain.natural(name), id],
  ),
  builds: workshop.all('build'),
  whole,
  parted: true,
});

/** @param {any[]} kinds in the order in which their groups stand */
const inOrder = (kinds) =>
  plain.sorted(kinds, (kind) => {
    const name = plain.text(value(kind, 'plural')) ?? plain.text(value(kind, 'name'));
    return [plain.natural(name), kind.id];
  });

/**
 * @param {any} store
 * @param {(told: Told) => void} show what is there so far
 * @returns {Promise<Told>}
 */
export async function wholeShelf(store, show) {
  const words = [...AROUND, 'kind', 'donor'];
  /** @type {[Map<string, number>, any]} */
  const [counts, around] = await Promise.all([store.countsByKind(), readAll(store, words)]);
  if ([...counts.values()].reduce((sum, each) => sum + each, 0) <= AT_ONCE) {
    const workshop = await readShelf(store);
    return { ...shelfView(workshop), builds: workshop.all('build'), whole: true, parted: false };
  }
  const fixed = words.flatMap((word) => around.all(word));
  /** @type {Shelf[]} */
  const shelves = [];
  const add = (/** @type {any} */ slice) =>
    shelves.push(shelfView(Workshop([...fixed, ...slice.all('part')])));
  for (const [at, { id }] of inOrder(around.all('kind')).entries()) {
    // Reading lets the page breathe; only the first frame is waited for.
    if (at === 1) await breath();
    add(await store.kindInPassing(id));
    if (at % KINDS === 0) show(together(shelves, around, false));
  }
  add(await store.kindlessSlice());
  return together(shelves, around, true);
}

/** The whole shelf, kept fresh; null until its first kind is there. @param {any} store @returns {Told | null} */
export function useWholeShelf(store) {
  const waits = useRef(comesBack());
  // What is there stays until all of the new is; only who sees nothing yet is shown a part.
  const [told, setTold] = useState(() => firstOf(store, waits.current));
  useEffect(() => {
    let turn = 0;
    const show = (/** @type {Told} */ part) =>
      !waits.current && setTold((was) => (was?.whole ? was : part));
    const ask = async () => {
      turn += 1;
      const mine = turn;
      try {
        const all = await toldOnce(store);
        if (mine === turn) setTold(all);
      } catch (error) {
        reportError(error);
      }
    };
    seen.add(show);
    ask();
    const off = store.onChange(ask);
    return () => {
      turn += 1;
      seen.delete(show);
      off();
    };
  }, []);
  return told;
}

/** What is known already. @param {any} store @param {boolean} wholly @returns {Told | null} */
function firstOf(store, wholly) {
  const part = untilChanged(store).get(SO_FAR) ?? null;
  return wholly && !part?.whole ? null : part;
}
