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

/** What is in the hand goes from joint to joint. What is on the threads does not: each joint has its own. */
const IN_THE_HAND = ['wrench', 'unit'];

/** @param {Record<string, any> | null | undefined} kept */
const inTheHand = (kept) =>
  Object.fromEntries(Object.entries(kept ?? {}).filter(([name]) => IN_THE_HAND.includes(name)));

/**
 * What a run remembers on this device between screens, and over a kill: the fastener chosen and the
 * lubricant of this joint, the wrench and unit used last at any.
 * @param {any} store
 * @param {string} joint
 * @returns {Promise<Record<string, any>>}
 */
export async function remembered(store, joint) {
  return {
    ...inTheHand(await store.setting('bench')),
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
  const lasting = inTheHand(change);
  await store.setDraft(`bench:${joint}`, { ...was, ...change });
  if (Object.keys(lasting).length) {
    await store.setSetting('bench', { ...inTheHand(await store.setting('bench')), ...lasting });
  }
}
