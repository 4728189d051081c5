// Published values of torque, preload, stretch and angle; a case is known by its keys.
import { travel } from '../../../pwa/trade/angle.js';
import { surfaceNutFactor } from '../../../pwa/trade/lubricant.js';
import { plausibility } from '../../../pwa/trade/plausibility.js';
import * as preload from '../../../pwa/trade/preload.js';
import * as stretch from '../../../pwa/trade/stretch.js';
import { parse } from '../../../pwa/trade/thread_text.js';
import * as form from '../../../pwa/trade/torque_form.js';
import { convert, measured, shown } from '../../../pwa/trade/units.js';

const WORDS = {
  N_m: 'N·m', lbf_ft: 'lbf·ft', lbf_in: 'lbf·in', kgf_m: 'kgf·m', N: 'N', kN: 'kN', lbf: 'lbf',
  mm: 'mm', in: 'in', mm2: 'mm²', in2: 'in²', psi: 'psi', kpsi: 'ksi', GPa: 'GPa', MPa: 'MPa',
  deg: '°', um: 'µm',
};
const TORQUES = ['N_m', 'lbf_ft', 'lbf_in', 'kgf_m'];
const FORCES = ['N', 'kN', 'lbf'];

// The number and unit word of "torque_N_m" and its like.
const suffixOf = (given, name) => Object.keys(WORDS).find((each) => `${name}_${each}` in given);
const has = (given, name) => suffixOf(given, name) !== undefined;

function amount(given, name, to) {
  const suffix = suffixOf(given, name);
  return convert(given[`${name}_${suffix}`], WORDS[suffix], to);
}

function told(name, value, unit, suffixes) {
  return Object.fromEntries(
    suffixes.map((suffix) => [`${name}_${suffix}`, convert(value, unit, WORDS[suffix])]),
  );
}

function nutFactor(given) {
  const diameter = amount(given, 'diameter', 'mm');
  if (has(given, 'preload')) {
    const found = form.torqueByNutFactor(amount(given, 'preload', 'N'), given.nut_factor, diameter);
    return told('torque', found, 'N·m', TORQUES);
  }
  const found = form.preloadByNutFactor(amount(given, 'torque', 'N·m'), given.nut_factor, diameter);
  return told('preload', found, 'N', FORCES);
}

function longForm(given) {
  const bearing = amount(given, 'mean_bearing_diameter', 'mm');
  const rub = { thread: given.friction_thread, underHead: given.friction_under_head };
  const exact = !('designation' in given);
  const screw = exact
    ? {
        pitchDiameterMm: amount(given, 'pitch_diameter', 'mm'),
        leadMm: amount(given, 'lead', 'mm'),
        meanBearingDiameterMm: bearing,
        halfAngleDegrees: given.half_angle_deg,
      }
    : form.screwOf(parse(given.designation), bearing);
  if (has(given, 'torque')) {
    const back = exact ? form.preloadByFriction : form.preloadByGuide;
    return told('preload', back(amount(given, 'torque', 'N·m'), screw, rub), 'N', FORCES);
  }
  const rule = exact ? form.torqueByFriction : form.torqueByGuide;
  return told('torque', rule(amount(given, 'preload', 'N'), screw, rub), 'N·m', TORQUES);
}

function stresses(given) {
  if (has(given, 'stress')) {
    const limit = amount(given, 'proof_stress', 'MPa');
    return { share_of_proof: preload.share(amount(given, 'stress', 'MPa'), limit) };
  }
  const found = preload.stress(amount(given, 'preload', 'N'), amount(given, 'stress_area', 'mm²'));
  return told('stress', found, 'MPa', ['psi', 'kpsi', 'MPa']);
}

function scatter(given) {
  const found = preload.scatter(given.preloads_kN.map((each) => each * 1000));
  return {
    ...found,
    ...told('mean', found.mean_N, 'N', FORCES),
    ...told('standard_deviation', found.standard_deviation_N, 'N', FORCES),
  };
}

function atYield(given) {
  const found = preload.atShareOfYield({
    thread: parse(given.designation),
    propertyClass: given.property_class,
    frictionThread: given.friction_thread,
    shareOfYield: given.share_of_yield,
  });
  return told('preload', found, 'N', FORCES);
}

function band(given) {
  const found = preload.band({
    torqueNm: amount(given, 'torque', 'N·m'),
    wrenchDeviation: given.wrench_deviation,
    nutFactorLow: given.nut_factor_low,
    nutFactorHigh: given.nut_factor_high,
    diameterMm: amount(given, 'diameter', 'mm'),
  });
  return {
    ...told('preload_low', found.low_N, 'N', FORCES),
    ...told('preload_mid', found.mid_N, 'N', FORCES),
    ...told('preload_high', found.high_N, 'N', FORCES),
  };
}

function change(given) {
  const found = preload.change({
    torqueNm: amount(given, 'torque', 'N·m'),
    diameterMm: amount(given, 'diameter', 'mm'),
    nutFactorAssumed: given.nut_factor_assumed,
    nutFactorActual: given.nut_factor_actual,
  });
  return {
    ...told('preload_assumed', found.assumed_N, 'N', FORCES),
    ...told('preload_actual', found.actual_N, 'N', FORCES),
    change: found.change,
  };
}

function plausible(given) {
  const suffix = suffixOf(given, 'torque');
  const value = String(given[`torque_${suffix}`]);
  const judged = (unit) =>
    plausibility(measured(value, unit), parse(given.designation), given.property_class ?? given.grade, {
      nutFactor: given.nut_factor,
    });
  const { share_of_proof, verdict } = judged(WORDS[suffix]);
  const others = TORQUES.map((each) => [`as_${each}_share`, judged(WORDS[each]).share_of_proof]);
  return { share_of_proof, verdict, ...Object.fromEntries(others) };
}

function stretched(given) {
  const sections = given.sections.map((each) => ({
    length_mm: amount(each, 'length', 'mm'),
    area_mm2: amount(each, 'area', 'mm²'),
  }));
  const modulus = amount(given, 'modulus', 'MPa');
  if (has(given, 'load')) {
    const found = stretch.stretch(amount(given, 'load', 'N'), modulus, sections);
    return told('stretch', found, 'mm', ['mm', 'in', 'um']);
  }
  return told('load', stretch.load(amount(given, 'stretch', 'mm'), modulus, sections), 'N', FORCES);
}

function travelled(given) {
  const inches = 'threads_per_inch' in given;
  const pitch = inches ? 25.4 / given.threads_per_inch : amount(given, 'pitch', 'mm');
  return told('travel', travel(pitch, amount(given, 'angle', '°')), 'mm', ['mm', 'in']);
}

const SHAPES = [
  [['sections'], stretched],
  [['angle_deg'], travelled],
  [['preloads_kN'], scatter],
  [['nut_factor_low'], band],
  [['nut_factor_assumed'], change],
  [['share_of_yield'], atYield],
  [['friction_under_head'], longForm],
  [['nut_factor', 'designation'], plausible],
  [['nut_factor'], nutFactor],
];

export function byShape(given) {
  if ('surface' in given) return { nut_factor: surfaceNutFactor(given.surface) };
  if (has(given, 'stress') || has(given, 'stress_area')) return stresses(given);
  return SHAPES.find(([keys]) => keys.every((key) => key in given))[1](given);
}

export const topics = {
  'A three-pass joint': (g) => ({
    value: Number(shown(measured(String(g.value), g.unit), g.to)),
    unit: g.to,
  }),
};
