/** The workshop's wrenches, those first that take the target. */
import { value } from '../log/workshop.js';
import { permitted, rangeFit } from './judging.js';
import * as plain from './plain.js';
import { targetOf } from './programme.js';
import { factsOf } from './runs.js';
import { adapter, atWrench, settingLine } from './setting.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {plain.Measured} Measured */

const TEXTS = ['name', 'sort', 'unit', 'least', 'most', 'graduation', 'calibrated', 'lies'];

/**
 * Every wrench; one whose range does not take the target is not offered first.
 * @param {Subject | null} joint
 * @param {Measured | null} target
 * @param {Workshop} workshop
 */
export function wrenches(joint, target, workshop) {
  const usual = plain.text(value(joint, 'wrench'));
  const through = adapter(joint);
  const lines = workshop.all('wrench').map((each) => wrenchLine(each, target, through));
  return plain.sorted(lines, (line) => [
    line.takes === false ? 1 : 0,
    line.id === usual ? 0 : 1,
    plain.natural(line.name),
    line.id,
  ]);
}

/**
 * The wrench used last in this run, else the one it began with, else the usual one.
 * @param {Subject | null} joint
 * @param {import('./progress.js').Progress | null} now
 */
export function wrenchInHand(joint, now) {
  const pulled = now ? now.pulls.map(({ fact }) => plain.text(fact.body.wrench)) : [];
  const begun = now ? factsOf(now.run, 'begin').map(({ body }) => plain.text(body.wrench)) : [];
  const known = [...pulled.reverse(), ...begun.reverse()].find((each) => each);
  return known ?? plain.text(value(joint, 'wrench'));
}

/**
 * @param {Subject} wrench
 * @param {Measured | null} target
 * @param {import('./setting.js').Adapter | null} through
 */
function wrenchLine(wrench, target, through) {
  const wanted = plain.quantity(target);
  const fit = rangeFit(wrench, wanted && atWrench(wanted, through));
  const share = permitted(wrench);
  const own = plain.text(value(wrench, 'deviation'));
  /** @type {Record<string, string | null>} */
  const texts = Object.fromEntries(TEXTS.map((name) => [name, plain.text(value(wrench, name))]));
  return {
    id: wrench.id,
    name: null,
    ...texts,
    ...settingLine(/** @type {import('./setting.js').Tool} */ (texts), target, through),
    permitted: share === null ? null : (own ?? String(Math.round(share * 100))),
    takes: fit === null ? null : fit === 'takes',
    why: fit === 'takes' ? null : fit,
  };
}

/**
 * The torque a wrench is wanted for: the next one, else the first of the programme.
 * @param {{how: string | null, target: plain.Measured | null} | undefined} next
 * @param {import('./programme.js').Programme} plan
 */
export function wantedOfWrench(next, plan) {
  const torques = [...plan.passes.values()].filter(({ how }) => how === 'torque');
  const first = torques
    .flatMap((pass) => [...plan.fasteners.values()].map((each) => targetOf(pass, each)))
    .find((each) => each);
  return (next?.how === 'torque' ? next.target : null) ?? first ?? null;
}
