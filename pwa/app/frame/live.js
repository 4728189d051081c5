/** One place where the page speaks: politely, and at once only when something was not kept. */
import { signal } from '@preact/signals';
import { html } from './html.js';

const polite = signal({ text: '', n: 0 });
const urgent = signal({ text: '', n: 0 });

/**
 * Says a sentence to a screen reader, once.
 * @param {string} text
 * @param {boolean} [atOnce] only for *not kept*
 */
export function say(text, atOnce = false) {
  const to = atOnce ? urgent : polite;
  to.value = { text, n: to.peek().n + 1 };
}

/** @param {{heard: typeof polite, manner: string}} props */
function Region({ heard, manner }) {
  const { text, n } = heard.value;
  return html`<div class="gone" aria-live=${manner}><p key=${n}>${text}</p></div>`;
}

/** The two live regions; a key for each saying, so that the same words are said again. */
export const Live = () =>
  html`<${Region} heard=${polite} manner="polite" /><${Region} heard=${urgent} manner="assertive" />`;
