// Published values of threads and property classes.
import { loads, stresses } from '../../../pwa/trade/strength.js';
import { sizes } from '../../../pwa/trade/thread.js';
import { parse } from '../../../pwa/trade/thread_text.js';
import { convert } from '../../../pwa/trade/units.js';

function ofThread({ designation }) {
  const thread = parse(designation);
  const found = sizes(thread);
  const gives = { ...thread, ...found };
  gives.minor_diameter_d1_mm = found.minor_diameter_mm;
  gives.minor_diameter_d3_mm = found.root_diameter_mm;
  for (const [key, value] of Object.entries(gives)) {
    if (key.endsWith('_mm')) gives[key.replace(/_mm$/, '_in')] = value / 25.4;
  }
  gives.stress_area_in2 = found.stress_area_mm2 / 645.16;
  return gives;
}

function ofLoads({ designation }, name) {
  const gives = {};
  for (const [key, newtons] of Object.entries(loads(parse(designation), name))) {
    gives[key] = newtons;
    gives[key.replace('_N', '_kN')] = newtons / 1000;
    gives[key.replace('_N', '_lbf')] = convert(newtons, 'N', 'lbf');
  }
  return gives;
}

function ofClass(given, name) {
  const found = stresses(name, given.diameter_mm ?? given.diameter_in * 25.4);
  const gives = {};
  for (const [key, short] of [['proof_stress', 'proof'], ['yield', 'yields'], ['tensile', 'tensile']]) {
    for (const unit of ['MPa', 'psi', 'ksi']) {
      gives[`${key}_${unit}`] = convert(found[short], found.unit, unit);
    }
  }
  return gives;
}

export function byShape(given) {
  const name = given.property_class ?? given.grade;
  if (name === undefined) return ofThread(given);
  return given.designation ? ofLoads(given, name) : ofClass(given, name);
}

export const topics = {};
