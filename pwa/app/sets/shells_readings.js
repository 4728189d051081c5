/** Readings that may fill the places: of one part by position, or of a kind part by part. */
import { value } from '../../log/workshop.js';
import { convert } from '../../trade/units.js';
import { measured } from '../../views/measured.js';
import * as things from '../../views/things.js';
import { byName } from '../words.js';
import { AGAINST, isLength, lengthKinds } from './shells_stock.js';

/**
 * Readings that may fill a column: of one part by position, or of a kind part by part, in mm.
 * @param {any} workshop
 * @returns {{id: string, name: string, list: {name: string, mm: number}[]}[]}
 */
export const readingsOf = (workshop) =>
  lengthKinds(workshop).flatMap((kind) => {
    const parts = workshop
      .all('part')
      .filter(
        (/** @type {any} */ part) =>
          value(part, 'kind') === kind.id && !AGAINST.includes(things.mark(part)),
      );
    return kind.measures.flatMap((measure) => {
      const read = parts.map((/** @type {any} */ part) => ({
        part,
        spots: spotsOf(workshop, part.id, measure.id),
      }));
      const several = read.filter((/** @type {any} */ { spots }) => spots.length > 1);
      const single = read.filter((/** @type {any} */ { spots }) => spots.length === 1);
      return [
        ...several.map((/** @type {any} */ { part, spots }) => ({
          id: `${part.id} ${measure.id}`,
          name: `${value(part, 'name')}: ${measure.name ?? ''}`,
          list: spots,
        })),
        ...(single.length
          ? [
              {
                id: `${kind.id} ${measure.id}`,
                name: `${kind.name}: ${measure.name ?? ''}`,
                list: single.map((/** @type {any} */ { part, spots }) => ({
                  mm: spots[0].mm,
                  name: value(part, 'for') ?? value(part, 'from') ?? value(part, 'name') ?? '',
                })),
              },
            ]
          : []),
      ];
    });
  });

/** The mean of the latest readings at each position. @param {any} workshop @param {string} part @param {string} measure @returns {{name: string, mm: number}[]} */
function spotsOf(workshop, part, measure) {
  const line = measured(workshop, part).find(({ id }) => id === measure);
  const round = line?.rounds.find((one) => !one.struck && one.size !== null);
  /** @type {Map<string, number[]>} */
  const spots = new Map();
  for (const { position, value: size, unit } of round?.readings ?? []) {
    if (size === null || !isLength({ unit })) continue;
    const name = position ?? '';
    const mm = convert(Number(size), String(unit), 'mm');
    spots.set(name, [...(spots.get(name) ?? []), mm]);
  }
  return [...spots]
    .map(([name, all]) => ({ name, mm: all.reduce((sum, one) => sum + one, 0) / all.length }))
    .sort(byName);
}
