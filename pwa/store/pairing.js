/** Who this device is to which computer. */

import { WitnessmarkError } from '../errors.js';
import { freshSync } from './core.js';
import { put, read, write } from './transaction.js';
import { post } from './wire.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./types.js').Pairing} Pairing
 */

/** What the computer said to a code, or that it was not there. */
export class NotPaired extends WitnessmarkError {
  static code = 'not-connected';
  static says = 'The computer does not answer.';
  static nextStep = 'Is it awake, and is this phone in the same network? Then try again.';

  /** @param {{code?: string, says?: string, next?: string, after?: number}} [said] */
  constructor({ code, says, next, after = 0 } = {}) {
    super();
    this.code = code || this.code;
    this.says = says || this.says;
    this.message = this.says;
    this.next = next || this.next;
    this.after = after;
  }
}

/**
 * @param {Core} core @param {{code: string, name: string, url?: string}} asked
 * @returns {Promise<Pairing & {name: string}>}
 */
export async function askForKey(core, { code, name, url = '' }) {
  const line = { fetch: core.world.fetch, url, key: null };
  const outcome = await post(line, '/pair', JSON.stringify({ code, name }));
  if (outcome.kind === 'problem') throw new NotPaired(outcome);
  if (outcome.kind !== 'ok' || typeof outcome.body?.key !== 'string') throw new NotPaired();
  const { device, key, workshop } = outcome.body;
  return { device, key, workshop, name, url, state: 'yes' };
}

/** @param {Core} core @returns {Promise<string|undefined>} the workshop whose entries lie here, if any */
export const workshopOf = (core) =>
  read(core, ['meta'], async (tx) => (await tx.objectStore('meta').get('pairing'))?.workshop);

/**
 * Takes the key. Entries made before keep the mark of the device that made them; from now on
 * this is the device the computer gave, counting from one.
 * @param {Core} core @param {Pairing} pairing
 */
export async function takeKey(core, pairing) {
  await write(core, ['meta'], 'strict', async (tx) => {
    const meta = tx.objectStore('meta');
    const [clock, sync] = await Promise.all([meta.get('clock'), meta.get('sync')]);
    put(tx, 'meta', pairing, 'pairing');
    put(tx, 'meta', { ...clock, device: pairing.device, n: 0 }, 'clock');
    put(tx, 'meta', sync ?? freshSync(), 'sync');
  });
  core.pairing = pairing;
}

/**
 * Gives up the key, nothing else: entries stay, and wait for the next pairing with that workshop.
 * @param {Core} core
 */
export async function forgetPairing(core) {
  if (!core.pairing) return;
  const pairing = { ...core.pairing, key: null, state: /** @type {const} */ ('unknown') };
  await write(core, ['meta'], 'strict', async (tx) => put(tx, 'meta', pairing, 'pairing'));
  core.pairing = pairing;
  core.say({ pairing: true });
  await core.refresh();
}
