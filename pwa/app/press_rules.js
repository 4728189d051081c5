/** What counts as a press on a greasy screen: the numbers and the judgement, without any element. */

export const LIMITS = Object.freeze({
  shortest: 80,
  longest: 1500,
  drift: 16,
  alone: 150,
  deaf: 700,
  woken: 300,
  still: 700,
  wetCount: 3,
  wetSpan: 2000,
  wetPress: 600,
  wetQuiet: 10000,
  scrollDrift: 8,
  traceLength: 200,
});

/**
 * @typedef {{x: number, y: number, at: number, moved: number}} Contact
 * @typedef {{at: number, cause: string, target: string}} Rejected
 * @typedef {{contacts: Map<number, Contact>, lastEnd: number, troubles: number[], wetUntil: number,
 *   scrolled: number, woken: number, touched: number, doubled: number, deafUntil: number, trace: Rejected[]}} Glass
 * @typedef {{id: number, x: number, y: number, at: number, alone: boolean, spoilt: boolean}} Press
 * @typedef {{x: number, y: number, at: number, inside: boolean, cancelled?: boolean}} Release
 * @typedef {{confirm?: boolean, typing?: boolean}} Manner
 */

/**
 * The glass as a phone finds it when the page opens.
 * @returns {Glass}
 */
export function newGlass() {
  return {
    contacts: new Map(),
    lastEnd: -Infinity,
    troubles: [],
    wetUntil: -Infinity,
    scrolled: -Infinity,
    woken: -Infinity,
    touched: -Infinity,
    doubled: -Infinity,
    deafUntil: -Infinity,
    trace: [],
  };
}

/**
 * A finger, a sleeve or a drop arrives. Says whether it came alone.
 * @param {Glass} glass
 * @param {{id: number, x: number, y: number, at: number}} contact
 * @returns {boolean}
 */
export function contactDown(glass, { id, x, y, at }) {
  const alone = glass.contacts.size === 0;
  if (!alone) {
    glass.doubled = at;
    trouble(glass, at);
  }
  glass.contacts.set(id, { x, y, at, moved: 0 });
  glass.touched = at;
  return alone;
}

/**
 * A contact slides.
 * @param {Glass} glass
 * @param {{id: number, x: number, y: number}} contact
 */
export function contactMove(glass, { id, x, y }) {
  const known = glass.contacts.get(id);
  if (known) known.moved = Math.max(known.moved, Math.hypot(x - known.x, y - known.y));
}

/**
 * A contact ends. A cancelled one that lay still is a sign of a wet screen; one that slid was a scroll.
 * @param {Glass} glass
 * @param {{id: number, at: number, cancelled: boolean}} contact
 */
export function contactEnd(glass, { id, at, cancelled }) {
  const known = glass.contacts.get(id);
  if (!known) return;
  glass.contacts.delete(id);
  glass.lastEnd = at;
  glass.touched = at;
  if (cancelled && known.moved <= LIMITS.scrollDrift) trouble(glass, at);
}

/**
 * @param {Glass} glass
 * @param {number} at
 */
function trouble(glass, at) {
  glass.troubles = [...glass.troubles.filter((t) => at - t <= LIMITS.wetSpan), at];
  const wet = glass.troubles.length >= LIMITS.wetCount || isWet(glass, at);
  if (wet) glass.wetUntil = at + LIMITS.wetQuiet;
}

/**
 * Whether ghosts were seen lately, so that a confirm wants a longer press.
 * @param {Glass} glass
 * @param {number} at
 */
export function isWet(glass, at) {
  return at < glass.wetUntil;
}

/**
 * Why a press does not count, or null when it does.
 * @param {Glass} glass
 * @param {Press} press
 * @param {Release} release
 * @param {Manner} manner
 * @returns {string | null}
 */
export function judge(glass, press, release, manner = {}) {
  return (
    judgeMoment(glass, press, manner) ??
    judgeContact(press, release, manner) ??
    judgeLength(press, release, Boolean(manner.confirm) && isWet(glass, release.at))
  );
}

/**
 * @param {Glass} glass
 * @param {Press} press
 * @param {Manner} manner
 */
function judgeMoment(glass, press, manner) {
  if (manner.confirm && press.at < glass.deafUntil) return 'just kept';
  if (press.at - glass.woken < LIMITS.woken) return 'just woken';
  if (press.at - glass.scrolled < LIMITS.woken) return 'just scrolled';
  return null;
}

/**
 * @param {Press} press
 * @param {Release} release
 * @param {Manner} manner
 */
function judgeContact(press, release, manner) {
  if (release.cancelled) return 'cancelled';
  if (press.spoilt) return 'two contacts';
  if (!press.alone && !manner.typing) return 'contact just before';
  if (Math.hypot(release.x - press.x, release.y - press.y) > LIMITS.drift) return 'drift';
  return release.inside ? null : 'released outside';
}

/**
 * @param {Press} press
 * @param {Release} release
 * @param {boolean} wet
 */
function judgeLength(press, release, wet) {
  const length = release.at - press.at;
  if (length < LIMITS.shortest) return 'too short';
  if (wet && length < LIMITS.wetPress) return 'screen is wet';
  return length > LIMITS.longest ? 'too long' : null;
}

/**
 * Keeps a rejected contact with its cause, so that the numbers can be tuned from real evenings.
 * @param {Glass} glass
 * @param {Rejected} rejected
 */
export function reject(glass, rejected) {
  glass.trace.push(rejected);
  if (glass.trace.length > LIMITS.traceLength) glass.trace.shift();
}
