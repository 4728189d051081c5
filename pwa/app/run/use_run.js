/** Everything a run screen knows and may do: the joint, the wrench, who is at the bench, and the entries. */

import { useCallback, useEffect, useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { actions } from './actions.js';
import { useAwake } from './awake.js';
import { useElsewhere } from './elsewhere.js';
import { useKeep } from './keeping.js';
import { getUp, remember, remembered, sitDown, sitting } from './sitting.js';
import { useJoint } from './use_joint.js';

/**
 * @param {any} store
 * @param {string} id
 * @param {{go: (path: string) => void, back: (to?: string) => void}} way
 */
export function useRun(store, id, { go, back }) {
  const { known, missing, refresh } = useJoint(store, id);
  const { keep, trouble } = useKeep(store);
  const { bench, change } = useBench(store, id);
  const [, again] = useState(0);
  const view = known?.view ?? null;
  // A run that has no pull yet needs nobody to say where it stopped.
  if (view?.run && !view.last && !sitting(view.run.id)) sitDown(view.run.id, view.pass);
  const here = view?.run ? sitting(view.run.id) : null;
  const away = Boolean(view?.run) && !here;
  const redraw = () => again((n) => n + 1);
  const onIdle = useCallback(() => {
    if (view?.run) getUp(view.run.id);
    redraw();
  }, [view?.run?.id]);
  useAwake(Boolean(view?.run) && view.state !== 'done' && !away, onIdle);
  const notice = useElsewhere(view, store);
  const leave = () => {
    if (view?.run) getUp(view.run.id);
    back('/');
  };
  const chosen = chosenOf(view, bench);
  const facts = { view, keep, refresh, go, change, redraw, wrench: wrenchOf(known, bench), chosen };
  return {
    known,
    missing,
    trouble,
    bench,
    change,
    keep,
    refresh,
    leave,
    chosen,
    away,
    passNew: passNew(view, here),
    casting: known ? value(known.workshop.subject(id), 'casting') : null,
    wrench: facts.wrench,
    ...notice,
    ...(view && bench ? actions(facts) : {}),
  };
}

/**
 * Whether a pass has been done since the person last looked, so that the next value is shown large.
 * @param {any} view
 * @param {any} here
 */
function passNew(view, here) {
  if (!view?.run || !here || view.state !== 'running') return false;
  const at = view.passes.findIndex((/** @type {any} */ p) => p.id === view.pass);
  return at > 0 && here.passSeen !== view.pass && view.passes[at].done === 0;
}

/** @param {any} view @param {any} bench a chosen fastener that is still open in this pass */
function chosenOf(view, bench) {
  if (!bench?.chosen || bench.chosen.pass !== view?.pass) return null;
  const fastener = view.fasteners.find((/** @type {any} */ f) => f.id === bench.chosen.fastener);
  const done = fastener?.mark === 'done' || fastener?.mark === 'flagged';
  return fastener && !done ? fastener.id : null;
}

/** @param {any} known @param {any} bench the wrench in the hand */
function wrenchOf(known, bench) {
  if (!known || !bench) return null;
  const { view } = known;
  const id = bench.wrench !== undefined ? bench.wrench : view.wrench;
  return view.wrenches.find((/** @type {any} */ w) => w.id === id) ?? null;
}

/**
 * What this device remembers of the joint, read from the disk.
 * @param {any} store
 * @param {string} id
 */
function useBench(store, id) {
  const [bench, setBench] = useState(/** @type {Record<string, any> | null} */ (null));
  useEffect(() => {
    let gone = false;
    remembered(store, id).then((kept) => !gone && setBench(kept));
    return () => {
      gone = true;
    };
  }, [id]);
  const change = useCallback(
    async (/** @type {Record<string, any>} */ part) => {
      setBench((was) => ({ ...was, ...part }));
      await remember(store, id, part);
    },
    [id],
  );
  return { bench, change };
}
