/** What the record a working was opened from knows of its numbers: the thread, the torque, the state. */
import { value } from '../../log/workshop.js';
import { useAnswer } from '../frame/index.js';

/** @typedef {import('./use_working.js').First} First */

/** Words of a joint's lubricant → the state a working knows. @type {[RegExp, string][]} */
const STATES = [
  [/moly/i, 'moly'],
  [/anti.?seize/i, 'anti-seize'],
  [/oil/i, 'oiled'],
  [/dry/i, 'dry'],
];

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
  const target = lastTorque(programme);
  const state = STATES.find(([word]) => word.test(programme.lubricant ?? ''))?.[1] ?? '';
  const typed = {
    thread: value(subject, 'thread') ?? '',
    lubricant: state,
    torque: target?.value ?? '',
    wanted: target?.value ?? '',
  };
  return { typed, units: target ? { torque: target.unit, wanted: target.unit } : {} };
}

/** The value of the last torque pass. @param {any} programme */
const lastTorque = (programme) =>
  (programme.passes ?? [])
    .filter((/** @type {any} */ pass) => pass.how === 'torque' && pass.values?.length > 0)
    .at(-1)?.values[0];
