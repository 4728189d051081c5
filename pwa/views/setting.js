/** What a wrench is set to for a target: through the adapter, at its marks, and what arrives. */
import { value } from '../log/workshop.js';
import { setting } from '../trade/adapter.js';
import { convert, quantityOf, rounded, TORQUE_WORDS } from '../trade/units.js';
import * as wrench from '../trade/wrench.js';
import * as plain from './plain.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Measured} Measured */
/** @typedef {{low: string, high: string, unit: string}} Band */
/**
 * @typedef {{name: string | null, adapter_length: Measured | null, wrench_length: Measured | null,
 *   angle: Measured | null}} Adapter
 * @typedef {{unit: string | null, least: string | null, most: string | null,
 *   graduation: string | null}} Tool
 */

const EXACT = 6;
const MOST_DECIMALS = 4;
const COARSE_FROM = 10;

/**
 * The adapter of a joint, or the one that stood before an order; text alone has no lengths.
 * @param {Subject | null} joint
 * @param {string | null} [before]
 * @returns {Adapter | null}
 */
export function adapter(joint, before = null) {
  if (before === null || !joint) return read(value(joint, 'adapter'));
  const field = joint.fields.adapter;
  if (!field) return null;
  return read([field, ...field.lost].find(({ order }) => order <= before)?.value ?? null);
}

/**
 * @param {unknown} kept
 * @returns {Adapter | null}
 */
function read(kept) {
  const name = plain.text(typeof kept === 'string' ? kept : plain.mapping(kept).name);
  const facts = plain.mapping(kept);
  if (!Object.keys(facts).length && !(typeof kept === 'string' && name)) return null;
  return {
    name,
    adapter_length: plain.measured(facts.adapter_length),
    wrench_length: plain.measured(facts.wrench_length),
    angle: plain.measured(facts.angle),
  };
}

/**
 * Setting at the wrench over torque at the bolt; null where the lengths say nothing.
 * @param {Adapter | null} found
 * @returns {number | null}
 */
export function ratio(found) {
  const long = plain.quantity(found?.wrench_length);
  const reach = plain.quantity(found?.adapter_length);
  const angle = plain.quantity(found?.angle);
  if (!long || !reach || !angle) return null;
  try {
    return setting(1, size(long, 'mm'), size(reach, 'mm'), size(angle, '°'));
  } catch {
    return null;
  }
}

/** @param {Measured} amount @param {string} unit */
const size = (amount, unit) => convert(Number(amount.value), amount.unit, unit);

/**
 * What to set for a target at the bolt; the target itself without an adapter of known lengths.
 * @param {Measured} target
 * @param {Adapter | null} found
 * @returns {Measured}
 */
export function atWrench(target, found) {
  const times = ratio(found);
  if (times === null || times === 1 || quantityOf(target.unit) !== 'torque') return target;
  return { value: rounded(Number(target.value) * times, EXACT), unit: target.unit };
}

/**
 * What a reading at the wrench was at the bolt; null where the adapter's lengths say nothing.
 * @param {Measured} reading
 * @param {Adapter | null} found
 * @returns {Measured | null}
 */
export function atBolt(reading, found) {
  const times = ratio(found);
  if (times === null) return null;
  if (times === 1 || quantityOf(reading.unit) !== 'torque') return reading;
  return { value: rounded(Number(reading.value) / times, EXACT), unit: reading.unit };
}

/**
 * What this wrench is set to, its nearest mark, and what the mark is at the bolt.
 * @param {Tool} tool
 * @param {Measured | null} target
 * @param {Adapter | null} found
 */
export function settingLine(tool, target, found) {
  /** @type {{set: Measured | null, mark: Measured | null, at_bolt: Measured | null, off: string | null}} */
  const nothing = { set: null, mark: null, at_bolt: null, off: null };
  const wanted = plain.quantity(target);
  const unit = tool.unit ?? '';
  if (!wanted || !TORQUE_WORDS.includes(unit)) return nothing;
  try {
    const aim = size(atWrench(wanted, found), unit);
    return { ...nothing, ...marked(tool, wanted, aim, ratio(found) ?? 1) };
  } catch {
    return nothing;
  }
}

/** @type {(tool: Tool, wanted: Measured, aim: number, times: number) => object} */
function marked(tool, wanted, aim, times) {
  const unit = tool.unit ?? '';
  const end = (/** @type {string | null} */ text) => plain.quantity({ value: text, unit });
  const [step, least, most] = [end(tool.graduation), end(tool.least), end(tool.most)];
  const line = { set: { value: shown(aim), unit } };
  if (!step) return line;
  const { settable_N_m: mark, error } = wrench.settable(
    aim,
    Number(step.value),
    least && Number(least.value),
    most && Number(most.value),
  );
  const decimals = Math.max(decimalsOf(step), least ? decimalsOf(least) : 0);
  return {
    ...line,
    mark: { value: rounded(mark, Math.min(decimals, MOST_DECIMALS)), unit },
    at_bolt: { value: shown(convert(mark / times, unit, wanted.unit)), unit: wanted.unit },
    off: rounded(error * 100, 1),
  };
}

/** @param {Measured} amount */
const decimalsOf = ({ value: text }) => text.split('.')[1]?.length ?? 0;

/**
 * A torque that was worked out, with the digits it is worth reading.
 * @param {number} amount
 */
export const shown = (amount) => rounded(amount, Math.abs(amount) >= COARSE_FROM ? 1 : 2);

/**
 * Least and most a pull may really have applied at the bolt, by its wrench's deviation; found is the
 * adapter that stood when it was pulled. Null where wrench or value are not known.
 * @param {plain.Facts} body
 * @param {Adapter | null} found
 * @param {number | null} share
 * @returns {Band | null}
 */
export function applied(body, found, share) {
  const target = plain.quantity(body.target);
  if (share === null || !target || !TORQUE_WORDS.includes(target.unit)) return null;
  let reading = plain.quantity(body.reading);
  if (reading && found && body.read_at === 'set') reading = atBolt(reading, found);
  const { unit } = target;
  try {
    const band = wrench.applied(size(reading ?? target, unit), share);
    return { low: shown(band.low_N_m), high: shown(band.high_N_m), unit };
  } catch {
    return null;
  }
}

/**
 * From the least to the most of several bands in one unit; null where one is not known.
 * @param {(Band | null)[]} bands
 * @returns {Band | null}
 */
export function span(bands) {
  const known = bands.filter((each) => each !== null);
  const [first] = known;
  if (!first || known.length < bands.length) return null;
  if (known.some(({ unit }) => unit !== first.unit)) return null;
  const low = known.map((each) => each.low).reduce((a, b) => (Number(b) < Number(a) ? b : a));
  const high = known.map((each) => each.high).reduce((a, b) => (Number(b) > Number(a) ? b : a));
  return { low, high, unit: first.unit };
}
