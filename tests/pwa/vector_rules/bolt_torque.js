// Shared cases of what torque does to a bolt: preload, plausibility, stretch, angle, single use.
import * as angle from '../../../pwa/trade/angle.js';
import * as lubricant from '../../../pwa/trade/lubricant.js';
import { plausibility } from '../../../pwa/trade/plausibility.js';
import * as preload from '../../../pwa/trade/preload.js';
import { useCaution } from '../../../pwa/trade/single_use.js';
import * as stretch from '../../../pwa/trade/stretch.js';
import { parse } from '../../../pwa/trade/thread_text.js';
import * as form from '../../../pwa/trade/torque_form.js';
import { measured } from '../../../pwa/trade/units.js';

const screwOf = (g) => ({
  pitchDiameterMm: g.pitch_diameter_mm,
  leadMm: g.lead_mm,
  meanBearingDiameterMm: g.mean_bearing_diameter_mm,
  halfAngleDegrees: g.half_angle_degrees,
});
const rubOf = (g) => ({ thread: g.friction_thread, underHead: g.friction_under_head });
const toTorque = (rule) => (g) => rule(g.preload_N, screwOf(g), rubOf(g));
const toPreload = (rule) => (g) => rule(g.torque_N_m, screwOf(g), rubOf(g));

export const rules = {
  'lubricant.nut_factors': (g) => lubricant.nutFactors(g.state),
  'lubricant.state_of': (g) => lubricant.stateOf(g.words),
  'lubricant.find': (g) => lubricant.find(g.state)?.state ?? null,
  'lubricant.surface_nut_factor': (g) => lubricant.surfaceNutFactor(g.surface),
  'torque_form.torque_by_nut_factor': (g) =>
    form.torqueByNutFactor(g.preload_N, g.nut_factor, g.diameter_mm),
  'torque_form.preload_by_nut_factor': (g) =>
    form.preloadByNutFactor(g.torque_N_m, g.nut_factor, g.diameter_mm),
  'torque_form.mean_bearing_diameter': (g) => form.meanBearingDiameter(g.outside_mm, g.hole_mm),
  'torque_form.torque_by_friction': toTorque(form.torqueByFriction),
  'torque_form.preload_by_friction': toPreload(form.preloadByFriction),
  'torque_form.torque_by_guide': toTorque(form.torqueByGuide),
  'torque_form.preload_by_guide': toPreload(form.preloadByGuide),
  'preload.band': (g) =>
    preload.band({
      torqueNm: g.torque_N_m,
      wrenchDeviation: g.wrench_deviation,
      nutFactorLow: g.nut_factor_low,
      nutFactorHigh: g.nut_factor_high,
      diameterMm: g.diameter_mm,
    }),
  'preload.change': (g) =>
    preload.change({
      torqueNm: g.torque_N_m,
      diameterMm: g.diameter_mm,
      nutFactorAssumed: g.nut_factor_assumed,
      nutFactorActual: g.nut_factor_actual,
    }),
  'preload.stress': (g) => preload.stress(g.preload_N, g.area_mm2),
  'preload.share': (g) => preload.share(g.stress_MPa, g.limit_MPa),
  'preload.share_of_proof': (g) =>
    preload.shareOfProof(g.preload_N, parse(g.designation), g.property_class),
  'preload.at_share_of_yield': (g) =>
    preload.atShareOfYield({
      thread: parse(g.designation),
      propertyClass: g.property_class,
      frictionThread: g.friction_thread,
      shareOfYield: g.share_of_yield,
      waistMm: g.waist_mm,
    }),
  'preload.scatter': (g) => preload.scatter(g.preloads_N),
  'stretch.stretch': (g) => stretch.stretch(g.load_N, g.modulus_MPa, g.sections),
  'stretch.load': (g) => stretch.load(g.stretch_mm, g.modulus_MPa, g.sections),
  'stretch.stiffness': (g) => stretch.stiffness(g.modulus_MPa, g.sections),
  'stretch.bolt': (g) =>
    stretch.bolt(parse(g.designation), g.shank_mm, g.free_thread_mm, g.waist_mm),
  'angle.travel': (g) => angle.travel(g.pitch_mm, g.angle_degrees),
  'angle.stretch_by_angle': (g) => angle.stretchByAngle(g.pitch_mm, g.angle_degrees, g.joint_share),
  'angle.angle_by_stretch': (g) => angle.angleByStretch(g.stretch_mm, g.pitch_mm, g.joint_share),
  'angle.joint_share': (g) => angle.jointShare(g.bolt_N_per_mm, g.joint_N_per_mm),
  'single_use.use_caution': (g) => useCaution(g.single_use, g.uses_before),
  'plausibility.plausibility': (g) =>
    plausibility(measured(g.torque.value, g.torque.unit), parse(g.designation), g.property_class, {
      state: g.state,
      nutFactor: g.nut_factor,
      valueFor: g.value_for,
      thenAngle: g.then_angle,
    }),
};
