// Published values of geometry: displacement, compression ratio, quench, speed, valve timing.
import * as compressionRatio from '../../../pwa/trade/compression_ratio.js';
import * as degreeWheel from '../../../pwa/trade/degree_wheel.js';
import * as geometry from '../../../pwa/trade/geometry.js';
import { named, told } from '../reference_amounts.mjs';

const INPUTS = {
  bore: 'boreMm',
  stroke: 'strokeMm',
  chamber: 'chamberCm3',
  gasket_thickness: 'gasketThicknessMm',
  piston_below_deck: 'pistonBelowDeckMm',
  gasket_bore: 'gasketBoreMm',
  dish: 'dishCm3',
  ring_land: 'ringLandCm3',
};

function inputs(made, ending) {
  const known = Object.entries(INPUTS).filter(([name]) => `${name}${ending}` in made);
  return Object.fromEntries(known.map(([name, key]) => [key, made[`${name}${ending}`]]));
}

function cylinder(made) {
  const known = { pistonBelowDeckMm: 0, ...inputs(made, '') };
  const dish = made.dish_positive_dome_negative;
  if (dish !== undefined) known.dishCm3 = dish;
  if ('dome' in made) known.dishCm3 = -made.dome;
  return known;
}

function ratio(made) {
  const found = compressionRatio.measured(cylinder(made), inputs(made, '_u'));
  const gives = {
    compression_ratio: found.ratio,
    standard_uncertainty: found.standard_uncertainty,
    ...told('swept', 'volume', found.swept_cm3),
    ...told('gasket_volume', 'volume', found.gasket_cm3),
    ...told('deck_volume', 'volume', found.deck_cm3),
    ...told('clearance_volume', 'volume', found.clearance_volume_cm3),
    ...told('quench', 'length', found.quench_mm),
  };
  if (!('wanted_compression_ratio' in made)) return gives;
  const change = compressionRatio.changeFor(cylinder(made), made.wanted_compression_ratio);
  return {
    ...gives,
    ...told('clearance_volume', 'volume', change.clearance_volume_cm3),
    ...told('chamber', 'volume', change.chamber_cm3),
    ...told('chamber_wanted', 'volume', change.chamber_cm3),
    ...told('gasket_thickness', 'length', change.gasket_thickness_mm),
    ...told('gasket_thickness_wanted', 'length', change.gasket_thickness_mm),
    ...told('piston_below_deck', 'length', change.piston_below_deck_mm),
    ...told('piston_below_deck_wanted', 'length', change.piston_below_deck_mm),
    ...told('dish', 'volume', change.dish_cm3),
    ...told('deck_cut', 'length', change.deck_cut_mm),
  };
}

function fromVolumes(made) {
  const { swept, clearance_volume: room, clearance_volume_u: u } = made;
  const gives = { compression_ratio: compressionRatio.ratio(swept, room) };
  if (u === undefined) return gives;
  const sure = compressionRatio.ratioUncertainty(swept, room, u, made.swept_u);
  return { ...gives, standard_uncertainty: sure };
}

function wanted(made) {
  if ('chamber' in made) return ratio(made);
  const swept = made.swept ?? geometry.sweptVolume(made.bore, made.stroke);
  const room = compressionRatio.clearanceFor(swept, made.wanted_compression_ratio);
  return told('clearance_volume', 'volume', room);
}

function cut(made) {
  const { clearance_volume_now: now, clearance_volume_wanted: aim } = made;
  return told('deck_cut', 'length', geometry.deckCut(made.bore, now, aim));
}

function speed(made) {
  const found = geometry.meanPistonSpeed(made.stroke, made.speed);
  return told('mean_piston_speed', 'travel-speed', found);
}

function timing(made) {
  const found = degreeWheel.timing(
    made.intake_opens_BTDC,
    made.intake_closes_ABDC,
    made.exhaust_opens_BBDC,
    made.exhaust_closes_ATDC,
  );
  return {
    ...found,
    intake_centreline_ATDC_deg: found.intake_centreline_deg,
    exhaust_centreline_BTDC_deg: found.exhaust_centreline_deg,
  };
}

function top(made) {
  const found = degreeWheel.trueTop(made.stop_reading_BTDC, made.stop_reading_ATDC);
  return told('wheel_at_true_TDC_BTDC', 'angle', found);
}

function pieces(made) {
  const { bore, stroke, gasket_thickness: thick, piston_below_deck: below } = made;
  const gives = {};
  if (bore !== undefined && stroke !== undefined) {
    const whole = geometry.displacement(bore, stroke, made.cylinders ?? 1);
    Object.assign(gives, told('swept', 'volume', geometry.sweptVolume(bore, stroke)));
    Object.assign(gives, told('displacement', 'volume', whole));
  }
  const opening = made.gasket_bore ?? bore;
  if (opening !== undefined && thick !== undefined) {
    Object.assign(gives, told('gasket_volume', 'volume', geometry.gasketVolume(opening, thick)));
  }
  if (bore !== undefined && below !== undefined) {
    Object.assign(gives, told('deck_volume', 'volume', geometry.deckVolume(bore, below)));
  }
  if (below === undefined || thick === undefined) return gives;
  return { ...gives, ...told('quench', 'length', geometry.quench(below, thick)) };
}

const SHAPES = {
  stop_reading_BTDC: top,
  intake_opens_BTDC: timing,
  speed,
  clearance_volume_now: cut,
  wanted_compression_ratio: wanted,
  clearance_volume: fromVolumes,
  chamber: ratio,
};

export function byShape(given) {
  const made = named(given);
  return (SHAPES[Object.keys(SHAPES).find((key) => key in made)] ?? pieces)(made);
}

export const topics = {};
