/** A joint and the run on it: which fastener, how much, where did I stop? */
import { value } from '../log/workshop.js';
import { applied } from './applied.js';
import { jointParts } from './held.js';
import { after, asks } from './joint_asks.js';
import { fastenerLine, noteLines, passLine, pullLine } from './joint_lines.js';
import { openLines, passShown, stateOf, unsourcedDue } from './joint_state.js';
import * as plain from './plain.js';
import { programme, targetOf } from './programme.js';
import { progress } from './progress.js';
import { chosen, factsOf, fastenerOf, runs } from './runs.js';
import { adapter } from './setting.js';
import { wantedOfWrench, wrenches, wrenchInHand } from './wrenches.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */
/** @typedef {import('./programme.js').Fastener} Fastener */
/** @typedef {import('./progress.js').Progress} Progress */
/** @typedef {import('./held.js').JointPart} JointPart */
/** @typedef {import('./runs.js').Run} Run */

const RECENT = 20;
const TEXTS = ['name', 'noun', 'plural', 'thread', 'strength_class', 'pattern', 'casting'];

/**
 * All that a screen of a joint needs; run names one of its runs, else the latest counts.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {string | null} [run]
 */
export function joint(workshop, id, run = null) {
  const subject = workshop.subject(id);
  const plan = programme(subject);
  const found = runs(subject);
  const picked = chosen(found, run);
  const now = subject && picked ? progress(subject, picked, plan, workshop) : null;
  const parts = subject ? jointParts(subject, picked, workshop) : [];
  const state = stateOf(plan, now, parts);
  const shown = passShown(plan, now, state);
  const coming = now && state === 'running' ? now.coming : [];
  const following = coming.slice(0, 2).map((each) => nextLine(each, shown));
  return {
    ...described(id, subject, plan, workshop),
    ...partLines(parts, picked),
    ...passLines(plan, now, shown, coming, state),
    ...runLines(picked, found, now, state),
    state,
    next: following[0] ?? null,
    after_next: following[1] ?? null,
    ...pullLines(now),
    ...openLines(now, shown, coming, state),
    asks: subject ? asks(subject, found, now, parts, workshop) : [],
    unsourced_due: unsourcedDue(plan, now, following[0]?.target ?? null),
    wrenches: wrenches(subject, wantedOfWrench(following[0], plan), workshop),
    wrench: wrenchInHand(subject, now),
    applied: applied(subject, state === 'done' ? now : null, workshop),
    after: after(found, picked),
    notes: noteLines(subject, ['note', 'photo']),
  };
}

/**
 * @param {string} id
 * @param {Subject | null} subject
 * @param {Programme} plan
 * @param {Workshop} workshop
 */
function described(id, subject, plan, workshop) {
  const build = plain.text(value(subject, 'build'));
  const { lubricant, source, cautions, invented, sequence, retorque } = plan;
  /** @type {Record<string, string | null>} */
  const texts = Object.fromEntries(TEXTS.map((name) => [name, plain.text(value(subject, name))]));
  return {
    id,
    here: subject !== null && subject.heading !== null,
    hidden: subject?.hidden ?? false,
    name: null,
    noun: null,
    plural: null,
    thread: null,
    pattern: null,
    casting: null,
    ...texts,
    adapter: adapter(subject),
    count: plan.fasteners.size,
    build,
    build_name: plain.text(value(workshop.subject(build ?? ''), 'name')),
    programme: { lubricant, source, cautions, invented, sequence, retorque },
    invented,
  };
}

/**
 * @param {JointPart[]} parts
 * @param {Run | null} run
 */
function partLines(parts, run) {
  const held = parts.filter((each) => each.held);
  return {
    parts: parts.map((each) => ({
      id: each.id,
      name: each.name,
      verdict: each.verdicts,
      held: each.held,
      role: each.role,
    })),
    held: held.map(({ id, name, held: why }) => ({ part: id, name, why, danger: true })),
    held_back: held.length > 0 && (run?.overruled ?? null) === null,
  };
}

/**
 * @param {Programme} plan
 * @param {Progress | null} now
 * @param {Pass | null} shown
 * @param {Fastener[]} coming
 * @param {string} state
 */
function passLines(plan, now, shown, coming, state) {
  const nextOne = coming[0]?.id ?? null;
  const current = now && state !== 'not-begun' && state !== 'done' ? now.current : null;
  const at = current ?? (state === 'not-whole' ? shown : null);
  return {
    passes: [...plan.passes.values()].map((each) => passLine(each, plan, now, at, nextOne)),
    pass: at?.id ?? null,
    pass_number: at?.number ?? null,
    fasteners: [...plan.fasteners.values()].map((each) => fastenerLine(each, shown, now, nextOne)),
  };
}

/**
 * @param {Run | null} run
 * @param {Run[]} found
 * @param {Progress | null} now
 * @param {string} state
 */
function runLines(run, found, now, state) {
  const begun = run?.begun ?? null;
  const line = run && {
    id: run.id,
    begun: begun?.made ?? null,
    by: begun?.by ?? null,
    device: begun?.device ?? null,
    lubricant: run.lubricant,
    wrench: plain.text(begun?.body.wrench),
    overruled: run.overruled,
  };
  return {
    run: state === 'not-begun' ? null : line,
    runs: found.filter(({ stands }) => stands).map(({ id }) => id),
    loosened: now && loosenedLine(now),
  };
}

/** @param {Progress} now */
function loosenedLine({ loosened, plan }) {
  if (!loosened) return null;
  const { id, made, by, device, body } = loosened;
  const named = body.fasteners ?? null;
  const over = [...plan.fasteners.values()].filter(
    (each) => named === null || plain.listed(named).includes(each.id),
  );
  return {
    id,
    reason: plain.text(body.reason),
    made,
    by: by ?? null,
    device,
    all: named === null,
    numbers: over.map(({ number }) => number),
  };
}

/**
 * @param {Fastener} fastener
 * @param {Pass | null} pass
 */
function nextLine({ id, number, group, note, part }, pass) {
  const target = pass ? targetOf(pass, { id, number, group, note, part, x: 0, y: 0 }) : null;
  return { fastener: id, number, group, target, how: pass?.how ?? null, note, part };
}

/** @param {Progress | null} now */
function pullLines(now) {
  const last = now?.last ?? null;
  const touches = now ? factsOf(now.run, 'touch') : [];
  const touched = touches.some(
    (each) => last && each.order > last.fact.order && fastenerOf(each) === fastenerOf(last.fact),
  );
  return {
    recent: (now?.pulls ?? []).slice(-RECENT).reverse().map(pullLine),
    last: last && { ...pullLine(last), touched },
  };
}
