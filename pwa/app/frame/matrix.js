/** A QR symbol drawn from its rows of modules, with the quiet zone around it. */
import { html } from './html.js';

const QUIET = 4;

/**
 * @param {{rows: string[], says: string}} props rows of "0" and "1", without margin
 */
export function Matrix({ rows, says }) {
  const size = rows.length + 2 * QUIET;
  const dark = rows.flatMap((row, y) =>
    [...row].flatMap((sign, x) => (sign === '1' ? [`M${x + QUIET} ${y + QUIET}h1v1h-1z`] : [])),
  );
  return html`<svg viewBox=${`0 0 ${size} ${size}`} role="img" aria-label=${says} shape-rendering="crispEdges">
    <rect width=${size} height=${size} fill="#fff" /><path d=${dark.join('')} fill="#000" /></svg>`;
}
