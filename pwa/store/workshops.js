/** One database a workshop: a device never sends the entries of one to the computer of another. */

import { wake } from './core.js';
import { askForKey, takeKey, workshopOf } from './pairing.js';
import { copySettings } from './settings.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {Awaited<ReturnType<typeof import('./database.js').openDirectory>>} Directory
 */

/**
 * Pairs, and if the computer keeps another workshop than this database, goes over to that one's.
 * Entries made before the first pairing are adopted by the first workshop.
 * @param {Core} core @param {Directory|null} directory
 * @param {{code: string, name: string, url?: string}} asked
 */
export async function move(core, directory, asked) {
  const pairing = await askForKey(core, asked);
  const here = await workshopOf(core);
  const { workshop } = pairing;
  if (here !== undefined && here !== workshop) await goOver(core, directory, workshop);
  await directory?.choose(workshop, core.name);
  await takeKey(core, pairing);
}

/** @param {Core} core @param {Directory|null} directory @param {string} workshop */
async function goOver(core, directory, workshop) {
  const settings = new Map(core.settings);
  const name = (await directory?.of(workshop)) ?? `${core.name.split(' ')[0]} ${workshop}`;
  (await core.open()).close();
  core.closed();
  core.name = name;
  core.pairing = null;
  await wake(core);
  if (!core.settings.size) await copySettings({ ...core, settings }, core);
}
