/** Sources, cautions, verdicts, codes: the small pieces that look the same on every screen. */
import { hasIcon, Icon } from '../icons.js';
import { codeWords, t } from '../texts/index.js';
import { html } from './html.js';

/** Where a value comes from, or that nobody wrote it down. @param {{text?: string | null}} props */
export function Source({ text }) {
  if (!text) return html`<${Unsourced} />`;
  return html`<p class="source"><${Icon} name="i-book" /><span><span class="gone">${t('source')}</span> ${unbroken(text)}</span></p>`;
}

/** A page as "6-14" stays in one line, with the word before it. @param {string} text */
const unbroken = (text) =>
  text
    .split(/((?:\bpages? )?\d+-\d+)/)
    .map((piece, at) => (at % 2 === 1 ? html`<span class="one-line">${piece}</span>` : piece));

/** @param {{says?: string}} props */
export function Unsourced({ says }) {
  return html`<p class="unsourced"><${Icon} name="i-unsourced" /><span><b>${t('unsourced')}</b> ${says ?? t('unsourced.says')}</span></p>`;
}

const triangle =
  () => html`<svg viewBox="0 0 32 32" aria-hidden="true"><path class="triangle" d="M16 4L29.5 27.5h-27z" />
  <g class="line" stroke-width="2.8"><path d="M16 4L29.5 27.5h-27zM16 12.5v7M16 23.5v.1" /></g></svg>`;

/**
 * Signal word, triangle, what may happen and how to avoid it; weight by shape.
 * @param {{word?: string, says: any}} props
 */
export function Caution({ word = 'caution', says }) {
  const kind = word === 'caution' ? 'caution-word' : word;
  return html`<p class=${`caution ${kind}`}>${word !== 'notice' && triangle()}<span><b>${t(`signal.${word}`)}</b> ${says}</span></p>`;
}

/** @param {string | null} word */
const markOf = (word) => (word && hasIcon(`v-${word}`) ? `v-${word}` : 'i-find');

/**
 * A verdict's mark with its word, and the day it was given.
 * @param {{verdict: string | null, day?: string, small?: boolean}} props
 */
export function Verdict({ verdict, day, small }) {
  return html`<p class=${`verdict ${small ? 'small' : ''}`}><${Icon} name=${markOf(verdict)} />
    <span>${t(`verdict.${verdict ?? 'none'}`)}${day && html` <small>${day}</small>`}</span></p>`;
}

/** A code in two groups of four. @param {string} code */
export const codeGroups = (code) => `${code.slice(0, 4)} ${code.slice(4)}`;

/** A code on the screen, read out sign by sign. @param {{code: string, href?: string}} props */
export function Code({ code, href }) {
  const spoken = t('code.spoken', { code: codeWords(code) });
  if (href)
    return html`<a class="code press" href=${href} aria-label=${spoken}>${codeGroups(code)}</a>`;
  return html`<p class="code" role="img" aria-label=${spoken}>${codeGroups(code)}</p>`;
}

/** A loud panel: a mark, a word, the reason. @param {{icon: string, word: string, says?: string}} props */
export function Panel({ icon, word, says }) {
  return html`<div class="panel"><${Icon} name=${icon} /><p><b>${word}</b>${says}</p></div>`;
}
