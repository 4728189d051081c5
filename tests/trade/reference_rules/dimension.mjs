// Published values of readings: scatter, limits, 20 °C, shape, uncertainty, gauge studies.
import * as dimension from '../../../pwa/trade/dimension.js';
import * as expansion from '../../../pwa/trade/expansion.js';
import * as gaugeStudy from '../../../pwa/trade/gauge_study.js';
import * as limits from '../../../pwa/trade/limits.js';
import * as scatter from '../../../pwa/trade/scatter.js';
import * as shape from '../../../pwa/trade/shape.js';
import { named } from '../reference_lengths.mjs';

const pooled = (given) => scatter.pooled(given.sums_of_squares, given.degrees_of_freedom);

const days = (given) =>
  scatter.days(given.daily_means, given.daily_standard_deviations, given.readings_a_day);

function judged(given, { lengths, told }) {
  const rule = /1\.65|one-sided/.test(given.rule ?? '') ? 'one-sided' : 'expanded';
  const u = lengths.standard_uncertainty;
  const wide = lengths.guard_band ?? lengths.expanded_uncertainty;
  const guard = wide ?? (given.k ? dimension.expanded(u, given.k) : limits.guardBand(u, rule));
  const found = limits.judge(lengths.reading, lengths.lower ?? null, lengths.upper ?? null, guard);
  return { verdict: found.lies.replaceAll('-', ' '), ...told('guard_band', guard) };
}

function at20(given, { lengths, told }) {
  const warm = given.temperature_C;
  if ('clearance_apart' in lengths) {
    const grows = [given.bore_expansion_per_K, given.piston_expansion_per_K];
    const room = expansion.clearanceAt(lengths.clearance_apart, lengths.bore, ...grows, {
      measuredAtC: warm,
    });
    return told('clearance_20', room);
  }
  if ('length_20' in lengths) {
    return told('length', expansion.lengthAt(lengths.length_20, warm, given.expansion_per_K));
  }
  return told('length_20', expansion.lengthAt20(lengths.length, warm, given.expansion_per_K));
}

function shaped(_, { lengths, told }) {
  if ('plane' in lengths) return told('out_of_round', shape.outOfRound(lengths.plane));
  if ('indicator' in lengths) {
    const found = shape.runOut(lengths.indicator);
    return { ...told('run_out', found.run_out_mm), ...told('eccentricity', found.eccentricity_mm) };
  }
  if ('new' in lengths) {
    const feature = lengths.now > lengths.new ? 'bore' : 'shaft';
    return told('wear', shape.wear(lengths.new, lengths.now, feature).wear_mm);
  }
  const planes = Object.values(lengths).filter(Array.isArray);
  return {
    ...told('out_of_round', shape.outOfRoundOfPlanes(planes)),
    ...told('taper', shape.taperOfMeans(planes)),
    ...told('taper_along', shape.taperAlong(planes)),
  };
}

function repeated(_, { lengths, told }) {
  const { count, ...found } = dimension.repeats(lengths.repeats);
  return Object.assign({}, ...Object.entries(found).map(([name, mm]) => told(name, mm)));
}

function resolution(given, { lengths, told }) {
  const parts = [];
  if ('resolution' in lengths) parts.push(dimension.fromResolution(lengths.resolution));
  if ('permitted_error' in lengths) {
    parts.push(dimension.fromLimit(lengths.permitted_error, given.shape));
  }
  const u = dimension.combined(parts);
  return { ...told('standard_uncertainty', u), ...told('expanded_k2', dimension.expanded(u)) };
}

function studied(given) {
  const readings = Object.values(given.readings);
  if (given.method.startsWith('average')) {
    const own = { k1: given.K1, k2: given.K2, k3: given.K3 };
    const { study, ...found } = gaugeStudy.averageAndRange(readings, own);
    return { ...found, ...study };
  }
  const way = given.method.includes('kept') ? 'kept' : 'pooled';
  const { study, ...found } = gaugeStudy.analysisOfVariance(readings, way);
  return { ...found, ...study };
}

const SHAPES = {
  sums_of_squares: pooled,
  daily_means: days,
  readings: studied,
  reading: judged,
  temperature_C: at20,
  repeats: repeated,
  resolution,
  permitted_error: resolution,
};

export function byShape(given) {
  const made = named(given);
  const key = Object.keys(SHAPES).find((each) => each in given || each in made.lengths);
  return (SHAPES[key] ?? shaped)(given, made);
}

export const topics = {};
