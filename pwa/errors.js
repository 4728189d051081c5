/**
 * The floor: every error of the house has a code, a sentence for a person, and a next step.
 * The codes are those of the server; a code never changes once it is out.
 */

/** Something a person can do something about. */
export class WitnessmarkError extends Error {
  static code = 'witnessmark';
  static says = 'Something is not as it should be.';
  static nextStep = 'Look at the trace on the computer, then try again.';

  /** @param {Record<string, unknown>} [facts] what the sentence is filled in with */
  constructor(facts = {}) {
    super();
    const kind = /** @type {typeof WitnessmarkError} */ (this.constructor);
    this.code = kind.code;
    this.facts = facts;
    this.says = filled(kind.says, facts);
    this.next = filled(kind.nextStep, facts);
    this.message = this.says;
  }

  /** The shape an answer has on the wire. */
  answer() {
    return { code: this.code, says: this.says, next: this.next };
  }
}

/**
 * @param {string} template
 * @param {Record<string, unknown>} facts
 */
function filled(template, facts) {
  return template.replace(/\{(\w+)\}/g, (_, name) => plain(facts[name]));
}

/** As much of a fact as a person reads, without half signs. @param {unknown} fact */
const plain = (fact) =>
  String(typeof fact === 'object' ? JSON.stringify(fact) : fact)
    .slice(0, 300)
    .replace(/\p{Surrogate}/gu, '?');

/**
 * A further kind of error.
 * @template {typeof WitnessmarkError} T
 * @param {T} base
 * @param {string} code
 * @param {string} says
 * @param {string} [nextStep]
 * @returns {T}
 */
function kind(base, code, says, nextStep = base.nextStep) {
  const made = class extends /** @type {any} */ (base) {};
  return /** @type {T} */ (/** @type {unknown} */ (Object.assign(made, { code, says, nextStep })));
}

/** The log will not take this one entry; the phone keeps it until it is repaired. */
export class Refusal extends WitnessmarkError {
  static code = 'refused';
  static says = 'The computer would not take this entry.';
  static nextStep = 'Enter it again, or strike it out.';
}

/** What cannot be true on an engine. */
export class TradeError extends Refusal {
  static code = 'cannot-be';
  static says = 'This cannot be so on an engine.';
  static nextStep = 'Look again and enter it anew.';
}

/** A whole request is turned away. */
export class RequestProblem extends WitnessmarkError {
  static code = 'request';
  static says = 'This request cannot be answered.';
  static nextStep = 'Load the page anew, then try again.';
}

/** The phone's disk did not take what was entered. */
export class NotKept extends WitnessmarkError {
  static code = 'not-kept';
  static says = 'Not kept.';
  static nextStep = 'Press again.';
}

/** An entry that is no JSON object. */
export const NotAnObject = kind(Refusal, 'not-an-object', 'This entry is no object with fields.');

/** A field that every entry, or every entry of its heading, must have. */
export const FieldMissing = kind(Refusal, 'field-missing', '{what} is missing.');

/** A field is there but cannot be read. */
export const FieldShape = kind(Refusal, 'field-shape', '{what} {trouble}.');

/** A JSON number that the two languages would not write alike. */
export const NumberNotWhole = kind(
  Refusal,
  'number-not-whole',
  'The number {number} is not a whole one that every device writes alike.',
  'Write a measured value as text with its unit, and enter it again.',
);

/** Keys, signs or nesting that have no single canonical text. */
export const TextNotClean = kind(
  Refusal,
  'text-not-clean',
  'The text of this entry cannot be kept: {trouble}.',
);

/** More than 64 KiB in one entry. */
export const EntryTooLarge = kind(
  Refusal,
  'entry-too-large',
  'This entry has {size} bytes; 65536 is the most one may have.',
  'Split it into several, or shorten its text.',
);

/** Another entry has this id already. */
export const IdTaken = kind(
  Refusal,
  'id-taken',
  'Another entry already has the id {id}.',
  'Enter it again, so that it gets an id of its own.',
);

/** A body that no JSON parser reads. */
export const NotJson = kind(
  RequestProblem,
  'not-json',
  'What was sent is no JSON text: {trouble}.',
  'Send one JSON object in UTF-8.',
);

/** More entries, bytes or nesting than one request may carry. */
export const TooMuch = kind(
  RequestProblem,
  'too-much',
  'This is more than one request may carry: {trouble}.',
  'Send it in smaller portions.',
);

/** The phone has no room. */
export const NotKeptFull = kind(
  NotKept,
  'not-kept-full',
  'Not kept: the phone is full.',
  'Free some room, then press again.',
);

/** The browser closed the phone's store. */
export const NotKeptClosed = kind(
  NotKept,
  'not-kept-closed',
  'Not kept: the browser has closed its store.',
  'Load the page anew, then press again.',
);

/** A moment that does not fit the 48 bits of an id or a stamp. */
export const TimeBeyond = kind(
  WitnessmarkError,
  'time-beyond',
  'The clock shows {ms} ms, which no id can hold.',
  'Set the clock of this device.',
);

/** Two modules claim one heading. */
export const HeadingDoubled = kind(
  WitnessmarkError,
  'heading-doubled',
  'Two modules record under the heading {word}.',
  'Rename one of them.',
);

/**
 * Codes the server turns a whole request away with; it sends sentence and next step along.
 */
export const REQUEST_CODES = Object.freeze([
  'type-unknown',
  'log-forked',
  'device-unknown',
  'device-revoked',
  'pairing-code-unknown',
  'pairing-paused',
  'part-unknown',
  'joint-unknown',
  'address-unknown',
  'method-unknown',
  'photo-differs',
  'photo-unknown',
  'no-room',
  'store-busy',
  'something-broke',
  'folder-not-fit',
  'database-not-fit',
  'folder-not-empty',
  'file-unreadable',
  'file-not-written',
  'device-missing',
  'holder-unknown',
  'sheet-unknown',
]);
