/** What an amount of money can be refused for. */
import { TradeError } from '../errors.js';

/** No code of ISO 4217 that has a minor unit. */
export class CurrencyUnknown extends TradeError {
  static code = 'money-currency';
  static says = '{currency} is no currency code.';
  static nextStep = 'Use the three letters of ISO 4217, such as EUR or USD.';
}

/** A fraction of the smallest coin. */
export class TooManyDecimals extends TradeError {
  static code = 'money-decimals';
  static says = '{typed} has {decimals} decimals; {currency} has {digits}.';
  static nextStep = 'Type the amount as it stands on the bill.';
}

/** Two currencies in one sum. */
export class CurrenciesMixed extends TradeError {
  static code = 'money-mixed';
  static says = '{one} and {other} are not added without a rate.';
  static nextStep = 'Sum each currency by itself.';
}

/** No amount, so no currency. */
export class NothingToSum extends TradeError {
  static code = 'money-nothing';
  static says = 'There is no amount to sum.';
  static nextStep = 'Give one amount at least.';
}

/** Something else where money belongs, a float above all. */
export class NoMoney extends TradeError {
  static code = 'money-none';
  static says = 'The {what} is no amount of money.';
  static nextStep = 'Give text and currency, such as 12.50 EUR.';
}

/** Nothing to share over. */
export class NoLines extends TradeError {
  static code = 'money-no-lines';
  static says = 'There is no line to share over.';
  static nextStep = 'Give one line at least.';
}

/** A line that costs less than nothing takes no share. */
export class LineBelowZero extends TradeError {
  static code = 'money-line-below-zero';
  static says = 'Line {line} is below zero.';
  static nextStep = 'Leave it out, or take the rebate off another line first.';
}

/** A rate of tax that is no plain decimal of 0 or more. */
export class PercentUnclear extends TradeError {
  static code = 'money-percent';
  static says = '{typed} is no percentage.';
  static nextStep = 'Type it as plain decimal, such as 19 or 7.7.';
}

/** Neither half up nor half even. */
export class RoundingUnknown extends TradeError {
  static code = 'money-rounding';
  static says = '{rounding} is no way of rounding here.';
  static nextStep = 'Choose half up or half even.';
}
