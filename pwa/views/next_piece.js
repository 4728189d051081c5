/** Inspecting a bag piece by piece: which one is next? */
import { value } from '../log/workshop.js';
import { pieces } from './holder.js';
import { kindOf } from './kind_of.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

/**
 * The next piece nobody judged yet, after one of the same kind, wrapping round. The holder may
 * also be a part, which is then the only piece.
 * @param {Workshop} workshop
 * @param {string} holder
 * @param {string | null} [after]
 * @param {string | null} [kind]
 */
export function nextPiece(workshop, holder, after = null, kind = null) {
  const asked = workshop.subject(holder);
  const alone = asked?.heading === 'part';
  const found = alone ? [asked] : pieces(workshop, holder);
  const wanted = (kind || idOfKind(workshop.subject(after ?? ''))) ?? firstKind(found);
  const same = inOrder(found.filter((each) => idOfKind(each) === wanted && !emptied(each, alone)));
  const lines = same.map((each, i) => ({
    id: each.id,
    name: plain.text(value(each, 'name')),
    number: i + 1,
    mark: things.mark(each),
  }));
  return {
    holder: alone ? null : holder,
    ...kindOf(workshop, same[0] ?? null),
    piece: pieceOf(same, lines, after, alone),
    pieces: lines,
    left: lines.filter(({ mark }) => mark === 'look').length,
  };
}

/** A counted part whose pieces are all single. @param {Subject} part @param {boolean} alone */
function emptied(part, alone) {
  return !alone && things.emptied(part);
}

/**
 * As they come, then the pieces of each counted part by their numbers.
 * @param {Subject[]} parts
 */
function inOrder(parts) {
  return plain.sorted(parts, (each) => {
    const bag = plain.text(value(each, 'bag'));
    return bag ? [1, bag, plain.whole(value(each, 'number')) ?? 0] : [0];
  });
}

/** @param {Subject | null} subject */
function idOfKind(subject) {
  return plain.text(value(subject, 'kind'));
}

/**
 * The kind of the first piece that was not judged, else of the first piece.
 * @param {Subject[]} found
 */
function firstKind(found) {
  return idOfKind(found.find((each) => things.mark(each) === 'look') ?? found[0] ?? null);
}

/**
 * @param {Subject[]} same
 * @param {{id: string, name: string | null, number: number, mark: string}[]} lines
 * @param {string | null} after
 * @param {boolean} alone
 */
function pieceOf(same, lines, after, alone) {
  const at = lines.findIndex(({ id }) => id === after);
  const turned = [...lines.slice(at + 1), ...lines.slice(0, at + 1)];
  const [line] =
    alone && after === null
      ? lines
      : turned.filter(({ id, mark }) => mark === 'look' && id !== after);
  const part = line && same[line.number - 1];
  if (!line || !part) return null;
  const { id, name, number } = line;
  const quantity = things.quantity(part);
  return { id, name, number, of: lines.length, quantity, verdict: things.verdict(part).word };
}
