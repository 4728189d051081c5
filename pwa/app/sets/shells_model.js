/** What goes where from stock: places with their room, the owner's window, and the choice between thicknesses. */

import { choose } from '../../trade/choosing.js';
import { convert } from '../../trade/units.js';
import { numberOf } from '../forms_fields.js';

/** How many of one thickness stand in a place, by what they are. */
export const PIECES = Object.freeze(
  /** @type {Record<string, number>} */ ({ shells: 2, one: 1, two: 2 }),
);

/** The figures a place is known by. @param {string} what */
export const columnsOf = (what) => (what === 'shells' ? ['bore', 'journal'] : ['gap']);

/** Nothing said yet; no clearance is ours to give. @type {Record<string, any>} */
export const FRESH = Object.freeze({
  what: 'shells',
  unit: 'mm',
  called: '',
  rows: [{}, {}, {}],
  least: '',
  most: '',
  aim: '',
  source: '',
  kind: '',
  stock: [{}, {}],
  build: null,
});

/** Three figures behind one separator: 56.012 mm is no length in thousands. */
const THREES = /^(\d+[.,]\d{3})$/;

/** A typed length in mm, or null. @param {string | undefined} typed @param {string} unit */
export function mmOf(typed, unit) {
  const kept = numberOf((typed ?? '').trim().replace(THREES, '$10'));
  return kept === null ? null : convert(Number(kept), unit, 'mm');
}

/** A length as it would be typed. @param {number} mm @param {string} unit */
export const typedOf = (mm, unit) =>
  String(Number(convert(mm, 'mm', unit).toFixed(unit === 'mm' ? 4 : 5)));

/** @param {any} draft @param {number} at */
export const placeName = ({ rows, called }, at) =>
  rows[at]?.name || [called.trim(), at + 1].filter(Boolean).join(' ');

/** Each place with the room there is without the pieces, or null while it is not typed. @param {any} draft @returns {{name: string, room: number | null}[]} */
export const roomsOf = (draft) =>
  draft.rows.map((/** @type {any} */ row, /** @type {number} */ at) => {
    const [outer, inner] = columnsOf(draft.what).map((word) => mmOf(row[word], draft.unit));
    const whole = draft.what === 'shells' ? inner !== null && inner !== undefined : true;
    const known = outer !== null && outer !== undefined && whole;
    return { name: placeName(draft, at), room: known ? outer - (inner ?? 0) : null };
  });

/** The owner's window in mm, and what is aimed at: as said, else its middle. @param {any} draft */
export function windowOf({ least, most, aim, unit }) {
  const [leastMm = null, mostMm = null, said = null] = [least, most, aim].map((typed) =>
    mmOf(typed, unit),
  );
  const middle = leastMm === null || mostMm === null ? null : (leastMm + mostMm) / 2;
  return { leastMm, mostMm, target: said ?? middle };
}

/**
 * Which goes where; or what is still wanted, or why it cannot be.
 * @param {any} draft
 * @param {import('./shells_stock.js').Stock} stock
 */
export function chosenFrom(draft, stock) {
  const rooms = roomsOf(draft).filter(({ room }) => room !== null);
  const { target, ...ends } = windowOf(draft);
  const told = {
    wants: '',
    trouble: '',
    lacks: 0,
    target: Number(target),
    places: /** @type {any[]} */ ([]),
  };
  if (!rooms.length) return { ...told, wants: 'place' };
  if (target === null) return { ...told, wants: 'window' };
  if (!stock.groups.length) return { ...told, wants: 'stock' };
  const pieces = Number(PIECES[draft.what]);
  const counts = stock.groups.map(({ count }) => Math.floor(count / pieces));
  const gaps = rooms.map(({ room }) => Number(room));
  const thick = stock.groups.map((one) => one.thick);
  try {
    const { places } = choose(gaps, thick, target, { counts, pieces, ...ends, mayLack: true });
    const lacks = Math.max(0, gaps.length - counts.reduce((sum, one) => sum + one, 0));
    return { ...told, lacks, places: dealt(places, rooms, stock, pieces) };
  } catch (error) {
    const { says, next } = /** @type {any} */ (error);
    if (!says) throw error;
    return { ...told, trouble: `${says} ${next}` };
  }
}

/** The parts themselves, each taken as often as it is there. @param {readonly any[]} found @param {any[]} rooms @param {import('./shells_stock.js').Stock} stock @param {number} times @returns {any[]} */
function dealt(found, rooms, stock, times) {
  const left = stock.groups.map(({ parts }) =>
    parts.flatMap((part) => new Array(part.count).fill(part)),
  );
  return found.map((one, at) => ({
    ...one,
    name: rooms[at].name,
    thick: one.piece === null ? null : stock.groups[one.piece - 1]?.thick,
    parts: one.piece === null ? [] : (left[one.piece - 1]?.splice(0, times) ?? []),
  }));
}
