/** Sync at a glance: mark and words in the corner; it never covers, blocks, asks or counts down. */
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { useStore } from './store.js';

/**
 * What the corner says. Refused goes before waiting: it stays until it is handled.
 * @param {{paired: boolean, refused: number, waiting: number}} state
 */
export function syncWords({ paired, refused, waiting }) {
  if (refused > 0) return { icon: 'i-caution', key: 'sync.mark.refused', n: refused };
  if (!paired) return { icon: 'i-apart', key: 'sync.mark.apart', n: waiting };
  if (waiting > 0) return { icon: 'i-wait', key: 'sync.mark.waiting', n: waiting };
  return { icon: 'i-home', key: 'sync.mark.home', n: 0 };
}

/** The mark at the top right, a way to the sync screen. */
export function SyncMark() {
  const { state } = useStore();
  const words = syncWords({
    paired: state.paired.value === 'yes',
    refused: Number(state.refused.value),
    waiting: Number(state.waiting.value),
  });
  const spoken = t(`${words.key}.spoken`, { n: words.n });
  return html`<a class="sync press" href="/sync" aria-label=${spoken}>
    <${Icon} name=${words.icon} /><span>${t(words.key, { n: words.n })}</span></a>`;
}
