// Published values of fits: clearances, ring gap, end play, shims, choosing shells.
import * as choosing from '../../../pwa/trade/choosing.js';
import * as fit from '../../../pwa/trade/fit.js';
import * as valveTrain from '../../../pwa/trade/valve_train.js';
import { named } from '../reference_lengths.mjs';

const INNER = ['journal', 'pin', 'shaft', 'stem', 'piston', 'ring', 'lifter'];
const OUTER = ['bore', 'groove', 'guide', 'housing'];

function allOf(found, told) {
  return {
    ...told('clearance', found.clearance_mm),
    ...told('side_clearance', found.clearance_mm),
    ...told('piston_to_wall', found.clearance_mm),
    ...told('interference', found.interference_mm),
    ...told('standard_uncertainty', found.standard_uncertainty_mm),
  };
}

function cleared({ lengths, told }) {
  // The feature by its name; by its place among the keys where the name is no usual one.
  const plain = Object.keys(lengths).filter((key) => !key.endsWith('_u'));
  const outer = OUTER.find((each) => plain.includes(each)) ?? plain[0];
  const inner = INNER.find((each) => plain.includes(each)) ?? plain[1];
  const known = [lengths[`${outer}_u`], lengths[`${inner}_u`]];
  return allOf(fit.clearance(lengths[outer], lengths[inner], ...known), told);
}

function withShells({ lengths, told }) {
  const walls = Array.isArray(lengths.wall) ? lengths.wall : [lengths.wall, lengths.wall];
  const u = {
    housingUMm: lengths.housing_u,
    wallUMm: lengths.wall_u,
    journalUMm: lengths.journal_u,
  };
  return allOf(fit.oilClearance(lengths.housing, walls, lengths.journal, u), told);
}

function gap({ lengths, told }) {
  if ('bore' in lengths) return { gap_per_bore: fit.gapPerBore(lengths.gap, lengths.bore) };
  return told('gap', fit.ringGapAfter(lengths.gap, lengths.bore_change));
}

function play({ lengths, told }) {
  const found = fit.endPlay(lengths.indicator_back, lengths.indicator_forward);
  return told('end_play', found.clearance_mm);
}

function lash({ lengths, told }, given) {
  const { lash_measured: measured, lash_wanted: wanted, shim_in: shim } = lengths;
  return told('shim_wanted', valveTrain.lashShim(measured, wanted, shim, ratioOf(given)));
}

const ratioOf = (given) => given.ratio ?? given.rocker_ratio;

function throughRocker({ lengths, told }, given) {
  if ('lash_at_valve' in lengths) {
    return told('lash_at_lifter', valveTrain.lashAtLifter(lengths.lash_at_valve, ratioOf(given)));
  }
  return told('lash_at_valve', valveTrain.lashAtValve(lengths.lash_at_lifter, ratioOf(given)));
}

function height({ lengths, told }) {
  const { installed_height: installed, height_wanted: wanted, lift, bind_height: solid } = lengths;
  if (wanted === undefined) return told('room', valveTrain.coilRoom(installed, lift, solid).room_mm);
  return told('shim', valveTrain.heightShim(installed, wanted));
}

function turned({ lengths, told }, given) {
  const found = valveTrain.preload(given.turns_after_zero_lash, lengths.pitch, given.rocker_ratio);
  return {
    ...told('stud_travel', found.stud_travel_mm),
    ...told('plunger_travel', found.plunger_travel_mm),
  };
}

function chosen({ lengths, told }, given) {
  const keys = Object.keys(lengths);
  const stock = keys.find((key) => Array.isArray(lengths[key]) && !key.startsWith('gap'));
  const found = choosing.choose(
    lengths[keys.find((key) => key.startsWith('gap'))],
    lengths[stock],
    lengths[keys.find((key) => key.startsWith('target'))],
    {
      counts: given.counts,
      pieces: stock.includes('pair') || given.minimise?.includes('2 ×') ? 2 : 1,
      leastMm: lengths.least_clearance,
      mostMm: lengths.most_clearance,
    },
  );
  return { ...told('sum_of_deviations', found.sum_of_deviations_mm), places_missing: found.missing };
}

const SHAPES = {
  indicator_back: play,
  lash_measured: lash,
  lash_at_valve: throughRocker,
  lash_at_lifter: throughRocker,
  installed_height: height,
  pitch: turned,
  gap,
  wall: withShells,
};

export function byShape(given) {
  const made = named(given);
  if (Object.keys(made.lengths).some((key) => key.startsWith('target'))) return chosen(made, given);
  const key = Object.keys(SHAPES).find((each) => each in made.lengths);
  return (SHAPES[key] ?? cleared)(made, given);
}

export const topics = {};
