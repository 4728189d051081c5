// Shared cases of what is measured: the keys of a case are the arguments, in order.
import * as adapter from '../../../pwa/trade/adapter.js';
import * as dimension from '../../../pwa/trade/dimension.js';
import * as limits from '../../../pwa/trade/limits.js';
import * as points from '../../../pwa/trade/points.js';
import * as sequence from '../../../pwa/trade/sequence.js';
import * as units from '../../../pwa/trade/units.js';
import * as wrench from '../../../pwa/trade/wrench.js';

const measured = (given) => given && units.measured(given.value, given.unit);

/** The named facts of a case as arguments in order; what a case leaves out is left out. */
const rule = (called, keys) => (given) => called(...keys.split(' ').map((key) => given[key]));

const LEVER = 'wrench_length_mm adapter_length_mm angle_deg';

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
};
