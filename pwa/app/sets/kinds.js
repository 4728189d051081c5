/** The kinds on which a length, a weight or the like is measured. */
import { value } from '../../log/workshop.js';
import { measuresOf } from '../../views/measured.js';
import { sameSort } from '../../views/reading.js';
import { byName } from '../words.js';

/** Whether a measure is read in units of this sort. @param {{unit: string | null}} measure @param {string} unit */
export const isIn = (measure, unit) => sameSort(measure.unit ?? '', unit);

/**
 * The kinds with measures in units of this sort, by name.
 * @param {any} workshop
 * @param {string} unit
 * @returns {{id: string, name: string, ownPlace: boolean, measures: ReturnType<typeof measuresOf>}[]}
 */
export const kindsIn = (workshop, unit) =>
  workshop
    .all('kind')
    .map((/** @type {any} */ kind) => ({
      id: kind.id,
      name: value(kind, 'plural') ?? value(kind, 'name') ?? '',
      ownPlace: value(kind, 'own_place') === true,
      measures: measuresOf(kind).filter((one) => isIn(one, unit)),
    }))
    .filter((/** @type {any} */ kind) => kind.measures.length > 0)
    .sort(byName);
