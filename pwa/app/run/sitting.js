/** What belongs to being at the bench now and not to the record: who is here, what was told already. */

/**
 * @typedef {{passSeen: string | null, unsourced: Set<string>}} Sitting
 */

/** @type {Map<string, Sitting>} */
const sittings = new Map();

/** @param {string} run @returns {Sitting | null} null when the person has yet to come back to this run */
export const sitting = (run) => sittings.get(run) ?? null;

/** @param {string} run @param {string | null} pass */
export function sitDown(run, pass) {
  sittings.set(run, { passSeen: pass, unsourced: new Set() });
}

/** @param {string} run */
export function getUp(run) {
  sittings.delete(run);
}

/**
 * What a run remembers on this device between screens, and over a kill: the fastener chosen, the
 * wrench and unit used last, the lubricant.
 * @param {any} store
 * @param {string} joint
 * @returns {Promise<Record<string, any>>}
 */
export async function remembered(store, joint) {
  return {
    ...((await store.setting('bench')) ?? {}),
    ...((await store.draft(`bench:${joint}`)) ?? {}),
  };
}

/**
 * @param {any} store
 * @param {string} joint
 * @param {Record<string, any>} change
 */
export async function remember(store, joint, change) {
  const was = (await store.draft(`bench:${joint}`)) ?? {};
  const { chosen, ...lasting } = change;
  await store.setDraft(`bench:${joint}`, { ...was, ...change });
  if (Object.keys(lasting).length) {
    await store.setSetting('bench', { ...((await store.setting('bench')) ?? {}), ...lasting });
  }
}
