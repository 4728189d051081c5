/** What a number or a unit word can be refused for. */
import { TradeError } from '../errors.js';

/** Nothing was typed where a number belongs. */
export class NumberMissing extends TradeError {
  static code = 'number-missing';
  static says = 'No number was typed.';
  static nextStep = 'Type what the scale showed.';
}

/** Signs that make no number. */
export class NumberUnclear extends TradeError {
  static code = 'number-unclear';
  static says = '{typed} is no number.';
  static nextStep = 'Type figures and one decimal sign.';
}

/** A number that two countries read differently. */
export class NumberTwoMeanings extends TradeError {
  static code = 'number-two-meanings';
  static says = '{typed} can be {one} or {other}.';
  static nextStep = 'Type it with one decimal sign and no sign between thousands.';
}

/** Less than nothing, where that cannot be. */
export class NumberNegative extends TradeError {
  static code = 'number-negative';
  static says = '{typed} is below zero.';
  static nextStep = 'Leave the minus sign out.';
}

/** More digits than any instrument shows. */
export class NumberTooLong extends TradeError {
  static code = 'number-too-long';
  static says = '{typed} has more than 15 digits.';
  static nextStep = 'Type the digits the scale shows.';
}

/** A unit word outside the closed lists. */
export class UnitUnknown extends TradeError {
  static code = 'unit-unknown';
  static says = '{unit} is not one of the units used here.';
  static nextStep = 'Choose the unit from the keys.';
}

/** Two units that do not measure the same. */
export class UnitsDiffer extends TradeError {
  static code = 'units-differ';
  static says = '{unit} and {other} do not measure the same thing.';
  static nextStep = 'Choose the unit from the keys.';
}

/** Colder than anything can be. */
export class BelowAbsoluteZero extends TradeError {
  static code = 'temperature-below-zero';
  static says = '{typed} is below the absolute zero.';
  static nextStep = 'Read the thermometer again, and look at the unit.';
}

/** A bare number where an amount with its unit belongs. */
export class NoQuantity extends TradeError {
  static code = 'quantity-missing';
  static says = 'The {argument} has no unit.';
  static nextStep = 'Give the number together with its unit.';
}

/** An amount of something else than the rule wants. */
export class WrongQuantity extends TradeError {
  static code = 'quantity-wrong';
  static says = 'The {argument} is not in a unit of {wanted}.';
  static nextStep = 'Choose a unit of that quantity.';
}

/** A bare number was typed where its unit is not known. */
export class UnitMissing extends TradeError {
  static code = 'unit-missing';
  static says = '{typed} has no unit.';
  static nextStep = 'Type the unit behind it: {words}.';
}

/** A unit that the trade writes for two. */
export class UnitTwoMeanings extends TradeError {
  static code = 'unit-two-meanings';
  static says = '{typed} can be {one} or {other}.';
  static nextStep = 'Type the whole unit.';
}

/** A unit that is well known, but not read for this quantity. */
export class UnitNotTaken extends TradeError {
  static code = 'unit-not-taken';
  static says = '{unit} is not taken here.';
  static nextStep = 'Type it in {words}.';
}
