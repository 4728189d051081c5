/** One round of the sync: send what waits, hear what is new, until both hold the same. */

import { absorb, numberOf } from './absorb.js';
import { MOST, nextRequest, ROOM } from './outgoing.js';
import { forget, mayRecover, waitAgain } from './recover.js';
import { refuseHere } from './refused.js';
import { settle } from './settle.js';
import { read } from './transaction.js';
import { packs, post } from './wire.js';

/**
 * @typedef {import('./core.js').Core} Core
 * @typedef {import('./wire.js').Outcome} Outcome
 * @typedef {import('./absorb.js').Answer} Answer
 * @typedef {import('./outgoing.js').Request} Request
 * How a round ended: `home` both hold the same; `later` try again after so many milliseconds (0: by
 * the usual steps); `stop` this device is not known any more, only pairing helps; `anew` it was paired
 * under way, and what the old key was told says nothing of the new one.
 * @typedef {{end: 'home'|'stop'|'anew'} | {end: 'later', after: number, code: string}} Ending
 * @typedef {{most: number, room: number, settled: number,
 *   suspect: {row: {id: string, text: string}, why: {code: string, says: string, next: string}}|null}} Pace
 */

const FOLD_EVERY_MS = 3000;

/** @param {any} body @param {number} sent @returns {body is Answer} */
function isAnswer(body, sent) {
  const lists = Array.isArray(body?.answers) && Array.isArray(body?.entries);
  return lists && body.answers.length === sent && Number.isInteger(body.head) && 'cursor' in body;
}

/** @param {Core} core @returns {Promise<import('./types.js').SyncRow>} */
const syncRow = (core) => read(core, ['meta'], (tx) => tx.objectStore('meta').get('sync'));

/** @param {Core} core @returns {Promise<Ending>} */
export async function round(core) {
  core.pace ??= { most: MOST, room: ROOM, settled: 0, suspect: null };
  const { pace } = core;
  Object.assign(pace, { settled: core.world.now(), suspect: null });
  for (;;) {
    const ending = await turn(core, pace);
    if (ending) {
      await tellFolded(core);
      return ending;
    }
  }
}

/** @param {Core} core */
async function tellFolded(core) {
  const folded = await settle(core);
  if (folded.size) await core.heard(folded);
}

/** @param {Core} core @param {Pace} pace @returns {Promise<Ending|null>} null: go on */
async function turn(core, pace) {
  const { recovering } = await syncRow(core);
  const send = recovering !== 'pull' && !pace.suspect;
  const how = { most: pace.most, room: pace.room, packs: packs(), send };
  const request = await nextRequest(core, how);
  const line = core.line();
  const outcome = await post(line, '/sync', request.text);
  if (core.line().key !== line.key) return { end: 'anew' };
  if (outcome.kind === 'ok' && isAnswer(outcome.body, request.batch.length))
    return accepted(core, pace, request, outcome.body);
  if (outcome.kind === 'problem') return problem(core, pace, request, outcome);
  if (outcome.kind === 'none' && outcome.slow) slower(pace);
  const after = outcome.kind === 'none' ? outcome.after : 0;
  return { end: 'later', after, code: outcome.kind === 'none' ? outcome.code : 'stranger' };
}

/** What took too long is tried in smaller pieces. @param {Pace} pace */
function slower(pace) {
  pace.most = Math.max(1, pace.most >> 1);
  pace.room = Math.max(50, pace.room >> 1);
}

/** @param {Core} core @param {Pace} pace @param {Request} request @param {Answer} answer */
async function accepted(core, pace, request, answer) {
  const taken = await absorb(core, request, answer);
  if (!taken) return null;
  if (pace.suspect) return blame(core, pace);
  pace.most = Math.min(MOST, pace.most * 2);
  await core.heard(taken.touched);
  const done = numberOf(answer.cursor);
  core.state.progress.value = done < answer.head ? { done, of: answer.head } : null;
  if (done < answer.head) return folding(core, pace);
  return atHead(core, taken.sync);
}

/**
 * The computer answers when nothing is sent, so the one entry that was sent is what it will not read.
 * @param {Core} core @param {Pace} pace
 */
async function blame(core, pace) {
  if (pace.suspect) await refuseHere(core, pace.suspect.row, pace.suspect.why);
  pace.suspect = null;
  return null;
}

/** @param {Core} core @param {Pace} pace */
async function folding(core, pace) {
  if (core.world.now() - pace.settled < FOLD_EVERY_MS) return null;
  await tellFolded(core);
  pace.settled = core.world.now();
  return null;
}

/** @param {Core} core @param {import('./types.js').SyncRow} sync */
async function atHead(core, sync) {
  if (sync.recovering === 'pull') {
    await waitAgain(core);
    await core.refresh();
    return null;
  }
  const waiting = await read(core, ['outbox'], (tx) => tx.objectStore('outbox').count());
  if (waiting) return null;
  if (sync.agreed !== null || !mayRecover(sync, core.world.now()))
    return /** @type {Ending} */ ({ end: 'home' });
  await forget(core);
  return null;
}

/**
 * @param {Core} core @param {Pace} pace @param {Request} request
 * @param {Extract<Outcome, {kind: 'problem'}>} outcome
 * @returns {Promise<Ending|null>}
 */
async function problem(core, pace, request, outcome) {
  const { status, code, after } = outcome;
  const [row] = request.batch;
  if (status === 401) return stopped(core, code);
  if (status === 429 || (!row && request.cursor === null))
    return { end: 'later', after, code: code || 'stranger' };
  if (status === 409) return forgotten(core);
  if (!row) return cursorUnread(core, pace, outcome);
  if (request.batch.length > 1) pace.most = Math.ceil(request.batch.length / 2);
  else suspect(pace, row, outcome);
  return null;
}

/** @param {Core} core @param {string} code @returns {Promise<Ending>} */
async function stopped(core, code) {
  await core.lapsed(code === 'device-revoked' ? 'revoked' : 'unknown');
  return { end: 'stop' };
}

/** @param {Core} core @returns {Promise<null>} */
async function forgotten(core) {
  await forget(core);
  return null;
}

/**
 * Nothing was sent, so only the cursor can be at fault, if this is the computer at all.
 * @param {Core} core @param {Pace} pace @param {{status: number, code: string, after: number}} outcome
 * @returns {Promise<Ending|null>}
 */
async function cursorUnread(core, pace, { status, code, after }) {
  pace.suspect = null;
  if (status === 422 && code && mayRecover(await syncRow(core), core.world.now()))
    return forgotten(core);
  return { end: 'later', after, code: code || 'stranger' };
}

/**
 * Before one entry is given the blame: does the computer answer when nothing is sent at all? A
 * strange network that answers everything with an error must not turn entries into refused ones.
 * @param {Pace} pace @param {{id: string, text: string}} row
 * @param {{code: string, says: string, next: string}} why
 */
function suspect(pace, row, { code, says, next }) {
  const why = {
    code: code || 'too-much',
    says: says || 'The computer could not read this entry.',
    next: next || 'Enter it again, or strike it out.',
  };
  pace.suspect = { row, why };
}
