/**
 * How people write the unit words, squeezed to small letters without dots, blanks and strokes.
 * Each spelling stands under the quantity that was asked for, so "nm" is no nanometre where a torque
 * is wanted. What the trade writes for two units is listed with both, and is never guessed.
 */

const POUND = ['lb', 'lbs', 'lbf', 'pound', 'pounds', '#'];
const KILO = ['kg', 'kgf', 'kp'];
const FOOT = ['ft', 'foot', 'feet'];
const INCH = ['in', 'inch', 'inches'];
const METRE = ['m', 'meter', 'meters', 'metre', 'metres'];

/**
 * Force and arm in either order, and with the stroke people put between them.
 * @param {string[]} forces
 * @param {string[]} arms
 */
function levers(forces, arms) {
  const pairs = forces.flatMap((force) =>
    arms.flatMap((arm) => [
      [force, arm],
      [arm, force],
    ]),
  );
  return pairs.flatMap(([one, other]) => [`${one}${other}`, `${one}/${other}`]);
}

/**
 * @param {string[]} above
 * @param {string[]} below
 */
const over = (above, below) => above.flatMap((one) => below.map((other) => `${one}/${other}`));

/**
 * Quantity → word → further spellings; the word itself, squeezed, is one too.
 * @type {Record<string, Record<string, string[]>>}
 */
export const SPELLINGS = {
  torque: {
    N·m: ['nm', ...METRE.map((arm) => `newton${arm}`)],
    lbf·ft: levers(POUND, FOOT),
    lbf·in: levers(POUND, INCH),
    kgf·m: levers(KILO, METRE).filter((each) => !each.includes('/')),
  },
  angle: {
    '°': ['deg', 'degs', 'degree', 'degrees'],
    turn: ['turns', 'rev', 'revs', 'revolution', 'revolutions'],
  },
  force: {
    N: ['newton', 'newtons'],
    kN: ['kilonewton', 'kilonewtons'],
    lbf: POUND,
    kgf: [...KILO, 'kilo', 'kilos', 'kilogram', 'kilograms'],
  },
  length: {
    mm: ['millimeter', 'millimeters', 'millimetre', 'millimetres'],
    µm: ['um', 'u', 'micron', 'microns', 'micrometer', 'micrometers', 'micrometre', 'micrometres'],
    cm: ['centimeter', 'centimeters', 'centimetre', 'centimetres'],
    m: METRE,
    in: [...INCH, '"'],
    thou: ['thous', 'thousandth', 'thousandths'],
    ft: [...FOOT, "'"],
  },
  area: {
    'mm²': ['mm2', 'sqmm'],
    'cm²': ['cm2', 'sqcm'],
    'in²': ['in2', 'sqin', 'squareinch', 'squareinches'],
  },
  pressure: {
    kPa: ['kilopascal', 'kilopascals'],
    bar: ['bars'],
    psi: ['psig', ...POUND, ...over(POUND, ['in2', 'sqin']), 'poundspersquareinch'],
    'kgf/cm²': [...KILO, ...over(KILO, ['cm2', 'sqcm']), 'at', 'ksc'],
    MPa: ['n/mm2', 'megapascal', 'megapascals'],
    GPa: ['kn/mm2', 'gigapascal', 'gigapascals'],
    ksi: ['kpsi'],
  },
  volume: {
    'cm³': ['cm3', 'cc', 'ccs', 'ccm', 'ml', 'milliliter', 'millilitre', 'cubiccentimeters'],
    'in³': ['in3', 'cuin', 'ci', 'cid', 'cubicinch', 'cubicinches'],
    L: ['liter', 'liters', 'litre', 'litres', 'ltr', 'dm3'],
    'mm³': ['mm3'],
  },
  mass: {
    g: ['gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'],
    kg: ['kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
    oz: ['ounce', 'ounces'],
    lb: ['lbs', 'pound', 'pounds', '#'],
  },
  temperature: {
    '°C': ['c', 'degc', 'degreec', 'degreesc', 'celsius', 'centigrade', 'degreescelsius'],
    '°F': ['f', 'degf', 'degreef', 'degreesf', 'fahrenheit', 'degreesfahrenheit'],
  },
  'temperature-difference': {
    'Δ°C': ['°c', 'c', 'degc', 'celsius'],
    'Δ°F': ['°f', 'f', 'degf', 'fahrenheit'],
    K: ['kelvin'],
  },
  expansion: {
    'µm/(m·K)': ['um/mk', 'um/m/k', 'ppm/k', 'ppm/°c', 'um/m°c', '10⁻⁶/k'],
    '1/K': ['/k', '1/°c', '/°c', 'k1'],
  },
  flow: {
    'cm³/min': ['cc/min', 'ml/min', 'ccm'],
    'L/min': ['lpm', 'liter/min', 'litre/min'],
    'L/h': ['lph', 'liter/h', 'litre/h'],
    'in³/min': ['cuin/min', 'ci/min'],
  },
  speed: {
    '1/min': ['rpm', 'rpms', 'r/min', 'rev/min', 'revs/min', 'revs', '/min', 'min1', 'u/min'],
  },
  'travel-speed': {
    'm/s': ['mps', 'm/sec', 'ms1'],
    'ft/min': ['fpm', 'feet/min', 'foot/min', "'/min"],
  },
  'spring-rate': {
    'N/mm': ['newton/mm'],
    'lbf/in': over(POUND, INCH),
  },
  time: {
    s: ['sec', 'secs', 'second', 'seconds'],
    min: ['mins', 'minute', 'minutes'],
    h: ['hr', 'hrs', 'hour', 'hours'],
  },
  voltage: { V: ['volt', 'volts'], mV: ['millivolt', 'millivolts'] },
  resistance: { Ω: ['ohm', 'ohms'], kΩ: ['kohm', 'kohms', 'k'] },
  current: {
    A: ['amp', 'amps', 'ampere', 'amperes'],
    mA: ['milliamp', 'milliamps', 'milliampere', 'milliamperes'],
  },
};

/**
 * Quantity → what is written for either of two units.
 * @type {Record<string, {units: [string, string], written: string[]}[]>}
 */
export const TWO_MEANINGS = {
  torque: [
    { units: ['lbf·ft', 'lbf·in'], written: POUND },
    { units: ['kgf·m', 'kgf·cm'], written: [...KILO, 'kgs', 'kilo', 'kilos'] },
  ],
  length: [{ units: ['thou', 'mm'], written: ['mil', 'mils'] }],
  mass: [{ units: ['gram', 'grain'], written: ['gr', 'grs'] }],
  temperature: [{ units: ['°C', '°F'], written: ['°', 'deg', 'degs', 'degree', 'degrees'] }],
  'temperature-difference': [
    { units: ['Δ°C', 'Δ°F'], written: ['°', 'deg', 'degs', 'degree', 'degrees'] },
  ],
};

/**
 * Quantity → what is well known but not read: no thermometer of a workshop shows kelvin.
 * @type {Record<string, string[]>}
 */
export const NOT_TAKEN = { temperature: ['k', '°k', 'degk', 'kelvin', 'kelvins'] };

/**
 * Quantity → what is written for either of two units where capitals are kept apart.
 * @type {Record<string, {units: [string, string], written: string[]}[]>}
 */
export const AS_WRITTEN = { pressure: [{ units: ['MPa', 'millipascal'], written: ['mPa'] }] };
