/**
 * Remembers the last few answers, so that a label's thing is read once. What was written since is
 * put in its place where it cannot have changed what else belongs to the answer; else all is read anew.
 */

import { standing } from '../log/workshop.js';
import { makeLatest, mendable, mended, sizeOf } from './mended.js';

/**
 * @typedef {ReturnType<typeof import('../log/workshop.js').Workshop>} Workshop
 * @typedef {Promise<Workshop>} Answer
 * @typedef {import('./mended.js').Belongs} Belongs
 * @typedef {{writes: number, answer: Answer, workshop: Workshop | null}} Row
 */

const MOST = 12;

/** More things than this are not remembered beside the screen that shows them. */
const LARGE = 3000;

/** @param {import('./core.js').Core} core */
export function makeHeld(core) {
  const { written } = core;
  const latest = makeLatest(core);
  /** @type {Map<string, Row>} */
  const answers = new Map();

  /** @param {string} key @param {number} writes how many there were when it was asked @param {Answer} answer */
  function hold(key, writes, answer) {
    /** @type {Row} */
    const row = { writes, answer, workshop: null };
    answers.delete(key);
    answers.set(key, row);
    const [oldest] = answers.keys();
    if (answers.size > MOST && oldest !== undefined) answers.delete(oldest);
    return row;
  }

  /** @param {string} key @param {Row} row */
  function drop(key, row) {
    if (answers.get(key) === row) answers.delete(key);
  }

  /**
   * The same answer as long as nothing was written that it may hold.
   * @param {string} key @param {() => Answer} ask
   * @param {Belongs} [belongs] whether a thing that was not in the answer may be in it now; without
   *   it the answer is never mended
   * @returns {Answer}
   */
  function answer(key, ask, belongs) {
    const had = answers.get(key);
    const touched = had ? written.since(had.writes) : null;
    if (had && touched?.size === 0) {
      had.writes = written.count();
      return had.answer;
    }
    const writes = written.count();
    const was = had?.workshop;
    const mends = was && touched && belongs && mendable(was, touched);
    const fresh = mends ? latest(touched).then((now) => mended(was, now, belongs) ?? ask()) : ask();
    const row = hold(key, writes, fresh);
    fresh.then(
      (workshop) => {
        row.workshop = workshop;
        if (sizeOf(workshop) > LARGE) drop(key, row);
      },
      () => drop(key, row),
    );
    return fresh;
  }

  /** What has been read already and still holds, without waiting. @param {string} key */
  function known(key) {
    const had = answers.get(key);
    return had && written.since(had.writes)?.size === 0 ? had.workshop : null;
  }

  /**
   * What a label marks has been read with it, and is asked for next.
   * @param {string} sign @param {() => Answer} ask
   */
  function ofLabel(sign, ask) {
    const writes = written.count();
    return answer(`code ${sign}`, async () => {
      const workshop = await ask();
      for (const { body } of standing(workshop.subject(sign), 'label')) {
        const thing = workshop.subject(body.marks);
        if (!thing) continue;
        const row = hold(`${thing.heading} ${thing.id}`, writes, Promise.resolve(workshop));
        row.workshop = workshop;
      }
      return workshop;
    });
  }

  return { answer, known, ofLabel };
}
