/** One line when another device pulled on the same run meanwhile. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { nameOfOther } from '../device_names.js';
import { say } from '../frame/index.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';
import { listed } from './figures.js';
import { keptHere } from './keeping.js';

/**
 * @param {any} view
 * @param {any} store
 * @returns {{notice: string | null}}
 */
export function useElsewhere(view, store) {
  const seen = useRef(/** @type {Set<string> | null} */ (null));
  const [notice, setNotice] = useState(/** @type {string | null} */ (null));
  useEffect(() => {
    if (!view?.run) return;
    const ids = view.recent.map((/** @type {any} */ p) => p.id);
    const known = seen.current;
    seen.current = new Set(ids);
    if (!known) return;
    const fresh = view.recent.filter((/** @type {any} */ p) => !known.has(p.id));
    Promise.resolve(store.device()).then((own) => {
      const theirs = fresh.filter(
        (/** @type {any} */ p) => own && p.device !== own.device && !keptHere.has(p.id),
      );
      if (theirs.length) setNotice(saysOf(theirs));
      else if (fresh.length) setNotice(null);
    });
  }, [view]);
  useEffect(() => {
    if (notice) say(notice);
  }, [notice]);
  return { notice };
}

/** @param {any[]} pulls */
function saysOf(pulls) {
  const numbers = [...new Set(pulls.map((pull) => pull.number))].sort((a, b) => a - b);
  const [first] = pulls;
  const by = pulls.find((pull) => pull.by)?.by ?? nameOfOther(first.device);
  const device = by ? capital(by) : t('run.elsewhere.one');
  return t('run.elsewhere', { device, numbers: listed(numbers) });
}
