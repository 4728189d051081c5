// Shared cases of what is measured: the keys of a case are the arguments, in order.
import * as adapter from '../../../pwa/trade/adapter.js';
import * as assignment from '../../../pwa/trade/assignment.js';
import * as choosing from '../../../pwa/trade/choosing.js';
import * as expansion from '../../../pwa/trade/expansion.js';
import * as fit from '../../../pwa/trade/fit.js';
import * as gaugeStudy from '../../../pwa/trade/gauge_study.js';
import * as thumb from '../../../pwa/trade/rule_of_thumb.js';
import * as scatter from '../../../pwa/trade/scatter.js';
import * as shape from '../../../pwa/trade/shape.js';
import * as valveTrain from '../../../pwa/trade/valve_train.js';
import * as dimension from '../../../pwa/trade/dimension.js';
import * as interaction from '../../../pwa/trade/interaction.js';
import * as limits from '../../../pwa/trade/limits.js';
import * as mixing from '../../../pwa/trade/mixing.js';
import * as points from '../../../pwa/trade/points.js';
import * as sequence from '../../../pwa/trade/sequence.js';
import * as units from '../../../pwa/trade/units.js';
import * as wrench from '../../../pwa/trade/wrench.js';

const measured = (given) => given && units.measured(given.value, given.unit);

/** The named facts of a case as arguments in order; what a case leaves out is left out. */
const rule = (called, keys) => (given) => called(...keys.split(' ').map((key) => given[key]));

const LEVER = 'wrench_length_mm adapter_length_mm angle_deg';

function choose(g) {
  return choosing.choose(g.gaps_mm, g.stock_mm, g.target_mm, {
    counts: g.counts,
    pieces: g.pieces,
    leastMm: g.least_mm,
    mostMm: g.most_mm,
    mayLack: g.may_lack,
  });
}

function mix(g) {
  const more = { counts: g.counts, mostApartMm: g.most_apart_mm };
  return mixing.choose(g.gaps_mm, g.walls_mm, g.target_mm, more);
}

function reading(given) {
  const known = { resolution: given.resolution_mm, permittedError: given.permitted_error_mm };
  const found = dimension.reading(given.values_mm, known);
  return { value_mm: found.value, standard_uncertainty_mm: found.standard_uncertainty };
}

