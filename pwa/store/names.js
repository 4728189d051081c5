/** The rows a search reads, kept in memory and renewed as entries come. */

import { read } from './transaction.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {{id: string, heading: string, name: string, words: string, codes: string[], scrap: boolean}} FindRow
 */

const FOUND = new Set(['part', 'holder', 'joint', 'step', 'wrench', 'donor', 'build']);
const POINTING = new Set(['of-kind', 'from-donor', 'for-build', 'fitted-in', 'lies-in']);

/** @param {any} row @param {Map<string, any>} all @param {Map<string, string[]>} codes @returns {FindRow} */
function findRow(row, all, codes) {
  const near = row.links.filter((/** @type {any} */ one) => POINTING.has(one.role));
  const names = near.map((/** @type {any} */ one) => all.get(one.to)?.name ?? '');
  return {
    id: row.id,
    heading: row.heading,
    name: row.name ?? names.find((/** @type {string} */ name) => name !== '') ?? '',
    words: [...row.words, ...names].filter((word) => word).join(' '),
    codes: codes.get(row.id) ?? [],
    scrap: row.verdicts.length === 1 && row.verdicts[0] === 'scrap',
  };
}

/** @param {any[]} rows which thing each code marks */
function codesOf(rows) {
  /** @type {Map<string, string[]>} */
  const codes = new Map();
  for (const row of rows) {
    if (row.heading !== 'label') continue;
    for (const { to } of row.links) codes.set(to, [...(codes.get(to) ?? []), row.id]);
  }
  return codes;
}

/** @param {Core} core */
export function makeNames(core) {
  /** @type {Promise<Map<string, any>>|null} */
  let rows = null;
  /** @type {FindRow[]|null} */
  let shown = null;

  async function load() {
    const all = await read(core, ['name'], (tx) => tx.objectStore('name').getAll());
    return new Map(all.map((row) => [row.id, row]));
  }

  /** @param {Set<string>} ids */
  async function renew(ids) {
    const had = rows;
    if (!had || !ids.size) return;
    const wanted = [...ids];
    const found = await read(core, ['name'], (tx) =>
      Promise.all(wanted.map((id) => tx.objectStore('name').get(id))),
    );
    rows = had.then((all) => {
      wanted.forEach((id, at) => {
        if (found[at]) all.set(id, found[at]);
        else all.delete(id);
      });
      shown = null;
      return all;
    });
  }

  core.listeners.add((ids) => {
    renew(ids).catch(() => {
      rows = null;
    });
  });

  return async function findRows() {
    rows ??= load();
    const all = await rows;
    if (!shown) {
      const list = [...all.values()];
      const codes = codesOf(list);
      shown = list.filter((row) => FOUND.has(row.heading)).map((row) => findRow(row, all, codes));
    }
    return shown;
  };
}
