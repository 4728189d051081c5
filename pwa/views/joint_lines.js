/** The lines a joint is made of: one pass, one fastener, one pull, one note. */
import * as plain from './plain.js';
import { targetOf } from './programme.js';
import { cellOf, openIn, wholeIn } from './progress.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */
/** @typedef {import('./programme.js').Fastener} Fastener */
/** @typedef {import('./progress.js').Progress} Progress */
/** @typedef {import('./pulls.js').Pull} Pull */

/**
 * One pass with its marks.
 * @param {Pass} pass
 * @param {Programme} plan
 * @param {Progress | null} now
 * @param {Pass | null} at the pass the run is in
 * @param {string | null} nextOne
 */
export function passLine(pass, plan, now, at, nextOne) {
  const fasteners = [...plan.fasteners.keys()];
  const isNow = at?.id === pass.id;
  const marks = fasteners.map((each) => [each, markOf(now, pass, each, isNow ? nextOne : null)]);
  const open = now ? openIn(now, pass).map(({ number }) => number) : [];
  const behind = now !== null && (now.left.has(pass.id) || !open.length);
  return {
    id: pass.id,
    how: pass.how,
    number: pass.number,
    values: pass.values,
    done: now ? fasteners.filter((each) => cellOf(now, pass, each).counts).length : 0,
    of: fasteners.length,
    state: pending(isNow, behind),
    whole: now !== null && fasteners.length > 0 && wholeIn(now, pass),
    left: now?.left.get(pass.id) ?? null,
    marks: Object.fromEntries(marks),
    open,
  };
}

/**
 * @param {boolean} isNow
 * @param {boolean} behind
 */
function pending(isNow, behind) {
  if (isNow) return 'now';
  return behind ? 'done' : 'todo';
}

/**
 * One fastener as it stands in the pass that is shown.
 * @param {Fastener} fastener
 * @param {Pass | null} shown
 * @param {Progress | null} now
 * @param {string | null} nextOne
 */
export function fastenerLine(fastener, shown, now, nextOne) {
  const latest = now && shown ? cellOf(now, shown, fastener.id).latest : null;
  const ofIt = now ? now.pulls.filter((each) => each.fastener?.id === fastener.id) : [];
  const gone = now?.undone && ofIt.length > 0;
  return {
    ...fastener,
    target: shown ? targetOf(shown, fastener) : null,
    mark: gone ? 'void' : markOf(now, shown, fastener.id, nextOne),
    flags: latest?.flags ?? [],
    pull: latest?.fact.id ?? null,
    reading: plain.measured(latest?.fact.body.reading),
    live: ofIt.filter(({ live }) => live).map(({ fact }) => fact.id),
  };
}

/**
 * @param {Progress | null} now
 * @param {Pass | null} pass
 * @param {string} fastener
 * @param {string | null} nextOne
 */
function markOf(now, pass, fastener, nextOne) {
  if (fastener === nextOne) return 'next';
  return now && pass ? cellOf(now, pass, fastener).mark : 'todo';
}

/**
 * One pull, with what must be said of it.
 * @param {Pull} pull
 */
export function pullLine({ fact, fastener, pass, mark, flags, accepted }) {
  const { body } = fact;
  return {
    id: fact.id,
    number: fastener?.number ?? null,
    fastener: plain.text(body.fastener),
    pass: plain.text(body.pass),
    how: pass?.how ?? null,
    target: plain.measured(body.target),
    reading: plain.measured(body.reading),
    read_at: plain.text(body.read_at),
    wrench: plain.text(body.wrench),
    mark,
    flags,
    accepted,
    together: body.together === true,
    ...madeBy(fact),
  };
}

/**
 * When, by whom, on which device, and whether it is struck out.
 * @param {Fact} fact
 */
export function madeBy({ made, by, device, clock_off, struck }) {
  return {
    made,
    by: by ?? null,
    device,
    clock_off,
    struck: struck && {
      id: struck.id,
      reason: struck.reason,
      made: struck.made,
      device: struck.device,
    },
  };
}

/**
 * What was noted about a thing, newest first, struck ones too.
 * @param {Subject | null} subject
 * @param {string[]} headings
 */
export function noteLines(subject, headings) {
  const facts = subject?.facts.filter(({ heading }) => headings.includes(heading)) ?? [];
  return facts.reverse().map((fact) => ({
    id: fact.id,
    heading: fact.heading,
    text: plain.text(fact.body.text) ?? plain.text(fact.body.says),
    photos: photos(fact.body),
    body: fact.body,
    ...madeBy(fact),
  }));
}

/**
 * The photos a body names, in a list or alone.
 * @param {plain.Facts} body
 * @returns {{photo: string, says: string | null}[]}
 */
export function photos(body) {
  return [...plain.mappings(body.photos), body]
    .filter(({ photo }) => typeof photo === 'string')
    .map(({ photo, says }) => ({ photo, says: plain.text(says) }));
}
