/** One part: what is it, may I use it, how is it tightened, what has been done to it? */
import { standing, value } from '../log/workshop.js';
import { cameBack, out } from './away.js';
import { isSingleUse } from './held.js';
import { madeBy, noteLines, photos } from './joint_lines.js';
import { kindOf } from './kind_of.js';
import { placeOf } from './own_place.js';
import * as plain from './plain.js';
import { latestFirst, summary } from './summary.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./summary.js').Summary} Summary */

const NOTED = ['note', 'photo', 'purchase', 'add', 'take', 'reading'];

/**
 * The record of a part.
 * @param {Workshop} workshop
 * @param {string} id
 */
export function part(workshop, id) {
  const subject = workshop.subject(id);
  const joints = jointLines(workshop, id);
  const verdict = things.verdict(subject);
  const lies = things.lies(workshop, subject);
  /** @param {string} heading */
  const ids = (heading) => standing(subject, heading).map((fact) => fact.id);
  return {
    id,
    heading: subject?.heading ?? null,
    ...things.described(subject),
    name: plain.text(value(subject, 'name')),
    ...kindOf(workshop, subject),
    ...counts(subject),
    own_place: placeOf(workshop, id),
    single_use: isSingleUse(subject, workshop),
    thread: plain.text(value(subject, 'thread')),
    note: plain.text(value(subject, 'note')),
    ...things.labels(workshop, id),
    from: origin(workshop, subject),
    ...lies,
    for: purpose(workshop, subject),
    ...fitted(workshop, subject),
    away: out(subject),
    verdict,
    joints,
    inspections: inspections(subject),
    notes: noteLines(subject, NOTED),
    strikes: things.strikes(subject),
    lost: things.lost(subject),
    unread: subject?.unread ?? [],
    next: nextOf(joints, wordOf(subject), lies.lies.length),
    after: { place: ids('place'), verdict: ids('verdict'), fitted: ids('fitted') },
    invented: value(subject, 'invented') === true || joints.some(({ invented }) => invented),
  };
}

/** How many, how many of them are single now, and which number it has itself. @param {Subject | null} subject */
function counts(subject) {
  return {
    quantity: things.quantity(subject),
    single: things.single(subject).length,
    bag: plain.text(value(subject, 'bag')),
    number: plain.whole(value(subject, 'number')),
  };
}

/**
 * The joints it is clamped by and those it holds; each once, by name.
 * @param {Workshop} workshop
 * @param {string} id
 */
function jointLines(workshop, id) {
  /** @type {Map<string, string>} */
  const roles = new Map();
  for (const role of ['clamps', 'holds-with']) {
    for (const each of workshop.linked(id, role)) {
      if (!each.hidden && !roles.has(each.id)) roles.set(each.id, role);
    }
  }
  const lines = [...roles].map(([joint, role]) => summary(workshop, joint, role));
  return plain.sorted(lines, (line) => [plain.natural(line.name), line.id]);
}

/**
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 */
function origin(workshop, subject) {
  const donor = plain.text(value(subject, 'donor'));
  return {
    donor,
    name: things.nameOf(workshop, donor),
    text: plain.text(value(subject, 'from')),
  };
}

/**
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 */
function purpose(workshop, subject) {
  const build = plain.text(value(subject, 'build'));
  return {
    build,
    name: things.nameOf(workshop, build),
    place: plain.text(value(subject, 'for')),
  };
}

/**
 * @param {Workshop} workshop
 * @param {Subject | null} subject
 */
function fitted(workshop, subject) {
  const lines = standing(subject, 'fitted').map((fact) => {
    const build = plain.text(fact.body.build);
    return {
      id: fact.id,
      build,
      name: things.nameOf(workshop, build),
      place: plain.text(fact.body.place),
      reason: plain.text(fact.body.reason),
      ...madeBy(fact),
    };
  });
  const places = plain.once(lines.map(({ build, place }) => JSON.stringify([build, place])));
  return { fitted: lines, fitted_ask: places.length > 1 };
}

/** @param {Subject | null} subject */
function inspections(subject) {
  const facts = subject?.facts.filter(({ heading }) => heading === 'inspection') ?? [];
  return facts.reverse().map((fact) => ({
    id: fact.id,
    verdict: plain.text(fact.body.verdict),
    reason: plain.text(fact.body.reason),
    note: plain.text(fact.body.note),
    looks: plain.mappings(fact.body.looks).map(({ criterion, good }) => ({
      criterion: plain.text(criterion),
      good: good === true,
    })),
    readings: plain.listed(fact.body.readings),
    photos: photos(fact.body),
    ...madeBy(fact),
  }));
}

/**
 * The verdict that decides what is next; nothing is asked of what is single now, and what came
 * back from the machine shop is not what was judged before.
 * @param {Subject | null} subject
 */
function wordOf(subject) {
  if (things.emptied(subject)) return 'empty';
  return cameBack(subject) ? null : things.verdict(subject).word;
}

/**
 * The one thing to do: go on, inspect, begin, put away, in this order.
 * @param {Summary[]} joints
 * @param {string | null} word
 * @param {number} places
 */
function nextOf(joints, word, places) {
  const [running] = latestFirst(
    joints.filter(({ state }) => state === 'running' || state === 'not-whole'),
  );
  if (running) return doing('go-on', running);
  if (word === null) return doing('inspect', null);
  const ready = joints.find(({ state }) => state === 'not-begun');
  if (ready && (word === 'use' || word === 'spare')) return doing('begin', ready);
  return doing(places ? 'none' : 'put-away', null);
}

/**
 * @param {string} what
 * @param {Summary | null} joint
 */
function doing(what, joint) {
  return {
    do: what,
    joint: joint?.id ?? null,
    name: joint?.name ?? null,
    pass_number: joint?.pass_number ?? null,
    number: joint?.next ?? null,
  };
}
