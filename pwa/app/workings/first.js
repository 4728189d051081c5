/** What the record a working was opened from knows of its numbers: the thread, the torque, the state. */
import { value } from '../../log/workshop.js';
import { useAnswer } from '../frame/index.js';
import { choiceOf } from '../lubricants.js';

/** @typedef {import('./use_working.js').First} First */

/** @param {string} about @returns {First | null} null while it is read */
export function useFirst(about) {
  const { state, value: first } = useAnswer(
    (store) =>
      about ? store.jointSlice(about).then((/** @type {any} */ w) => firstOf(w, about)) : NOTHING(),
    [about],
  );
  return state === 'wait' ? null : (first ?? { typed: {} });
}

/** @returns {Promise<First>} */
const NOTHING = async () => ({ typed: {} });

/** @param {any} workshop @param {string} about @returns {First} */
function firstOf(workshop, about) {
  const subject = workshop.subject(about);
  if (subject?.heading !== 'joint') return { typed: {} };
  const programme = value(subject, 'programme') ?? {};
  const known = { ...throughAdapter(value(subject, 'adapter')), ...targetOf(programme) };
  const typed = {
    thread: value(subject, 'thread') ?? '',
    class: value(subject, 'strength_class') ?? '',
    lubricant: choiceOf(programme.lubricant ?? ''),
    'value-for': choiceOf(programme.lubricant ?? ''),
    ...mapped(known, (each) => each.value),
  };
  return { typed, units: mapped(known, (each) => each.unit) };
}

/**
 * @template T
 * @param {Record<string, T>} known
 * @param {(each: T) => string} part
 * @returns {Record<string, string>}
 */
const mapped = (known, part) =>
  Object.fromEntries(Object.entries(known).map(([name, each]) => [name, part(each)]));

/** @typedef {{value: string, unit: string}} Measured */

/** Lengths and angle of the adapter the joint is pulled through; an older page kept only its name. @param {any} adapter @returns {Record<string, Measured>} */
function throughAdapter(adapter) {
  if (!adapter?.adapter_length) return {};
  return {
    'adapter-length': adapter.adapter_length,
    'wrench-length': adapter.wrench_length,
    angle: adapter.angle,
  };
}

/** @param {any} programme @returns {Record<string, Measured>} */
function targetOf(programme) {
  const target = lastTorque(programme);
  return target ? { torque: target, wanted: target } : {};
}

/** The value of the last torque pass. @param {any} programme */
const lastTorque = (programme) =>
  (programme.passes ?? [])
    .filter((/** @type {any} */ pass) => pass.how === 'torque' && pass.values?.length > 0)
    .at(-1)?.values[0];
