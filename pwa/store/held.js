/** Remembers the last few answers until something is written, so that a label's thing is read once. */

import { standing } from '../log/workshop.js';

/**
 * @typedef {ReturnType<typeof import('../log/workshop.js').Workshop>} Workshop
 * @typedef {Promise<Workshop>} Answer
 */

const MOST = 8;

/** @param {{writes: number}} core */
export function makeHeld(core) {
  /** @type {Map<string, {writes: number, answer: Answer, workshop: Workshop | null}>} */
  const answers = new Map();

  /** @param {string} key @param {number} writes how many there were when it was asked @param {Answer} answer */
  function hold(key, writes, answer) {
    /** @type {{writes: number, answer: Answer, workshop: Workshop | null}} */
    const row = { writes, answer, workshop: null };
    answers.delete(key);
    answers.set(key, row);
    const [oldest] = answers.keys();
    if (answers.size > MOST && oldest !== undefined) answers.delete(oldest);
    return row;
  }

  /**
   * @param {string} key @param {() => Answer} ask
   * @returns {Answer} the same answer as long as nothing was written since it was asked
   */
  function answer(key, ask) {
    const had = answers.get(key);
    if (had?.writes === core.writes) return had.answer;
    const fresh = ask();
    const row = hold(key, core.writes, fresh);
    fresh.then(
      (workshop) => {
        row.workshop = workshop;
      },
      () => answers.delete(key),
    );
    return fresh;
  }

  /** What has been read already and still holds, without waiting. @param {string} key */
  function known(key) {
    const had = answers.get(key);
    return had?.writes === core.writes ? had.workshop : null;
  }

  /**
   * What a label marks has been read with it, and is asked for next.
   * @param {string} sign @param {() => Answer} ask
   */
  function ofLabel(sign, ask) {
    const { writes } = core;
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
