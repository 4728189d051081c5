/** The rows a search reads, kept in memory and renewed as entries come. */

import { read } from './transaction.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {{id: string, heading: string, name: string|null, kind: string|null, verdicts: string[],
 *   words: string[], lies?: string|null, links: {role: string, to: string}[]}} NameRow
 * @typedef {{id: string, heading: string, name: string, words: string, codes: string[],
 *   at: string|null, verdict: string|null, scrap: boolean}} FindRow
 */

const FOUND = new Set([
  'part',
  'holder',
  'joint',
  'step',
  'wrench',
  'instrument',
  'donor',
  'build',
]);
const POINTING = new Set(['of-kind', 'from-donor', 'for-build', 'fitted-in', 'lies-in']);

/** How deep bags stand in bins on shelves. */
const DEEPEST = 20;

/** @param {NameRow|undefined} row @param {string} wanted @returns {string[]} */
const ends = (row, wanted) =>
  (row?.links ?? []).filter(({ role }) => role === wanted).map(({ to }) => to);

/** Rows by id, and who points to whom, so that a change renews only what shows it. */
export class Names {
  /** @type {Map<string, NameRow>} */
  rows = new Map();
  /** @type {Map<string, Set<string>>} */
  pointing = new Map();
  /** @type {Map<string, FindRow>} */
  shown = new Map();

  /** @param {string} id @param {NameRow|undefined} row @returns {string[]} ids whose row may show it */
  set(id, row) {
    const before = this.rows.get(id)?.links ?? [];
    const now = row?.links ?? [];
    for (const { to } of before) this.pointing.get(to)?.delete(id);
    for (const { to } of now) this.pointing.set(to, (this.pointing.get(to) ?? new Set()).add(id));
    if (row) this.rows.set(id, row);
    else this.rows.delete(id);
    const ends = [...before, ...now].map(({ to }) => to);
    return [id, ...ends, ...this.inside(id)];
  }

  /** Who points to it, and whatever lies in those: their rows show its name. @param {string} id */
  inside(id) {
    const found = new Set(this.pointing.get(id));
    for (const one of found) {
      if (this.rows.get(one)?.heading !== 'holder') continue;
      for (const inner of this.pointing.get(one) ?? []) found.add(inner);
    }
    return found;
  }

  /** The holders around a holder, nearest first. @param {string} id @returns {string[]} */
  around(id) {
    const seen = [id];
    while (seen.length <= DEEPEST) {
      const [outer] = ends(this.rows.get(seen.at(-1) ?? ''), 'lies-in');
      if (outer === undefined || seen.includes(outer)) break;
      seen.push(outer);
    }
    return seen.slice(1);
  }

  /** @param {Iterable<string>} ids rows that stay the same keep being the same object */
  show(ids) {
    for (const id of ids) {
      const row = this.rows.get(id);
      if (row && FOUND.has(row.heading)) this.shown.set(id, this.found(row));
      else this.shown.delete(id);
    }
  }

  /** @param {NameRow} row @returns {FindRow} */
  found(row) {
    const near = row.links.filter(({ role }) => POINTING.has(role));
    const outer = ends(row, 'lies-in').flatMap((id) => this.around(id));
    const nameOf = (/** @type {string} */ id) => this.rows.get(id)?.name ?? '';
    const names = [...near.map(({ to }) => to), ...outer].map(nameOf);
    const [kind = ''] = ends(row, 'of-kind').map(nameOf);
    const [fitted, held] = ['fitted-in', 'lies-in'].map((role) =>
      ends(row, role).map(nameOf).filter(Boolean),
    );
    const verdicts = [...new Set(row.verdicts)];
    const verdict = verdicts.length === 1 ? (verdicts[0] ?? null) : null;
    const labels = [...(this.pointing.get(row.id) ?? [])];
    return {
      id: row.id,
      heading: row.heading,
      name: row.name || kind,
      words: [...new Set([...row.words, ...names])].filter((word) => word).join(' '),
      codes: labels.filter((id) => this.rows.get(id)?.heading === 'label').sort(),
      at: [...new Set(fitted?.length ? fitted : held)].join(', ') || row.lies?.trim() || null,
      verdict,
      scrap: verdict === 'scrap',
    };
  }
}

/** @param {Core} core @returns {Promise<Names>} */
async function load(core) {
  const names = new Names();
  const rows = await read(core, ['name'], (tx) => tx.objectStore('name').getAll());
  for (const row of rows) names.set(row.id, row);
  names.show(names.rows.keys());
  return names;
}

/** @param {Core} core @param {Names} names @param {string[]} ids */
async function renew(core, names, ids) {
  const rows = await read(core, ['name'], (tx) =>
    Promise.all(ids.map((id) => tx.objectStore('name').get(id))),
  );
  const shown = new Set(ids.flatMap((id, at) => names.set(id, rows[at])));
  names.show(shown);
  return names;
}

/**
 * @param {Core} core
 * @returns {() => Promise<FindRow[]>} a new list after each change, and the same one until then
 */
export function makeNames(core) {
  /** @type {Promise<Names>|null} */
  let names = null;
  /** @type {FindRow[]|null} */
  let list = null;

  core.listeners.add((ids) => {
    if (!names || !ids.size) return;
    names = names.then((had) => renew(core, had, [...ids]));
    list = null;
    // Whatever went wrong, the next search reads everything anew.
    names.catch(() => {
      names = null;
    });
  });

  return async function findRows() {
    names ??= load(core);
    const { shown } = await names;
    list ??= [...shown.values()];
    return list;
  };
}
