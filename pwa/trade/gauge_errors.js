/** What a gauge study is turned away for. */
import { TradeError } from '../errors.js';

/** Too few people, repeats or parts. */
export class StudyTooSmall extends TradeError {
  static code = 'gauge-study-small';
  static says = 'A gauge study needs at least two people, two repeats and two parts.';
  static nextStep = 'Let somebody else measure the same parts, twice each.';
}

/** More than the factors reach. */
export class StudyTooLarge extends TradeError {
  static code = 'gauge-study-large';
  static says = 'A gauge study here has at most 25 people, repeats or parts.';
  static nextStep = 'Leave some out.';
}

/** Somebody measured more or fewer. */
export class StudyUneven extends TradeError {
  static code = 'gauge-study-uneven';
  static says = 'Everybody must measure the same parts equally often.';
  static nextStep = 'Complete the missing readings, or leave that part out for all.';
}

/** Every reading is the same. */
export class NoSpread extends TradeError {
  static code = 'gauge-study-no-spread';
  static says = 'All readings are the same: the steps of this gauge are too coarse to study it.';
  static nextStep = 'Use parts that differ, or a gauge with finer steps.';
}

/** Neither kept nor pooled. */
export class MethodUnknown extends TradeError {
  static code = 'gauge-study-method';
  static says = '{interaction} is no way to treat the interaction.';
  static nextStep = 'Choose kept or pooled.';
}