export const rules = {
  'wrench.permitted': (g) => wrench.permitted(measured(g.most), g.own),
  'wrench.fit': (g) => wrench.fit(measured(g.wanted), measured(g.least), measured(g.most)),
  'wrench.in_range': (g) => wrench.inRange(measured(g.wanted), measured(g.least), measured(g.most)),
  'wrench.deviation': rule(wrench.deviation, 'indicated_N_m reference_N_m'),
  'wrench.within': rule(wrench.within, 'off share'),
  'wrench.applied': rule(wrench.applied, 'setting_N_m share'),
  'wrench.settable': rule(wrench.settable, 'wanted_N_m graduation_N_m least_N_m most_N_m'),
  'wrench.range_low': rule(wrench.rangeLow, 'most_N_m lowest_mark_N_m'),
  'wrench.days_since': rule(wrench.daysSince, 'calibrated today'),
  'wrench.calibration': rule(wrench.calibration, 'calibrated today good_for'),
  'adapter.effective_length': rule(adapter.effectiveLength, LEVER),
  'adapter.setting': rule(adapter.setting, `wanted_N_m ${LEVER}`),
  'adapter.applied': rule(adapter.applied, `set_to_N_m ${LEVER}`),
  'adapter.through_extension': rule(adapter.throughExtension, 'torque_N_m extension_length_mm'),
  'adapter.band': (g) =>
    adapter.band(g.set_to_N_m, g.share, g.wrench_length_mm, g.adapter_length_mm, g.angle_deg, {
      gripMm: g.grip_mm,
    }),
  'adapter.plan': (g) =>
    adapter.plan(g.wanted_N_m, g.wrench_length_mm, g.adapter_length_mm, g.angle_deg, {
      graduationNm: g.graduation_N_m,
      share: g.share,
      leastNm: g.least_N_m,
      mostNm: g.most_N_m,
      gripMm: g.grip_mm,
    }),
  'sequence.order': rule(sequence.order, 'pattern count rows'),
  'sequence.loosening': rule(sequence.loosening, 'tightening'),
  'sequence.positions': rule(sequence.positions, 'pattern count rows'),
  'sequence.drawn': rule(sequence.drawn, 'pattern count rows loosen'),
  'points.order': rule(points.order, 'points'),
  'points.positions': rule(points.positions, 'points'),
  'dimension.from_resolution': rule(dimension.fromResolution, 'resolution_mm'),
  'dimension.from_limit': rule(dimension.fromLimit, 'permitted_error_mm shape'),
  'dimension.combined': rule(dimension.combined, 'parts_mm'),
  'dimension.expanded': rule(dimension.expanded, 'standard_uncertainty_mm k'),
  'dimension.repeats': rule(dimension.repeats, 'values_mm'),
  'dimension.reading': reading,
  'limits.guard_band': rule(limits.guardBand, 'standard_uncertainty_mm rule'),
  'limits.judge': rule(limits.judge, 'reading_mm lower_mm upper_mm guard_mm'),
  'limits.share_of_limits': rule(limits.shareOfLimits, 'guard_mm lower_mm upper_mm'),
  'shape.out_of_round': rule(shape.outOfRound, 'plane_mm'),
  'shape.out_of_round_of_planes': rule(shape.outOfRoundOfPlanes, 'planes_mm'),
  'shape.taper_of_means': rule(shape.taperOfMeans, 'planes_mm'),
  'shape.taper_along': rule(shape.taperAlong, 'planes_mm'),
  'shape.run_out': rule(shape.runOut, 'dial_mm'),
  'shape.wear': rule(shape.wear, 'new_mm now_mm feature limit_mm'),
  'expansion.typical': rule(expansion.typical, 'material'),
  'expansion.length_at_20': rule(expansion.lengthAt20, 'length_mm temperature_C expansion_per_K'),
  'expansion.length_at': rule(expansion.lengthAt, 'length_20_mm temperature_C expansion_per_K'),
  'expansion.corrected': rule(
    expansion.corrected,
    'read_mm part_temperature_C part_expansion_per_K instrument_temperature_C instrument_expansion_per_K',
  ),
  'expansion.from_temperature': rule(
    expansion.fromTemperature,
    'length_mm expansion_per_K standard_uncertainty_K',
  ),
  'expansion.clearance_at': (g) =>
    expansion.clearanceAt(
      g.clearance_mm,
      g.bore_mm,
      g.bore_expansion_per_K,
      g.inner_expansion_per_K,
      { measuredAtC: g.measured_at_C, boreAtC: g.bore_at_C, innerAtC: g.inner_at_C },
    ),
  'scatter.pooled': rule(scatter.pooled, 'sums_of_squares degrees_of_freedom'),
  'scatter.pooled_deviations': rule(scatter.pooledDeviations, 'deviations counts'),
  'scatter.days': rule(scatter.days, 'daily_means daily_standard_deviations readings_a_day'),
  'gauge_study.average_and_range': (g) => gaugeStudy.averageAndRange(g.readings, g),
  'gauge_study.analysis_of_variance': rule(gaugeStudy.analysisOfVariance, 'readings interaction'),
  'gauge_study.share_of_tolerance': rule(gaugeStudy.shareOfTolerance, 'both tolerance width'),
  'gauge_study.good_enough': rule(gaugeStudy.goodEnough, 'share'),
  'fit.clearance': rule(fit.clearance, 'bore_mm shaft_mm bore_u_mm shaft_u_mm'),
  'fit.oil_clearance': (g) =>
    fit.oilClearance(g.housing_mm, g.walls_mm, g.journal_mm, {
      housingUMm: g.housing_u_mm,
      wallUMm: g.wall_u_mm,
      journalUMm: g.journal_u_mm,
    }),
  'fit.side_clearance': rule(fit.sideClearance, 'groove_mm width_mm groove_u_mm width_u_mm'),
  'fit.piston_to_wall': rule(fit.pistonToWall, 'bore_mm piston_mm bore_u_mm piston_u_mm'),
  'fit.end_play': rule(fit.endPlay, 'back_mm forward_mm dial_u_mm'),
  'fit.ring_gap_after': rule(fit.ringGapAfter, 'gap_mm bore_change_mm'),
  'fit.gap_per_bore': rule(fit.gapPerBore, 'gap_mm bore_mm'),
  'fit.to_file': rule(fit.toFile, 'gap_mm wanted_mm'),
  'fit.judge': (g) =>
    fit.judge(
      fit.clearance(g.bore_mm, g.shaft_mm, g.bore_u_mm, g.shaft_u_mm),
      g.least_mm,
      g.most_mm,
      g.rule,
    ).lies,
  'valve_train.lash_shim': rule(
    valveTrain.lashShim,
    'lash_measured_mm lash_wanted_mm shim_in_mm ratio',
  ),
  'valve_train.lash_at_lifter': rule(valveTrain.lashAtLifter, 'lash_mm ratio'),
  'valve_train.lash_at_valve': rule(valveTrain.lashAtValve, 'lash_mm ratio'),
  'valve_train.preload': rule(valveTrain.preload, 'turns pitch_mm ratio'),
  'valve_train.turns_for': rule(valveTrain.turnsFor, 'travel_mm pitch_mm'),
  'valve_train.height_shim': rule(
    valveTrain.heightShim,
    'installed_height_mm height_wanted_mm',
  ),
  'valve_train.coil_room': rule(
    valveTrain.coilRoom,
    'installed_height_mm lift_mm bind_height_mm',
  ),
  'rule_of_thumb.plausible': rule(thumb.plausible, 'fit reading_mm size_mm'),
  'rule_of_thumb.plausible_turns': rule(thumb.plausible, 'fit reading_turns'),
  'assignment.cheapest': rule(assignment.cheapest, 'costs'),
  'choosing.choose': choose,
  'choosing.best': (g) => {
    const { sum_of_deviations_mm, worst_mm, missing } = choose(g);
    return { sum_of_deviations_mm, worst_mm, missing };
  },
  'mixing.choose': mix,
  'mixing.best': (g) => {
    const { sum_of_deviations_mm, worst_mm } = mix(g);
    return { sum_of_deviations_mm, worst_mm };
  },
  'interaction.chance': (g) =>
    interaction.chance(g.mean_square_interaction, g.mean_square_repeat, g),
  'interaction.treatment': rule(interaction.treatment, 'chance_of_it above'),
};
