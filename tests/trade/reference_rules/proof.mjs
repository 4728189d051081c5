// Published values of proofs: leak-down, orifice, evenness, pressure trace, prime.
import * as proof from '../../../pwa/trade/proof.js';
import { convert } from '../../../pwa/trade/units.js';

const UNITS = ['psi', 'kPa', 'bar'];

function amount(given, name) {
  const unit = UNITS.find((each) => `${name}_${each}` in given);
  return convert(given[`${name}_${unit}`], unit, 'kPa');
}

const told = (name, kPa) =>
  Object.fromEntries(UNITS.map((each) => [`${name}_${each}`, convert(kPa, 'kPa', each)]));

function leakDown(given) {
  const share = proof.leakage(amount(given, 'supply'), amount(given, 'cylinder'));
  return { leak_share: share, within_25_percent: proof.leaksNoMoreThan(share, 0.25) };
}

function orifice(given) {
  const found = proof.orifice(given.bore_mm ?? given.bore_in * 25.4);
  return { orifice_in: convert(found, 'mm', 'in'), orifice_mm: found };
}

function evenness(given) {
  const key = Object.keys(given).find((each) => each.startsWith('readings_'));
  const unit = key.replace('readings_', '');
  const found = proof.evenness(given[key].map((each) => convert(each, unit, 'kPa')));
  return {
    lowest_over_highest: found.lowest_over_highest,
    even_at_0_75: proof.isEven(found.lowest_over_highest, 0.75),
    lowest_cylinder: found.lowest_place,
    highest_cylinder: found.highest_place,
    ...told('mean', found.mean_kPa),
  };
}

function trace(given) {
  const key = Object.keys(given).find((each) => each.startsWith('trace_s_'));
  const unit = key.replace('trace_s_', '');
  const points = given[key].map(([time, pressure]) => ({
    time_s: time,
    pressure_kPa: convert(pressure, unit, 'kPa'),
  }));
  if ('plateau_last_s' in given) {
    return told('plateau_mean', proof.plateau(points, given.plateau_last_s).mean_kPa);
  }
  const seconds = proof.timeTo(points, amount(given, 'threshold'));
  return { time_to_threshold_s: seconds, reached: seconds !== null };
}

function prime({ places, seen }) {
  const missing = proof.missingPlaces(places, seen);
  return { complete: missing.length === 0, missing };
}

const SHAPES = [
  ['supply_', leakDown],
  ['bore_', orifice],
  ['readings_', evenness],
  ['trace_', trace],
  ['places', prime],
];

export function byShape(given) {
  const keys = Object.keys(given).join(' ');
  return SHAPES.find(([key]) => keys.includes(key))[1](given);
}

export const topics = {};
