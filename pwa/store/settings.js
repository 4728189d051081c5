/** What a person set on this device, and forms left half done. Neither is part of the log. */

import { put, read, remove, write } from './transaction.js';

/** @typedef {import('./core.js').Core} Core */

/** @param {Core} core @param {string} name @param {any} value */
export async function setSetting(core, name, value) {
  await write(core, ['setting'], 'relaxed', async (tx) => put(tx, 'setting', value, name));
  core.settings.set(name, value);
  core.say({ setting: name, value });
  for (const listener of core.listeners) listener(new Set());
}

/** @param {Core} core @param {string} name */
export const draft = (core, name) =>
  read(core, ['draft'], async (tx) => (await tx.objectStore('draft').get(name)) ?? null);

/**
 * Keeps what a screen has so far, so that a killed page comes back to the same place.
 * @param {Core} core @param {string} name @param {any} value null: done with
 */
export const setDraft = (core, name, value) =>
  write(core, ['draft'], 'relaxed', async (tx) => {
    if (value === null || value === undefined) remove(tx, 'draft', name);
    else put(tx, 'draft', value, name);
  });

/** @param {Core} from @param {Core} to a second workshop on the same device begins with its settings */
export async function copySettings(from, to) {
  await write(to, ['setting'], 'relaxed', async (tx) => {
    for (const [name, value] of from.settings) put(tx, 'setting', value, name);
  });
  to.settings = new Map(from.settings);
}
