/** When to sync: at once when something happened, every minute, and in longer steps when it does not work. */

import { WitnessmarkError } from '../errors.js';
import { syncPhotos } from './photo_sync.js';
import { round } from './sync.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./sync.js').Ending} Ending
 */

const FIRST_MS = 2000;
const LONGEST_MS = 5 * 60_000;
export const MINUTE_MS = 60_000;

/**
 * The pause before try number `tries`: 2 s, doubling to 5 min, less up to a half by chance, so that
 * several phones do not knock together. What the computer asked for is kept to.
 * @param {number} tries 1 for the first @param {number} asked milliseconds, 0 if nothing was asked
 * @param {number} chance 0 to 1
 */
export function pause(tries, asked, chance) {
  const step = Math.min(LONGEST_MS, FIRST_MS * 2 ** (tries - 1));
  return Math.max(asked, step * (1 - chance / 2));
}

/** @param {Core} core */
const mayTry = (core) => core.pairing?.key && core.pairing.state === 'yes';

/**
 * @param {Core} core
 * @param {{arm: (ms: number, fire: () => void) => () => void, chance: () => number}} timers
 */
export function makeSchedule(core, { arm, chance }) {
  let tries = 0;
  let again = false;
  /** @type {Promise<void>|null} */
  let running = null;
  let disarm = () => undefined;
  let stopped = false;
  /** Tells who waits for it that something happened. @type {() => void} */
  let wake = () => undefined;

  /** @param {Ending} ending */
  function next(ending) {
    tries = ending.end === 'later' ? tries + 1 : 0;
    core.state.trouble.value = ending.end === 'later' ? ending.code : null;
    const wait = ending.end === 'later' ? pause(tries, ending.after, chance()) : MINUTE_MS;
    disarm();
    if (!stopped && ending.end !== 'stop')
      disarm = /** @type {any} */ (arm(wait, () => void now()));
  }

  /** What happened is being seen to; whether there is still somebody to see to it. */
  const calm = () => {
    again = false;
    return !stopped;
  };

  async function attempt() {
    calm();
    const held = await core.world.lock(`witnessmark ${core.name}`, () => once(core, next, calm));
    if (held) return;
    core.say({ please: 'sync' });
    next({ end: 'home' });
  }

  async function attempts() {
    do await attempt();
    while (again && !stopped);
  }

  /** Syncs now, or once more after the round that is under way. */
  function now() {
    if (stopped || !mayTry(core)) return Promise.resolve();
    if (running) {
      again = true;
      wake();
      return running;
    }
    running = attempts().finally(() => {
      running = null;
    });
    return running;
  }

  core.stirred = () => again || stopped;
  core.stirring = () =>
    core.stirred()
      ? Promise.resolve()
      : new Promise((resolve) => {
          wake = resolve;
        });
  const stop = () => {
    stopped = true;
    wake();
    disarm();
  };
  return { now, stop };
}

/** Entries: sent and heard until both hold the same. @param {Core} core @param {(ending: Ending) => void} next */
async function entries(core, next) {
  const ending = await round(core);
  next(ending);
  await core.refresh();
  return ending.end === 'home';
}

/** @param {Core} core @param {(ending: Ending) => void} next @param {() => boolean} calm */
async function once(core, next, calm) {
  core.state.syncing.value = true;
  const goOn = async () => calm() && (await entries(core, next));
  try {
    if (await entries(core, next)) await syncPhotos(core, goOn);
  } catch (error) {
    // Whatever it was (a full disk, a store the browser closed), the next try must come.
    core.world.report(error);
    next({
      end: 'later',
      after: 0,
      code: error instanceof WitnessmarkError ? error.code : 'broke',
    });
  } finally {
    core.state.syncing.value = false;
    core.state.progress.value = null;
  }
}
