/** Where a run stands: marks of every fastener in every pass, what is open, what comes next. */
import { pair } from './course.js';
import * as plain from './plain.js';
import { path } from './programme.js';
import { pulls } from './pulls.js';
import { covers, factsOf, fastenerOf, passOf } from './runs.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */
/** @typedef {import('./programme.js').Fastener} Fastener */
/** @typedef {import('./pulls.js').Pull} Pull */
/** @typedef {import('./runs.js').Run} Run */
/**
 * One fastener in one pass: its pulls by order. The latest one that is neither struck nor loosened
 * decides. Mark: todo, done, flagged, doubt, out or void; which one is next is said by the run.
 * @typedef {{pulls: Pull[], latest: Pull | null, mark: string, counts: boolean}} Cell
 */
/**
 * All that follows from the pulls of one run.
 * @typedef {object} Progress
 * @property {Programme} plan
 * @property {Run} run
 * @property {Pull[]} pulls
 * @property {Map<string, Cell>} cells
 * @property {Map<string, number>} reached fastener → the farthest pass that is done for it
 * @property {Map<string, string>} left pass → the reason it was left with
 * @property {Set<string>} turned pass and fastener that must not be turned by an angle again
 * @property {Pass | null} current the first pass that is open and was not left with a reason
 * @property {Fastener[]} coming what it still offers: the untouched first, then those struck out
 * @property {Fact | null} loosened the latest loosening
 * @property {boolean} undone whether all was loosened and nothing pulled since
 * @property {boolean} complete whether every pass is behind it and the last one is whole
 * @property {Pull | null} last the latest pull that is neither struck nor loosened
 */
/** @typedef {Pick<Progress, 'plan' | 'cells' | 'reached'>} Cells */

/** @type {Cell} */
const EMPTY = Object.freeze({ pulls: [], latest: null, mark: 'todo', counts: false });

/**
 * A fastener in a pass.
 * @param {Cells} now
 * @param {Pass} pass
 * @param {string} fastener
 */
export function cellOf(now, pass, fastener) {
  return now.cells.get(pair(pass.id, fastener)) ?? EMPTY;
}

/**
 * The fasteners that keep a pass from being whole, by the pass's own order. One that is done in a
 * later pass owes this one nothing.
 * @param {Cells} now
 * @param {Pass} pass
 * @returns {Fastener[]}
 */
export function openIn(now, pass) {
  return path(now.plan, pass)
    .filter((each) => (now.reached.get(each) ?? -1) < pass.number)
    .map((each) => /** @type {Fastener} */ (now.plan.fasteners.get(each)));
}

/**
 * Whether every fastener is done in this pass itself.
 * @param {Cells} now
 * @param {Pass} pass
 */
export function wholeIn(now, pass) {
  return [...now.plan.fasteners.keys()].every((each) => cellOf(now, pass, each).counts);
}

/**
 * Where a run stands.
 * @param {Subject} joint
 * @param {Run} run
 * @param {Programme} plan
 * @param {Workshop} workshop
 * @returns {Progress}
 */
export function progress(joint, run, plan, workshop) {
  const found = pulls(joint, run, plan, workshop);
  const cells = cellsOf(found);
  const onward = factsOf(run, 'onward');
  const left = new Map(onward.map((each) => [passOf(each), plain.text(each.body.reason) ?? '']));
  const turned = new Set([...cells].filter(([, c]) => isTurned(c, run, joint)).map(([at]) => at));
  const passes = [...plan.passes.values()];
  const now = { plan, cells, reached: reachedBy(cells) };
  const current = passes.find((each) => !left.has(each.id) && openIn(now, each).length) ?? null;
  const live = found.filter((each) => each.live);
  const loosenings = factsOf(run, 'loosening');
  const lastPass = passes.at(-1);
  return {
    ...now,
    run,
    pulls: found,
    left,
    turned,
    current,
    coming: current ? comingIn(now, current, turned) : [],
    loosened: loosenings.at(-1) ?? null,
    undone: !live.length && loosenings.some(({ body }) => (body.fasteners ?? null) === null),
    complete: !current && lastPass !== undefined && wholeIn(now, lastPass),
    last: live.at(-1) ?? null,
  };
}

/**
 * @param {Cells} now
 * @param {Pass} current
 * @param {Set<string>} turned
 */
function comingIn(now, current, turned) {
  const open = openIn(now, current);
  /** @param {Fastener} each */
  const mark = (each) => cellOf(now, current, each.id).mark;
  const todo = open.filter((each) => ['todo', 'void'].includes(mark(each)));
  const back = open.filter(
    (each) => mark(each) === 'out' && !turned.has(pair(current.id, each.id)),
  );
  return [...todo, ...back];
}

/** @param {Map<string, Cell>} cells */
function reachedBy(cells) {
  /** @type {Map<string, number>} */
  const reached = new Map();
  for (const { latest, counts } of cells.values()) {
    if (!counts || !latest?.pass || !latest.fastener) continue;
    const before = reached.get(latest.fastener.id) ?? -1;
    reached.set(latest.fastener.id, Math.max(before, latest.pass.number));
  }
  return reached;
}

/** @param {Pull[]} found */
function cellsOf(found) {
  /** @type {Map<string, Pull[]>} */
  const groups = new Map();
  for (const each of found) {
    if (!each.pass || !each.fastener) continue;
    const key = pair(each.pass.id, each.fastener.id);
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return new Map([...groups].map(([key, pulled]) => [key, cell(pulled)]));
}

/**
 * @param {Pull[]} pulled
 * @returns {Cell}
 */
function cell(pulled) {
  const latest = pulled.findLast((each) => each.live) ?? null;
  const untouched = pulled.some((each) => each.void === null) ? 'out' : 'void';
  return {
    pulls: pulled,
    latest,
    mark: latest?.mark ?? untouched,
    counts: latest?.counts ?? false,
  };
}

/**
 * Whether an angle was perhaps pulled that does not count: a second turn can break it.
 * Struck: until somebody says after the strike that it was not turned. In doubt: always.
 * @param {Cell} pulled
 * @param {Run} run
 * @param {Subject} joint
 */
function isTurned({ pulls: pulled, latest, counts }, run, joint) {
  const { pass, fact } = /** @type {Pull} */ (pulled[0]);
  if (pass?.how !== 'angle' || counts) return false;
  const fastener = fastenerOf(fact);
  const onIt = pulled.filter((each) => each.void === null);
  const lastOn = onIt.at(-1);
  if (!lastOn || loosenedSince(lastOn, fastener, run)) return false;
  if (latest) return true;
  const strikes = new Map(joint.strikes.map(({ id, order }) => [id, order]));
  const struck = onIt.map((each) => strikes.get(each.fact.struck?.id ?? '') ?? '');
  return !factsOf(run, 'touch').some(
    (each) =>
      fastenerOf(each) === fastener &&
      each.body.turned === false &&
      struck.every((order) => each.order > order),
  );
}

/**
 * @param {Pull} pull
 * @param {unknown} fastener
 * @param {Run} run
 */
function loosenedSince({ fact }, fastener, run) {
  return factsOf(run, 'loosening').some(
    (each) => each.order > fact.order && covers(each, fastener),
  );
}
