/** What a thread or a property class can be refused for. */
import { TradeError } from '../errors.js';

/** Signs that are no designation of a metric or unified thread. */
export class ThreadUnread extends TradeError {
  static code = 'thread-unread';
  static says = '{typed} is no thread that is known here.';
  static nextStep = 'Write it as M8, M10×1.25, 7/16-20 or #10-32.';
}

/** A size that no table gives one pitch for. */
export class ThreadPitchMissing extends TradeError {
  static code = 'thread-pitch-missing';
  static says = '{typed} alone does not say its pitch.';
  static nextStep = 'Write the pitch behind it, as in {example}.';
}

/** A size or series that stands for two threads. */
export class ThreadTwoMeanings extends TradeError {
  static code = 'thread-two-meanings';
  static says = '{typed} can be {one} or {other}.';
  static nextStep = 'Write the pitch or the threads per inch behind it.';
}

/** A pitch that does not go with its diameter. */
export class ThreadPitchImpossible extends TradeError {
  static code = 'thread-pitch-impossible';
  static says = '{size} cannot have {pitch}.';
  static nextStep = 'If that number is the length of the bolt, leave it out.';
}

/** Threads per inch and series that contradict each other. */
export class ThreadSeriesDiffers extends TradeError {
  static code = 'thread-series-differs';
  static says = '{typed} is {one}, not {other}.';
  static nextStep = 'Count the threads on the bolt, then write it again.';
}

/** No property class of the tables. */
export class ClassUnknown extends TradeError {
  static code = 'class-unknown';
  static says = '{typed} is no property class that is known here.';
  static nextStep = 'Read the head: 8.8, 10.9, 12.9, or SAE 2, SAE 5, SAE 8 by its lines.';
}

/** A property class in a size its standard does not have. */
export class ClassSize extends TradeError {
  static code = 'class-size';
  static says = '{name} is not made in {size}: its table goes from {least} to {most}.';
  static nextStep = 'Look at the head again, or take the value from the manual.';
}

/** A class of metric bolts on an inch thread, or the other way round. */
export class ClassThread extends TradeError {
  static code = 'class-thread';
  static says = '{name} does not belong to {thread}.';
  static nextStep = 'Metric threads have classes like 8.8, inch threads have SAE 2, 5 and 8.';
}
