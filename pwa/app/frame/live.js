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

/** The two live regions; a key for each saying, so that the same words are said again. */
export function Live() {
  return html`<div class="gone" aria-live="polite"><p key=${polite.value.n}>${polite.value.text}</p></div>
    <div class="gone" aria-live="assertive"><p key=${urgent.value.n}>${urgent.value.text}</p></div>`;
}
