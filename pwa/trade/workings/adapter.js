/** Adapter: what to set on a wrench so that the wanted torque arrives at the bolt. */
import { effectiveLength, plan } from '../adapter.js';
import { convert } from '../units.js';
import { caution } from './cautions.js';
import { amount, text } from './lines.js';
import { ask } from './working.js';

/**
 * Setting, nearest mark, what then arrives at the bolt with its band, and the lever.
 * @param {import('./given.js').Given} given
 */
function work(given) {
  const unit = given.unit('wanted');
  const wrenchLength = given.inside('wrench-length', 'mm');
  const adapterLength = given.inside('adapter-length', 'mm');
  const angle = given.inside('angle', '°');
  const found = plan(given.inside('wanted', 'N·m'), wrenchLength, adapterLength, angle, {
    graduationNm: given.insideOrNull('graduation', 'N·m'),
    share: given.share('deviation'),
    leastNm: given.insideOrNull('least', 'N·m'),
    mostNm: given.insideOrNull('most', 'N·m'),
  });
  const own = (/** @type {number} */ torque) => convert(torque, 'N·m', unit);
  const length = given.unit('wrench-length');
  const lever = convert(effectiveLength(wrenchLength, adapterLength, angle), 'mm', length);
  const setting = own(found.setting_N_m);
  const marked = given.has('graduation') ? [amount('nearest-mark', own(found.mark_N_m), unit)] : [];
  return {
    lines: [
      amount('setting', setting, unit),
      ...marked,
      amount('at-the-bolt', own(found.applied_N_m), unit, {
        band: [own(found.low_N_m), own(found.high_N_m)],
      }),
      amount('lever', lever, length),
    ],
    cautions: [...range(given, found.fits, text(setting, unit)), caution('adapter-grip')],
  };
}

/**
 * @param {import('./given.js').Given} given
 * @param {string} fits
 * @param {string} setting
 */
function range(given, fits, setting) {
  const typed = (/** @type {string} */ name) =>
    `${given.typed(name).value} ${given.typed(name).unit}`;
  if (fits === 'starts-at')
    return [caution('adapter-starts-at', { least: typed('least'), setting })];
  if (fits === 'ends-at') return [caution('adapter-ends-at', { most: typed('most'), setting })];
  return [];
}

/** @type {import('./working.js').Working} */
export const ADAPTER = {
  name: 'adapter',
  formula: 'setting = wanted × L ÷ (L + E × cos angle); L wrench length, E adapter length',
  source:
    'US Army TM 9-254, adapter length compensation, figures 45 and 46. Deviation: ISO 6789-1:2017, quoted from memory.',
  asks: [
    ask('wanted', 'torque', { unit: 'N·m' }),
    ask('wrench-length', 'length', { unit: 'mm' }),
    ask('adapter-length', 'length', { unit: 'mm' }),
    ask('angle', 'angle', { unit: '°', default: '0' }),
    ask('deviation', 'share', { default: '4' }),
    ask('graduation', 'torque', { unit: 'N·m', optional: true }),
    ask('least', 'torque', { unit: 'N·m', optional: true }),
    ask('most', 'torque', { unit: 'N·m', optional: true }),
  ],
  work,
  blames: {
    'adapter-angle': 'angle',
    'adapter-no-lever': 'angle',
    'wrench-graduation': 'graduation',
  },
};
