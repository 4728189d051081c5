/** The lines of the list of sets: the sets, and the kinds another can be chosen from. */
import { value } from '../../log/workshop.js';
import { chosen } from '../../views/chosen.js';
import { natural } from '../words.js';

/** @typedef {{id: string, name: string, n: number, ready: boolean}} KindLine */
/** @typedef {{sets: any[], ready: KindLine[], others: KindLine[]}} Listed ready: with pieces, and something measured on them */

/** @param {any} workshop @param {Map<string, number>} counts @returns {Listed} */
export function listed(workshop, counts) {
  const kinds = byName(workshop.all('kind').map((/** @type {any} */ kind) => line(kind, counts)));
  return {
    sets: byName(workshop.all('set').map((/** @type {any} */ { id }) => chosen(workshop, id))),
    ready: kinds.filter(({ ready }) => ready),
    others: kinds.filter(({ ready }) => !ready),
  };
}

/** @param {any} kind @param {Map<string, number>} counts @returns {KindLine} */
function line(kind, counts) {
  const n = counts.get(kind.id) ?? 0;
  const ready = n > 0 && Boolean(value(kind, 'measures')?.length);
  return { id: kind.id, name: value(kind, 'name') ?? '', n, ready };
}

/** @param {any[]} lines @returns {any[]} */
const byName = (lines) =>
  lines.sort((one, other) => natural(String(one.name ?? ''), String(other.name ?? '')));
