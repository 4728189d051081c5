/** What a choice of a set can be refused for. */
import { TradeError } from '../errors.js';

/** More wanted than there are. */
export class TooFewInPool extends TradeError {
  static code = 'sets-too-few';
  static says = 'There are only {pieces} in the pool; {choose} are wanted.';
  static nextStep = 'Find {missing} more, or choose fewer.';
}

/** Enough pieces, but not enough good ones. */
export class TooFewInside extends TradeError {
  static code = 'sets-too-few-inside';
  static says = 'Only {inside} of {pieces} lie inside the limits; {choose} are wanted.';
  static nextStep = 'Find {missing} more that keep the limits.';
}

/** More than is searched at a time. */
export class TooManyPieces extends TradeError {
  static code = 'sets-too-many';
  static says =
    '{pieces} pieces on {measures} measures are more than are searched at a time: {most}.';
  static nextStep = 'Leave out what is far off, or measure fewer things.';
}

/** A piece without a size for every measure. */
export class MeasureMissing extends TradeError {
  static code = 'sets-measure-missing';
  static says = '{name} has {sizes} sizes for {measures} measures.';
  static nextStep = 'Measure it, or leave it out.';
}

/** Nothing to compare by. */
export class NoMeasure extends TradeError {
  static code = 'sets-no-measure';
  static says = 'There is nothing to compare the pieces by.';
  static nextStep = 'Name one measure at least.';
}

/** Two pieces of one name. */
export class NameDoubled extends TradeError {
  static code = 'sets-name-doubled';
  static says = '{name} stands in the pool twice.';
  static nextStep = 'Give each piece a name of its own.';
}

/** Pinned or excluded, but not there. */
export class NameUnknown extends TradeError {
  static code = 'sets-name-unknown';
  static says = '{name} is not in the pool.';
  static nextStep = 'Look for its name in the list.';
}

/** More pinned than are chosen, or pinned and excluded at once. */
export class PinnedTwiceOver extends TradeError {
  static code = 'sets-pinned';
  static says = '{pinned} are pinned and {choose} are wanted, or one is both pinned and left out.';
  static nextStep = 'Unpin some, or choose more.';
}

/** A pinned piece that does not keep a hard limit. */
export class PinnedOutside extends TradeError {
  static code = 'sets-pinned-outside';
  static says = '{name} is pinned but lies {side} the limit of {measure}.';
  static nextStep = 'Unpin it, or look at the limit again.';
}

/** A window with its ends exchanged. */
export class LimitsCrossed extends TradeError {
  static code = 'sets-limits-crossed';
  static says = 'The lower limit of {measure} is above the upper one.';
  static nextStep = 'Look which is which, and type both again.';
}
