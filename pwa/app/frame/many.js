/** Several parts of one kind in a row: it opens to each of them. */
import { useState } from 'preact/hooks';
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { Row } from './row.js';

const WORDS = ['use', 'spare', 'machine', 'scrap', 'look', 'ask'];

/** "3 use, 1 scrap, 8 to look at". @param {any} counts */
export const countWords = (counts) =>
  WORDS.filter((word) => counts[word] > 0)
    .map((word) => t(`count.${word}`, { n: counts[word] }))
    .join(', ');

/**
 * @param {{row: any, says: string, iconOf: (one: any) => string, partSays: (one: any, at: number) => string}} props
 */
export function Many({ row, says, iconOf, partSays }) {
  const [open, setOpen] = useState(false);
  return html`<li><button type="button" class="row" aria-expanded=${String(open)} onClick=${() => setOpen(!open)}>
    <${Icon} name=${iconOf(row)} /><span class="says"><b>${row.name}</b><span class="soft">${says}</span></span><span class="fig">${row.quantity}</span></button>
    ${open && html`<ul>${row.parts.map((/** @type {any} */ one, /** @type {number} */ at) => html`<li key=${one.id}><${Row} href=${`/part/${one.id}`} icon=${iconOf(one)} name=${one.name || row.name} says=${partSays(one, at)} figure=${one.quantity} /></li>`)}</ul>`}</li>`;
}
