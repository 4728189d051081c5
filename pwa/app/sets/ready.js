/** The search made ready in idle time, so that the first set somebody waits for finds it translated. */
import { best } from '../../trade/sets.js';

const TURNS = 6;
const MEASURES = [{ name: 'one' }, { name: 'other' }];
const POOL = Array.from({ length: 40 }, (_, at) => ({
  name: String(at),
  sizes: [(at * 7919) % 97, (at * 104729) % 89],
}));

/** @type {Promise<void> | null} */
let warming = null;

const idle = globalThis.requestIdleCallback ?? ((fn) => setTimeout(fn, 200));

/** Runs the search over made-up sizes, a little at a time; once a page. */
export function warm() {
  warming ??= turns();
  return warming;
}

async function turns() {
  for (let turn = 0; turn < TURNS; turn += 1) {
    await new Promise((resolve) => idle(resolve));
    best(POOL, MEASURES, 10);
  }
}
