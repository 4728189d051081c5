// Published values of proof: differential compression, evenness, pressure trace, prime.
import * as pressureTrace from '../../../pwa/trade/pressure_trace.js';
import * as proof from '../../../pwa/trade/proof.js';
import { convert } from '../../../pwa/trade/units.js';
import { named, told } from '../reference_amounts.mjs';

function leak({ supply, cylinder }) {
  const share = proof.leakage(supply, cylinder);
  const gives = { leak_share: share };
  for (let each = 5; each < 55; each += 5) {
    gives[`within_${each}_percent`] = proof.within(share, each / 100);
  }
  return { ...gives, within_25_percent: proof.within(share, proof.AVIATION_SHARE) };
}

function even({ readings }) {
  const found = proof.evenness(readings);
  const gives = {
    lowest_over_highest: found.lowest_over_highest,
    lowest_cylinder: found.lowest,
    highest_cylinder: found.highest,
    ...told('mean', 'pressure', found.mean_kPa),
  };
  for (let each = 50; each < 100; each += 5) {
    gives[`even_at_0_${each}`] = proof.even(found.lowest_over_highest, each / 100);
  }
  return gives;
}

function traced(given) {
  const key = Object.keys(given).find((each) => each.startsWith('trace_s_'));
  const word = key.slice('trace_s_'.length);
  const trace = given[key].map(([timeS, size]) => ({
    timeS,
    pressureKPa: convert(size, word, 'kPa'),
  }));
  const { threshold, plateau_last: last } = named({ ...given, [key]: null });
  const gives = {};
  if (threshold !== undefined) {
    const time = pressureTrace.timeTo(trace, threshold);
    Object.assign(gives, { reached: time !== null, time_to_threshold_s: time });
  }
  if (last === undefined) return gives;
  return { ...gives, ...told('plateau_mean', 'pressure', pressureTrace.plateau(trace, last)) };
}

export function byShape(given) {
  if (Object.keys(given).some((key) => key.startsWith('trace'))) return traced(given);
  if ('places' in given) return proof.prime(given.places, given.seen);
  const made = named(given);
  if ('bore' in made) return told('orifice', 'length', proof.orifice(made.bore));
  return 'readings' in made ? even(made) : leak(made);
}

export const topics = {};
