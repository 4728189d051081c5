/** What a person may do in a run; each makes its entries and then looks again at the joint. */

import { feedback } from '../feedback.js';
import { say } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { t } from '../texts/index.js';
import * as drafts from './drafts.js';
import { named } from './figures.js';
import { flagSays } from './flagged.js';
import { sitDown, sitting } from './sitting.js';

/**
 * @param {{view: any, keep: (drafts: any[]) => Promise<any[] | false>, refresh: () => Promise<any>,
 *   go: (path: string) => void, change: (part: Record<string, any>) => Promise<void>,
 *   redraw: () => void, wrench: any, chosen: string | null}} run
 */
export function actions(run) {
  return { ...beginning(run), ...pulling(run), ...between(run), ...asked(run) };
}

/** @param {any} run */
function beginning({ view, keep, refresh, change, wrench }) {
  const of = (/** @type {any} */ facts) =>
    drafts.begin(view, { wrench: wrench?.id ?? null, ...facts });
  return {
    begin: async (/** @type {any} */ { lubricant, overruled }) => {
      const run = freshId();
      if (!(await keep([of({ run, lubricant, overruled })]))) return false;
      sitDown(run, view.passes[0]?.id ?? null);
      await change({ usual: lubricant, lubricant: undefined, overruled: undefined, chosen: null });
      feedback('kept');
      await refresh();
      return true;
    },
    overrule: async (/** @type {string} */ overruled) => {
      const { id, lubricant } = view.run;
      if (!(await keep([of({ run: id, lubricant, overruled })]))) return false;
      await change({ overruled: undefined });
      await refresh();
      return true;
    },
  };
}

/** @param {any} run */
function pulling({ view, keep, refresh, change, wrench }) {
  return {
    confirm: async (/** @type {any} */ fastener) => {
      const entries = await keep([drafts.pull(view, fastener, { wrench: wrench?.id ?? null })]);
      if (!entries) return false;
      await change({ chosen: null });
      const after = await refresh();
      tell(view, after?.view, entries[0].id);
      return true;
    },
    theRest: async () => {
      const rest = view.fasteners.filter((/** @type {any} */ f) => isOpen(f.mark));
      const how = { wrench: wrench?.id ?? null, together: true };
      const entries = await keep(rest.map((/** @type {any} */ f) => drafts.pull(view, f, how)));
      if (!entries) return false;
      await change({ chosen: null });
      await refresh();
      feedback('passDone');
      say(t('run.kept.many', { n: rest.length }));
      return true;
    },
    choose: async (/** @type {string} */ fastener) => {
      await change({ chosen: { fastener, pass: view.pass } });
    },
  };
}

/** @param {string} mark */
const isOpen = (mark) => mark !== 'done' && mark !== 'flagged';

/**
 * Answers a kept pull: a flag, a pass done, or simply kept.
 * @param {any} before
 * @param {any} after
 * @param {string} id
 */
export function tell(before, after, id) {
  const pull = after?.recent.find((/** @type {any} */ p) => p.id === id);
  if (!pull) return;
  const whole = after.passes.find((/** @type {any} */ p) => p.id === before.pass)?.whole;
  const says = t('run.kept', { name: named(after, pull.number) });
  if (pull.flags.length) {
    feedback('flag');
    say(`${says} ${flagSays(after, pull)}`);
  } else {
    feedback(whole ? 'passDone' : 'kept');
    say(says);
  }
}

/** @param {any} run */
function between({ view, keep, refresh, redraw }) {
  const sit = () => {
    sitDown(view.run.id, view.pass);
    redraw();
  };
  return {
    goOn: sit,
    startPass: () => {
      const here = sitting(view.run.id);
      if (here) here.passSeen = view.pass;
      redraw();
    },
    touch: async () => {
      const touched = drafts.runFact(view, 'touch', { fastener: view.last.fastener });
      if (!(await keep([touched]))) return false;
      feedback('kept');
      await refresh();
      return true;
    },
    goOnUnsourced: async () => {
      const { target } = view.next;
      if (!(await keep([drafts.runFact(view, 'unsourced', { pass: view.pass, target })])))
        return false;
      await refresh();
      return true;
    },
  };
}

/** @param {any} run */
function asked({ view, keep, refresh, go }) {
  const done = async (/** @type {any[]} */ entries) => {
    if (!(await keep(entries))) return false;
    feedback('kept');
    await refresh();
    return true;
  };
  const loosenTurned = () =>
    done([drafts.loosening(view, [view.turned_ask], t('run.turned.reason'))]);
  return {
    notTurned: () =>
      done([drafts.runFact(view, 'touch', { fastener: view.turned_ask, turned: false })]),
    loosen: loosenTurned,
    replace: async () => {
      if (!(await loosenTurned())) return false;
      const part = view.fasteners.find((/** @type {any} */ f) => f.id === view.turned_ask)?.part;
      const bolts = view.parts.find((/** @type {any} */ p) => p.role === 'holds-with');
      go(part || bolts ? `/inspect/${part ?? bolts.id}` : `/joint/${view.id}`);
      return true;
    },
    answer: (/** @type {string} */ kind, /** @type {any} */ fact) =>
      done(answers(view, kind, fact)),
  };
}

/**
 * @param {any} view
 * @param {string} kind
 * @param {any} fact
 */
function answers(view, kind, fact) {
  if (kind === 'two-runs') {
    const others = view.asks[0].begins.filter((/** @type {string} */ id) => id !== fact.id);
    return others.map((/** @type {string} */ id) =>
      drafts.strikeOut(id, t('run.ask.two-runs.reason')),
    );
  }
  if (kind === 'tight') {
    return fact.pulls.map((/** @type {string} */ id) =>
      drafts.accept(view, id, t('run.ask.tight.reason')),
    );
  }
  const ids = view.fasteners
    .filter((/** @type {any} */ f) => fact.numbers.includes(f.number))
    .map((/** @type {any} */ f) => f.id);
  const body = {
    run: view.run.id,
    pulls: fact.pulls,
    fasteners: ids,
    reason: t('run.ask.loose.reason'),
  };
  return [{ heading: 'loosening', about: view.id, after: view.after, body }];
}
