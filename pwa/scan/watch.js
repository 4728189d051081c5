/** What the answers of the readers mean for the person: read, dark, hard to read. */

/** @typedef {import('./codes.js').Found} Found */
/** @typedef {import('./codes.js').Other} Other */
/** @typedef {import('./reader.js').Point} Point */
/** @typedef {'starting' | 'looking' | 'dark' | 'hard' | 'refused' | 'no-camera'} State */
/**
 * @typedef {object} Answer
 * @property {Found[]} codes
 * @property {Other[]} others
 * @property {Point[][]} unread boxes of what looks like a label and was not read
 * @property {number} light mean brightness of the picture, 0 to 255
 * @property {number} at when the picture was taken, ms
 */
/**
 * @typedef {object} Hearers
 * @property {(read: {codes: Found[], at: number}) => void} onRead
 * @property {(state: State) => void} onState
 * @property {(other: Other & {at: number}) => void} [onOther] a QR code that is no label of ours
 */

/** A label in view this long and still unread: typing takes over. */
const PATIENCE = 3000;
/** A label not seen for this long is another try. */
const LAPSE = 1000;
const DARK = 38;
const LIGHT_AGAIN = 50;

/**
 * @typedef {object} Tries how long an unread label has been in view
 * @property {number} since NaN when none is
 * @property {number} seen
 * @property {number} read
 */

/**
 * @param {Hearers} hearers
 * @returns {{say: (state: State) => void, take: (answer: Answer) => void}}
 */
export function makeWatch(hearers) {
  /** @type {Tries} */
  const tries = { since: Number.NaN, seen: -PATIENCE, read: -PATIENCE };
  /** @type {State | null} */
  let state = null;

  /** @param {State} next */
  const say = (next) => {
    if (next === state) return;
    state = next;
    hearers.onState(next);
  };

  /** @param {Answer} answer */
  const take = (answer) => {
    tell(hearers, answer);
    say(follow(tries, answer) ? 'hard' : lit(answer.light, state));
  };

  return { say, take };
}

/**
 * @param {Hearers} hearers
 * @param {Answer} answer
 */
function tell({ onRead, onOther }, { codes, others, at }) {
  if (codes.length > 0) onRead({ codes, at });
  else for (const other of others) onOther?.({ ...other, at });
}

/**
 * @param {number} light
 * @param {State | null} state
 * @returns {State}
 */
function lit(light, state) {
  return light < (state === 'dark' ? LIGHT_AGAIN : DARK) ? 'dark' : 'looking';
}

/**
 * The answers of the two readers come mixed, and the fast one often misses what the slow one sees.
 * @param {Tries} tries
 * @param {Answer} answer
 * @returns {boolean} whether a label has been in view, unread, for too long
 */
function follow(tries, { codes, unread, at }) {
  if (codes.length > 0) tries.read = at;
  const fresh = at - tries.read < LAPSE;
  if (fresh || at - tries.seen > LAPSE) tries.since = Number.NaN;
  if (unread.length > 0 && !fresh) {
    tries.seen = at;
    if (Number.isNaN(tries.since)) tries.since = at;
  }
  return at - tries.since >= PATIENCE;
}
