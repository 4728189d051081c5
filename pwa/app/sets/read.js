/** What the screens of sets read: no more parts than those of the kind they are about. */
import { value, Workshop } from '../../log/workshop.js';
import { readAll } from '../read_all.js';
import { untilChanged } from '../until_changed.js';
import { listed } from './listed.js';

const HEADINGS = ['part', 'set', 'kind', 'donor', 'build'];
const AROUND = ['set', 'build'];
/** Instruments, since how sure a reading is says whether it lies outside its limit. */
const OF_KIND = ['part', 'donor', 'instrument'];
const LIST = 'sets';

/** Kinds, pieces, donors, builds and sets. @param {any} store */
export const readSets = (store) => readAll(store, HEADINGS);

/**
 * What the list of sets tells, put together once until an entry comes.
 * @param {any} store
 * @returns {Promise<import('./listed.js').Listed>}
 */
export async function readList(store) {
  const put = untilChanged(store);
  const had = put.get(LIST);
  if (had) return had;
  const told = listed(...(await Promise.all([store.setsSlice(), store.countsByKind()])));
  put.set(LIST, told);
  return told;
}

/** The same, if it was put together already and still holds. @param {any} store @returns {import('./listed.js').Listed | null} */
export const listFrom = (store) => untilChanged(store).get(LIST) ?? null;

/**
 * The choice of a new set of a kind, put together once until an entry comes.
 * @param {any} store
 * @param {string} kind
 */
export async function readChoice(store, kind) {
  const put = untilChanged(store);
  const workshop = put.get(`choice ${kind}`) ?? (await readSet(store, 'new', kind));
  put.set(`choice ${kind}`, workshop);
  return workshop;
}

/** The same, if it was put together already and still holds. @param {any} store @param {string} kind */
export const chosenFrom = (store, kind) => untilChanged(store).get(`choice ${kind}`) ?? null;

/**
 * A set by its id, struck out or not, or the choice of a new one: its kind with all pieces of it,
 * and pieces it holds that are of another kind by now.
 * @param {any} store
 * @param {string} id
 * @param {string} [kind] which kind is chosen from, where there is no set yet
 */
export async function readSet(store, id, kind) {
  const [around, known] = await Promise.all([
    readAll(store, AROUND, id === 'new' ? undefined : id),
    kind === undefined ? null : store.kindSlice(kind),
  ]);
  const set = around.subject(id);
  const about = kind ?? value(set, 'kind') ?? '';
  const slice = known ?? (await store.kindSlice(about));
  const held = [...(value(set, 'pieces') ?? []).map(partOf), ...(value(set, 'spares') ?? [])];
  const strange = await Promise.all(
    held.filter((one) => !slice.subject(one)).map((one) => store.partSlice(one)),
  );
  const found = [about, ...held].map((one) => slice.subject(one) ?? subjectIn(strange, one));
  return Workshop([
    ...AROUND.flatMap((word) => around.all(word)),
    ...OF_KIND.flatMap((word) => slice.all(word)),
    ...[set, ...found].filter(Boolean),
  ]);
}

/** @param {any} piece */
const partOf = ({ part }) => part;

/** @param {any[]} slices @param {string} id */
const subjectIn = (slices, id) => slices.map((slice) => slice.subject(id)).find(Boolean) ?? null;
