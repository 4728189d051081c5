/** What a proof can be refused for. */
import { TradeError } from '../errors.js';

/** More pressure held than supplied. */
export class GaugesCrossed extends TradeError {
  static code = 'leak-down-gauges-crossed';
  static says = 'The cylinder gauge reads more than the supply gauge.';
  static nextStep = 'Check which gauge is which, then read both again.';
}

/** Nothing was measured. */
export class NoReadings extends TradeError {
  static code = 'proof-no-readings';
  static says = 'There are no readings of {what}.';
  static nextStep = 'Measure at least once.';
}

/** A trace whose times do not rise. */
export class TimeRunsBack extends TradeError {
  static code = 'proof-time-back';
  static says = 'The times of the trace do not rise.';
  static nextStep = 'Put the readings in the order they were taken.';
}

/** A lower limit above its upper one. */
export class LimitsCrossed extends TradeError {
  static code = 'proof-limits-crossed';
  static says = 'The least {what} lies above the most.';
  static nextStep = 'Look which is which in the manual.';
}

/** A place that the engine does not have. */
export class PlaceUnknown extends TradeError {
  static code = 'proof-place-unknown';
  static says = 'There is no place {place} among {places}.';
  static nextStep = 'Count the places again.';
}
