/** What was sent out together comes back together. */
import { day } from '../dates.js';

/** What tells one box from another: with whom, for what, when sent and due, at what price. @param {any} line */
const boxOf = ({ to, for: what, due, made, price, note }) =>
  JSON.stringify([to, what, due, day(made), price, note]);

/**
 * Sendings that went in one box, in the order of their first.
 * @param {any[]} out lines of `views/away`
 * @returns {any[][]}
 */
export function batchesOf(out) {
  /** @type {Map<string, any[]>} */
  const boxes = new Map();
  for (const line of out) {
    const box = boxOf(line);
    boxes.set(box, [...(boxes.get(box) ?? []), line]);
  }
  return [...boxes.values()];
}
