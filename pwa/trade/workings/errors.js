/** What a working can refuse before any rule is asked. */
import { RequestProblem, TradeError } from '../../errors.js';

/** No working has this name. */
export class WorkingUnknown extends RequestProblem {
  static code = 'working-unknown';
  static says = 'No working is called {working}.';
  static nextStep = 'Choose one of these: {known}.';
}

/** A value that the working does not ask for. */
export class AskUnknown extends TradeError {
  static code = 'working-ask-unknown';
  static says = 'This working does not ask for {ask}.';
  static nextStep = 'It asks for these: {known}.';
}

/** A value the working cannot do without. */
export class AskMissing extends TradeError {
  static code = 'working-missing';
  static says = 'The {ask} is missing.';
  static nextStep = 'Type it, then look again.';
}

/** A value in a shape that cannot be read. */
export class AskShape extends TradeError {
  static code = 'working-shape';
  static says = 'The {ask} {trouble}.';
  static nextStep = 'Give a number with its unit, like 60 N·m.';
}

/** A word that is none of the choices. */
export class NotAChoice extends TradeError {
  static code = 'working-choice';
  static says = '{typed} is none of the choices.';
  static nextStep = 'Choose one of these: {known}.';
}

/** Rows of which some numbers are missing. */
export class RowsUneven extends TradeError {
  static code = 'working-rows';
  static says = 'Every {row} needs all of its numbers.';
  static nextStep = 'Fill in what is missing, or leave the whole {row} out.';
}

/** Two workings, or two values of one working, have the same name. */
export class WorkingDoubled extends TradeError {
  static code = 'working-doubled';
  static says = 'The name {name} is taken or cannot be used.';
  static nextStep = 'Choose another name.';
}
