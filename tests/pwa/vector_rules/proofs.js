// Shared cases of proofs: leak-down, compression, oil pressure, prime.
import * as proof from '../../../pwa/trade/proof.js';

export const rules = {
  'proof.leakage': (g) => proof.leakage(g.supplied_kPa, g.held_kPa),
  'proof.leaks_no_more_than': (g) => proof.leaksNoMoreThan(g.share, g.limit),
  'proof.orifice': (g) => proof.orifice(g.bore_mm),
  'proof.evenness': (g) => proof.evenness(g.readings_kPa),
  'proof.is_even': (g) => proof.isEven(g.lowest_over_highest, g.limit),
  'proof.time_to': (g) => proof.timeTo(g.points, g.threshold_kPa),
  'proof.plateau': (g) => proof.plateau(g.points, g.last_s),
  'proof.missing_places': (g) => proof.missingPlaces(g.places, g.seen),
  'proof.oil_pressure': (g) =>
    proof.oilPressure(
      { pressureKpa: g.pressure_kPa, speed: g.speed, temperatureC: g.temperature_C },
      g.limits,
    ),
};
