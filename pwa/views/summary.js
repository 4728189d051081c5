/** A joint in short, as a part's record and Tonight list it. */
import { joint } from './joint.js';
import * as plain from './plain.js';

/** @typedef {plain.Workshop} Workshop */

/**
 * A joint in short; role says what the part asking is to it.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {string | null} [role]
 */
export function summary(workshop, id, role = null) {
  const full = joint(workshop, id);
  const passes = full.passes.map(({ id: pass, how, number, values, done, of, state }) => ({
    id: pass,
    how,
    number,
    values,
    done,
    of,
    state,
  }));
  const shown = passes.find((each) => each.id === full.pass) ??
    passes.at(-1) ?? { done: 0, of: full.count };
  const numbers = new Map(full.fasteners.map((each) => [each.id, each.number]));
  const { lubricant, source, cautions, retorque, sequence } = full.programme;
  return {
    id: full.id,
    name: full.name,
    noun: full.noun,
    plural: full.plural,
    count: full.count,
    thread: full.thread,
    pattern: full.pattern,
    invented: full.invented,
    state: full.state,
    pass_number: full.pass_number,
    held_back: full.held_back,
    open: full.open,
    role,
    lubricant,
    source,
    cautions,
    retorque,
    sequence: sequence.map((each) => /** @type {number} */ (numbers.get(each))),
    passes,
    next: full.next?.number ?? null,
    done: shown.done,
    of: shown.of,
    last: full.last?.made ?? null,
    overruled: full.run?.overruled ?? null,
    fastener_notes: full.fasteners
      .filter(({ note }) => note)
      .map(({ number, note }) => ({ number, note })),
    asks: full.asks.length,
  };
}

/** @typedef {ReturnType<typeof summary>} Summary */

/**
 * Joints by their last pull, the latest first; those never pulled by id, last.
 * @param {Summary[]} lines
 */
export function latestFirst(lines) {
  const byId = plain.sorted(lines, ({ id }) => id);
  return byId.sort((one, other) => plain.inOrder(other.last ?? '', one.last ?? ''));
}
