/**
 * The closed lists of unit words: what stands on the screen and on the wire, quantity by quantity.
 * A word belongs to one quantity only. "speed" is of turning, rpm in the trade.
 */

/** Quantity → word → its size in SI units, exact: decimal text, or one over another. */
export const UNIT_WORDS = Object.freeze({
  torque: {
    N·m: '1',
    lbf·ft: '1.3558179483314004',
    lbf·in: '0.1129848290276167',
    kgf·m: '9.80665',
  },
  // An angle counts in degrees; the radian has no exact size.
  angle: { '°': '1', turn: '360' },
  force: { N: '1', kN: '1000', lbf: '4.4482216152605', kgf: '9.80665' },
  length: {
    mm: '0.001',
    µm: '0.000001',
    cm: '0.01',
    m: '1',
    in: '0.0254',
    thou: '0.0000254',
    ft: '0.3048',
  },
  area: { 'mm²': '0.000001', 'cm²': '0.0001', 'in²': '0.00064516' },
  pressure: {
    kPa: '1000',
    bar: '100000',
    psi: '4.4482216152605/0.00064516',
    'kgf/cm²': '98066.5',
    MPa: '1000000',
    GPa: '1000000000',
    ksi: '4448.2216152605/0.00064516',
  },
  volume: { 'cm³': '0.000001', 'in³': '0.000016387064', L: '0.001', 'mm³': '0.000000001' },
  mass: { g: '0.001', kg: '1', oz: '0.028349523125', lb: '0.45359237' },
  temperature: { '°C': '1', '°F': '5/9' },
  'temperature-difference': { 'Δ°C': '1', 'Δ°F': '5/9', K: '1' },
  expansion: { 'µm/(m·K)': '0.000001', '1/K': '1' },
  flow: {
    'cm³/min': '0.000001/60',
    'L/min': '0.001/60',
    'L/h': '0.001/3600',
    'in³/min': '0.000016387064/60',
  },
  speed: { '1/min': '1/60' },
  'travel-speed': { 'm/s': '1', 'ft/min': '0.3048/60' },
  'spring-rate': { 'N/mm': '1000', 'lbf/in': '4.4482216152605/0.0254' },
  time: { s: '1', min: '60', h: '3600' },
  voltage: { V: '1', mV: '0.001' },
  resistance: { Ω: '1', kΩ: '1000' },
  current: { A: '1', mA: '0.001' },
});

/** What is added after sizing, to come to degrees Celsius: only temperatures have such an offset. */
export const OFFSETS = Object.freeze({ '°F': '-160/9' });
