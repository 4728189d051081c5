/** What good and worn look like, drawn side by side: left good, right not. */

import { html } from '../frame/html.js';
import { DRAWN } from './worn_paths.js';

/** @typedef {import('./worn_paths.js').Paths} Paths */

/** @param {{paths: Paths}} props */
const Side = ({
  paths,
}) => html`${paths.steel && html`<path class="steel-fill" d=${paths.steel} />`}
  ${paths.hole && html`<path class="hole-fill" d=${paths.hole} />`}
  ${paths.dashed && html`<path class="dashed" d=${paths.dashed} />`}${paths.thin && html`<path class="thin" d=${paths.thin} />`}`;

/** @param {{word: string, label: string}} props both sides in one picture */
export function Worn({ word, label }) {
  const [good, bad] = DRAWN[word] ?? [{}, {}];
  return html`<svg viewBox="0 12 358 56" role="img" aria-label=${label}><g class="plate-line"><${Side} paths=${good} />
    <g transform="translate(180 0)"><${Side} paths=${bad} /></g></g></svg>`;
}
