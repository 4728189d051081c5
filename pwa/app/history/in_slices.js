/** The sizes of a kind over time, told while the page stays quick. */
import { useEffect, useState } from 'preact/hooks';
import { sizesOfKind } from '../../views/history.js';
import { breath, comesBack } from '../later.js';

const BEAT_MS = 12;

/** Goes on at once as long as nobody waited noticeably. */
function breather() {
  let last = performance.now();
  return async () => {
    if (performance.now() - last < BEAT_MS) return;
    await breath();
    last = performance.now();
  };
}

/**
 * The measures of a kind with their points; null until they are told. Those of before stay until then.
 * @param {any} workshop
 * @param {string} id
 * @returns {any[] | null}
 */
export function useSizes(workshop, id) {
  const [measures, setMeasures] = useState(/** @type {any[] | null} */ (null));
  useEffect(() => {
    if (!workshop) return undefined;
    let gone = false;
    const breathe = comesBack() ? () => Promise.resolve() : breather();
    sizesOfKind(workshop, id, breathe).then((told) => {
      if (!gone) setMeasures(told);
    }, reportError);
    return () => {
      gone = true;
    };
  }, [workshop]);
  return measures;
}
