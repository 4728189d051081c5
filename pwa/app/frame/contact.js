/** How the talk with the computer goes: it does not answer yet, or it was not reached. */
import { useEffect, useState } from 'preact/hooks';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { Caution } from './told.js';

/** After so long without an answer it is said that nothing has to be waited for. */
const SLOW_MS = 5000;

/** Whether a sync has been under way for long without getting on. @param {{syncing: any, progress: any}} state */
function useSlow({ syncing, progress }) {
  const busy = syncing.value;
  const far = progress.value?.done ?? null;
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    setSlow(false);
    if (!busy) return undefined;
    const timer = setTimeout(() => setSlow(true), SLOW_MS);
    return () => clearTimeout(timer);
  }, [busy, far]);
  return slow;
}

/** @param {{state: any}} props */
export function Contact({ state }) {
  const slow = useSlow(state);
  if (state.paired.value !== 'yes') return null;
  if (slow) return html`<${Caution} word="notice" says=${t('sync.slow')} />`;
  if (!state.trouble.value) return null;
  const says = `${t('sync.offline', { n: Number(state.waiting.value) })} ${t('sync.again')}`;
  return html`<${Caution} word="notice" says=${says} />`;
}
