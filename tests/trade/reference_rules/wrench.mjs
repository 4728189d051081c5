// Published values of wrenches: adapters, permitted deviation, what was applied, marks.
import * as adapter from '../../../pwa/trade/adapter.js';
import { convert } from '../../../pwa/trade/units.js';
import * as wrench from '../../../pwa/trade/wrench.js';

const TORQUES = { _N_m: 'N·m', _lbf_ft: 'lbf·ft', _lbf_in: 'lbf·in', _kgf_m: 'kgf·m' };
const LENGTHS = { _mm: 'mm', _in: 'in', _cm: 'cm' };

/** The numbers by name in N·m, mm and degrees, with the torque's ending of a key. */
function plain(given) {
  const made = { ending: '_N_m' };
  for (const [key, value] of Object.entries(given)) {
    const torque = Object.keys(TORQUES).find((each) => key.endsWith(each));
    const length = !torque && Object.keys(LENGTHS).find((each) => key.endsWith(each));
    const name = key.slice(0, key.length - (torque ?? (length || (key.endsWith('_deg') ? '_deg' : ''))).length);
    made[name] = value;
    if (torque) {
      made.ending = torque;
      made[name] = convert(value, TORQUES[torque], 'N·m');
    }
    if (length) made[name] = convert(value, LENGTHS[length], 'mm');
  }
  made.back = (number) => convert(number, 'N·m', TORQUES[made.ending]);
  return made;
}

function throughAdapter(made) {
  const lever = [made.wrench_length, made.adapter_length, made.adapter_angle];
  const torque = made.setting ?? made.set;
  if (torque !== undefined) {
    return { [`applied${made.ending}`]: made.back(adapter.applied(torque, ...lever)) };
  }
  return { [`setting${made.ending}`]: made.back(adapter.setting(made.wanted, ...lever)) };
}

function judged(made) {
  const deviation = wrench.deviation(made.set ?? made.indicated, made.reference);
  return {
    deviation,
    permitted_0_04: wrench.within(deviation, 0.04),
    permitted_0_06: wrench.within(deviation, 0.06),
  };
}

function applied(made) {
  const band = wrench.applied(made.set, made.permitted_deviation);
  return {
    [`applied_low${made.ending}`]: made.back(band.low_N_m),
    [`applied_high${made.ending}`]: made.back(band.high_N_m),
  };
}

function settable(made) {
  const mark = wrench.settable(made.wanted, made.graduation);
  return { [`settable${made.ending}`]: made.back(mark.settable_N_m), error: mark.error };
}

function inRange(made) {
  const end = (number) => (number === undefined ? null : { value: String(number), unit: 'N·m' });
  return { in_range: wrench.inRange(...[made.wanted, made.range_low, made.range_high].map(end)) };
}

export function byShape(given) {
  const made = plain(given);
  if ('largest_torque' in made) {
    return { permitted_deviation: wrench.permitted({ value: String(made.largest_torque), unit: 'N·m' }) };
  }
  if ('range_low' in made || 'range_high' in made) return inRange(made);
  if ('wrench_length' in made) return throughAdapter(made);
  if ('reference' in made) return judged(made);
  return 'permitted_deviation' in made ? applied(made) : settable(made);
}

export const topics = {};
