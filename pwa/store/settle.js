/** Folds what a large pull left marked, a few hundred things at a time. */

import { FOLDING, refold } from './fold.js';
import { write } from './transaction.js';

const BATCH = 250;

/** @param {import('./core.js').Core} core @returns {Promise<Set<string>>} what was folded */
export async function settle(core) {
  const all = new Set();
  for (;;) {
    const ids = await write(core, FOLDING, 'relaxed', async (tx) => {
      const found = await tx.objectStore('dirty').getAllKeys(undefined, BATCH);
      await refold(tx, found);
      return found;
    });
    for (const id of ids) all.add(id);
    if (ids.length < BATCH) return all;
  }
}
