// Shared cases of what is counted: geometry, sets, yields and money.
import * as assemblies from '../../../pwa/trade/assemblies.js';
import * as compressionRatio from '../../../pwa/trade/compression_ratio.js';
import * as degreeWheel from '../../../pwa/trade/degree_wheel.js';
import * as geometry from '../../../pwa/trade/geometry.js';
import * as money from '../../../pwa/trade/money.js';
import * as pairing from '../../../pwa/trade/pairing.js';
import * as sets from '../../../pwa/trade/sets.js';
import * as tax from '../../../pwa/trade/tax.js';
import * as yields from '../../../pwa/trade/yields.js';

const rule = (called) => (given) => called(...Object.values(given));

/** A result with its amounts of money as text. */
function plain(made) {
  if (typeof made?.minor === 'bigint') return money.text(made);
  if (Array.isArray(made)) return made.map(plain);
  if (typeof made !== 'object') return made;
  return Object.fromEntries(Object.entries(made).map(([key, each]) => [key, plain(each)]));
}

const KEPT = ['percent', 'rounding', 'brought', 'needed'];

const ofMoney = (called) => (given) => {
  const { currency, ...rest } = given;
  const read = (each) =>
    Array.isArray(each) ? each.map(read) : money.parse(each, currency);
  const made = Object.entries(rest).map(([key, each]) => (KEPT.includes(key) ? each : read(each)));
  return plain(called(...made));
};

const camel = (key) => key.replace(/_(.)/g, (_, sign) => sign.toUpperCase());

function parts(given) {
  const made = { cylinder: {}, unsure: {} };
  for (const [key, each] of Object.entries(given)) {
    const unsure = key.includes('_u_');
    made[unsure ? 'unsure' : 'cylinder'][camel(key.replace('_u_', '_'))] = each;
  }
  return made;
}

function compression(given) {
  const { cylinder, unsure } = parts(given);
  const found = compressionRatio.measured(cylinder, unsure);
  const { ratio, clearance_volume_cm3, quench_mm, standard_uncertainty, low, high } = found;
  const matters = found.matters.map(([name]) => name);
  return { ratio, clearance_volume_cm3, quench_mm, standard_uncertainty, low, high, matters };
}

function best(given) {
  const { pieces, measures, choose, ...wish } = given;
  const found = sets.best(pieces, measures, choose, wish);
  return { ...found, spares: found.spares.map((each) => each.name) };
}

const learned = (called) => (g) =>
  called(g.needed, g.inspected, g.rejected, g.chance, g.prior_a, g.prior_b);

export const rules = {
  'geometry.displacement': rule(geometry.displacement),
  'geometry.swept_volume': rule(geometry.sweptVolume),
  'geometry.gasket_volume': rule(geometry.gasketVolume),
  'geometry.deck_volume': rule(geometry.deckVolume),
  'geometry.ring_land_volume': rule(geometry.ringLandVolume),
  'geometry.quench': rule(geometry.quench),
  'geometry.deck_cut': rule(geometry.deckCut),
  'geometry.mean_piston_speed': rule(geometry.meanPistonSpeed),
  'geometry.speed_for': rule(geometry.speedFor),
  'compression_ratio.ratio': rule(compressionRatio.ratio),
  'compression_ratio.ratio_uncertainty': rule(compressionRatio.ratioUncertainty),
  'compression_ratio.clearance_for': rule(compressionRatio.clearanceFor),
  'compression_ratio.measured': compression,
  'compression_ratio.change_for': ({ wanted, ...given }) =>
    compressionRatio.changeFor(parts(given).cylinder, wanted),
  'degree_wheel.timing': rule(degreeWheel.timing),
  'degree_wheel.readings_for': rule(degreeWheel.readingsFor),
  'degree_wheel.true_top': rule(degreeWheel.trueTop),
  'degree_wheel.corrected': rule(degreeWheel.corrected),
  'money.minor_digits': (g) => money.minorDigits(g.currency),
  'money.parse': (g) => money.text(money.parse(g.typed, g.currency)),
  'money.total': ofMoney(money.total),
  'money.shared': ofMoney(money.shared),
  'money.times': (g) => money.text(money.times(money.parse(g.price, g.currency), g.count)),
  'tax.tax_on': ofMoney(tax.taxOn),
  'tax.tax_within': ofMoney(tax.taxWithin),
  'yields.share_rejected': (g) =>
    yields.shareRejected(g.inspected, g.rejected, g.prior_a, g.prior_b, g.credible),
  'yields.bring': (g) => yields.bring(g.needed, g.share_good, g.chance),
  'yields.bring_learned': learned(yields.bringLearned),
  'yields.chance': (g) => yields.chance(g.brought, g.needed, g.share_good),
  'yields.chance_learned': (g) =>
    yields.chanceLearned(g.brought, g.needed, g.inspected, g.rejected, g.prior_a, g.prior_b),
  'yields.used_against_new': ofMoney(yields.usedAgainstNew),
  'sets.best': best,
  'sets.spares': (g) => {
    const { pieces, measures, choose, ...wish } = g;
    const { spreads, spares } = sets.best(pieces, measures, choose, wish);
    return { spreads, spares };
  },
  'pairing.pair': rule(pairing.pair),
  'assemblies.balance': ({ together, ...columns }) => {
    const { spread_g, proved } = assemblies.balance(Object.values(columns), together);
    return { spread_g, proved };
  },
};
