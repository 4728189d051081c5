/** The source beside a value: what it is may be cut short, its page never. */

import { html } from '../frame/index.js';

const PAGE = /[\s,;·]+((?:pp?\.|pages?|sheet|section|table|fig\.?)\s*\S.*)$/i;

/**
 * @param {string} source
 * @returns {{front: string, page: string}}
 */
export function partsOf(source) {
  const page = PAGE.exec(source);
  return page
    ? { front: source.slice(0, page.index), page: page[1] ?? '' }
    : { front: '', page: source };
}

/** @param {{source: string}} props */
export function SourceLine({ source }) {
  const { front, page } = partsOf(source);
  return html`<span class="source-line">${front && html`<span class="front">${front}</span>${' '}`}<span>${page}</span></span>`;
}
