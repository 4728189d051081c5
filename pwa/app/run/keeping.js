/** Keeping entries from a screen: kept only when the disk has them, else a black panel until answered. */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { feedback } from '../feedback.js';
import { Act, html, Key, say } from '../frame/index.js';
import { t } from '../texts/index.js';

/**
 * @typedef {{heading: string, about?: string, body: Record<string, any>, after?: string[], id?: string}} Draft
 * @typedef {{says: string, again: () => Promise<unknown>, drop: () => void}} Trouble
 */

/** What was kept on this page, so that it is not told as another device's. @type {Set<string>} */
export const keptHere = new Set();

/**
 * @param {any} store
 * @returns {{keep: (drafts: Draft[]) => Promise<any[] | false>, trouble: any}} `keep` waits until the
 *   entries are on the disk; false when the person gave up. `trouble` is the panel to show.
 */
export function useKeep(store) {
  const [trouble, setTrouble] = useState(/** @type {Trouble | null} */ (null));
  const alive = useRef(true);
  useEffect(
    () => () => {
      alive.current = false;
    },
    [],
  );
  const keep = useCallback(
    (/** @type {Draft[]} */ drafts) => attempt(store, drafts, setTrouble),
    [store],
  );
  return { keep, trouble: trouble && html`<${NotKeptPanel} ...${trouble} />` };
}

/**
 * @param {any} store
 * @param {Draft[]} drafts
 * @param {(trouble: Trouble | null) => void} setTrouble
 * @returns {Promise<any[] | false>}
 */
async function attempt(store, drafts, setTrouble) {
  try {
    const entries = await store.keep(drafts);
    for (const entry of entries) keptHere.add(entry.id);
    setTrouble(null);
    return entries;
  } catch (error) {
    const { code, says, next } = /** @type {any} */ (error) ?? {};
    if (!says) throw error;
    feedback('notKept');
    return new Promise((resolve) => {
      setTrouble({
        says: WORDS[code] ? t(WORDS[code]) : `${says} ${next ?? ''}`,
        again: async () => resolve(await attempt(store, drafts, setTrouble)),
        drop: () => {
          setTrouble(null);
          resolve(false);
        },
      });
    });
  }
}

/** @type {Record<string, string>} */
const WORDS = { 'not-kept-full': 'run.not-kept', 'not-kept-closed': 'run.not-kept.closed' };

/** @param {Trouble} props */
function NotKeptPanel({ says, again, drop }) {
  useEffect(() => say(says, true), [says]);
  return html`<section class="not-kept" role="alertdialog" aria-label=${says}>
    <h2>${says}</h2>
    <${Key} label=${t('run.not-kept.leave')} onPress=${drop} className="second-act press" />
    <${Act} label=${t('run.not-kept.again')} onPress=${again} />
  </section>`;
}
