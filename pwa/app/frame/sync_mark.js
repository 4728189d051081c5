/** Sync at a glance: mark and words in the corner; it never covers, blocks, asks or counts down. */
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { useStore } from './store.js';

/** The most that stands in the corner; all of it is spoken. */
const SHOWN = 2;

/** @typedef {{icon: string, key: string, n: number}} Word */

/**
 * What the corner says: what waits, what was refused, and that there is no contact.
 * @param {{paired: boolean, offline: boolean, refused: number, waiting: number}} state
 * @returns {Word[]}
 */
export function syncWords({ paired, offline, refused, waiting }) {
  const all = [
    { icon: 'i-wait', key: 'sync.mark.waiting', n: waiting, when: waiting > 0 },
    { icon: 'i-caution', key: 'sync.mark.refused', n: refused, when: refused > 0 },
    { icon: 'i-apart', key: 'sync.mark.apart', n: 0, when: !paired },
    { icon: 'i-apart', key: 'sync.mark.offline', n: 0, when: paired && offline },
  ].filter((word) => word.when);
  return all.length > 0 ? all : [{ icon: 'i-home', key: 'sync.mark.home', n: 0 }];
}

/** The mark of the gravest: refused, then no contact, then what waits. @param {Word[]} words */
function iconOf(words) {
  const icons = words.map(({ icon }) => icon);
  return ['i-caution', 'i-apart', 'i-wait'].find((icon) => icons.includes(icon)) ?? 'i-home';
}

/** The mark at the top right, a way to the sync screen. */
export function SyncMark() {
  const { state } = useStore();
  const words = syncWords({
    paired: state.paired.value === 'yes',
    offline: Boolean(state.trouble?.value),
    refused: Number(state.refused.value),
    waiting: Number(state.waiting.value),
  });
  const shown = words.slice(0, SHOWN).map(({ key, n }) => t(key, { n }));
  const what = words.map(({ key, n }) => t(`${key}.spoken`, { n })).join(', ');
  return html`<a class="sync press" href="/sync" aria-label=${t('sync.mark.spoken', { what })}>
    <${Icon} name=${iconOf(words)} /><span>${shown.join(', ')}</span></a>`;
}
