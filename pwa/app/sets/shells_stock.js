/** The thicknesses there are: of a kind's parts, as they were read, or typed. */
import { value } from '../../log/workshop.js';
import { convert } from '../../trade/units.js';
import { isAway } from '../../views/away.js';
import { measuresOf, sizeOf } from '../../views/measured.js';
import { usedInSets } from '../../views/pool.js';
import * as things from '../../views/things.js';
import { numberOf } from '../forms_fields.js';
import { isIn, kindsIn } from './kinds.js';
import { mmOf } from './shells_model.js';

/** @param {{unit: string | null}} measure */
export const isLength = (measure) => isIn(measure, 'mm');

/** The kinds a length is measured on. @param {any} workshop */
export const lengthKinds = (workshop) => kindsIn(workshop, 'mm');

/** @typedef {ReturnType<typeof stockOf>} Stock */

/**
 * The thicknesses there are: each with how many, and of which parts. Typed ones have no parts.
 * @param {any} workshop
 * @param {any} draft
 */
export function stockOf(workshop, draft) {
  const parts = draft.kind ? listed(workshop, draft.kind) : typedStock(draft);
  const known = parts.filter(({ thick }) => thick !== null);
  /** @type {Map<string, {thick: number, count: number, parts: any[]}>} */
  const groups = new Map();
  for (const part of known) {
    const key = Number(part.thick).toFixed(5);
    const group = groups.get(key) ?? { thick: Number(part.thick), count: 0, parts: [] };
    group.count += part.count;
    group.parts.push(part);
    groups.set(key, group);
  }
  const all = [...groups.values()].sort((one, other) => one.thick - other.thick);
  return { groups: all, unmeasured: draft.kind ? parts.length - known.length : 0 };
}

export const AGAINST = ['scrap', 'machine', 'ask', 'empty'];

/** @param {any} workshop @param {string} kind @returns {{id: string, name: string, count: number, thick: number | null, single: boolean}[]} */
function listed(workshop, kind) {
  const [measure] = measuresOf(workshop.subject(kind)).filter(isLength);
  const used = usedInSets(workshop);
  return workshop
    .all('part')
    .filter(
      (/** @type {any} */ part) =>
        value(part, 'kind') === kind &&
        !AGAINST.includes(things.mark(part)) &&
        !things.isFitted(part) &&
        !isAway(part),
    )
    .map((/** @type {any} */ part) => {
      const size = measure ? sizeOf(part, measure) : null;
      return {
        id: part.id,
        name: value(part, 'name') ?? part.id,
        count: Math.max(0, things.left(part, used.get(part.id)) ?? 0),
        thick: size && convert(size.size, measure?.unit ?? 'mm', 'mm'),
        single: things.quantity(part) === 1,
      };
    });
}

/** @param {any} draft @returns {any[]} */
const typedStock = ({ stock, unit }) =>
  stock.map((/** @type {any} */ row) => ({
    id: null,
    name: '',
    count: Math.max(0, Math.floor(Number(numberOf(row.count ?? '1') ?? 0))),
    thick: mmOf(row.thick, unit),
    single: false,
  }));
