/** The marks of the page as drawings without words; who shows one puts the word beside it. */
import { html } from './frame/html.js';

/** @type {Record<string, () => any>} */
const shapes = {
  'i-scan': () =>
    html`<g class="line" stroke-width="3"><path d="M4 11V6a2 2 0 0 1 2-2h5M21 4h5a2 2 0 0 1 2 2v5M28 21v5a2 2 0 0 1-2 2h-5M11 28H6a2 2 0 0 1-2-2v-5"/></g><path class="blot" d="M19.2 8.5h4l-10.4 15h-4z"/>`,
  'i-tonight': () =>
    html`<g class="line" stroke-width="2.7"><path d="M16 2.5v6M12 8.5h8l5.5 10.5h-19zM12.2 19.4a3.9 3.9 0 0 0 7.6 0M7.2 24.6l-2 3.6M16 26.4v3M24.8 24.6l2 3.6"/></g>`,
  'i-find': () =>
    html`<g class="line" stroke-width="3"><circle cx="13.5" cy="13.5" r="8.8"/><path d="M20.2 20.2L28 28"/></g>`,
  'i-more': () =>
    html`<g class="blot"><circle cx="6" cy="16" r="3.2"/><circle cx="16" cy="16" r="3.2"/><circle cx="26" cy="16" r="3.2"/></g>`,
  'i-back': () => html`<path class="line" stroke-width="3.2" d="M19 6L9 16l10 10"/>`,
  'i-down': () => html`<path class="line" stroke-width="3.2" d="M8 12.5l8 8 8-8"/>`,
  'i-type': () =>
    html`<g class="line" stroke-width="2.7"><rect x="3" y="8" width="26" height="16" rx="3"/><path d="M8 13.5v.1M13.3 13.5v.1M18.6 13.5v.1M24 13.5v.1M11 19h10"/></g>`,
  'i-light': () =>
    html`<g class="line" stroke-width="2.7"><path d="M9 4h14v5l-3.5 5v14h-7V14L9 9zM9 9h14M16 18v3"/></g>`,
  'i-photo': () =>
    html`<g class="line" stroke-width="2.7"><rect x="3" y="8" width="26" height="19" rx="3"/><path d="M11 8l2-4h6l2 4"/><circle cx="16" cy="17.5" r="5"/></g>`,
  'i-caution': () =>
    html`<g class="line" stroke-width="2.8"><path d="M16 4L29.5 27.5h-27zM16 12.5v7M16 23.5v.1"/></g>`,
  'i-wait': () =>
    html`<g class="line" stroke-width="2.8"><rect x="4" y="11" width="18" height="17" rx="2"/><path d="M10 6.5h15.5a2 2 0 0 1 2 2V23M8.5 17h9M8.5 22h6"/></g>`,
  'i-keys': () =>
    html`<g class="blot"><rect x="4" y="3" width="6.4" height="6.4" rx="1.6"/><rect x="12.8" y="3" width="6.4" height="6.4" rx="1.6"/><rect x="21.6" y="3" width="6.4" height="6.4" rx="1.6"/><rect x="4" y="12.6" width="6.4" height="6.4" rx="1.6"/><rect x="12.8" y="12.6" width="6.4" height="6.4" rx="1.6"/><rect x="21.6" y="12.6" width="6.4" height="6.4" rx="1.6"/><rect x="12.8" y="22.2" width="6.4" height="6.4" rx="1.6"/></g>`,
  'i-strike': () =>
    html`<g class="line" stroke-width="2.7"><polygon points="28,16 22,26.4 10,26.4 4,16 10,5.6 22,5.6" stroke-dasharray="4.4 3"/><path stroke-linecap="round" stroke-width="3.2" d="M11 11l10 10M21 11L11 21"/></g>`,
  'i-set-of': () =>
    html`<g class="line" stroke-width="2.5"><path d="M3 27V5h4M29 5v22h-4M3 27h4M29 5h-4"/><path class="blot" d="M11 8h2.6v16H11zM18.4 8H21v16h-2.6z"/></g>`,
  'i-even': () =>
    html`<g class="line" stroke-width="2.6"><path d="M16 4v24M9 28h14M4 9h24M4 9l-2.5 9h9L8 9M24 9l-2.5 9h9L28 9"/></g>`,
  'i-fit': () =>
    html`<g class="line" stroke-width="2.6"><circle cx="16" cy="16" r="12"/><circle cx="16" cy="16" r="6.5"/><path d="M2 16h4M26 16h4"/></g>`,
  'i-wrench': () =>
    html`<g class="line" stroke-width="2.6"><rect x="-4.2" y="-4.2" width="8.4" height="8.4" rx="2.6" transform="translate(24.4 7.6) rotate(45)"/><path d="M20.4 11.6L13.4 18.6"/><path d="M14.9 16.1l2 2L7.2 27.8a2.6 2.6 0 0 1-3.7-3.7l9.7-9.7z"/><path d="M9.3 20.6l2.1 2.1"/></g>`,
  'i-gauge': () =>
    html`<g class="line" stroke-width="2.6"><circle cx="16" cy="12.500" r="9"/><path d="M16 12.500l4.500-4.500M16 21.500v7.500M12.500 29h7"/></g>`,
  'i-drop': () =>
    html`<path fill="none" stroke="currentColor" stroke-width="2.7" stroke-linejoin="round" d="M16 3.5c5 6.4 8.4 10.6 8.4 15.5a8.4 8.4 0 0 1-16.8 0c0-4.9 3.4-9.1 8.4-15.5zM12 19.5a4.3 4.3 0 0 0 4 4.2" stroke-linecap="round"/>`,
  'i-book': () =>
    html`<g class="line" stroke-width="2.6"><path d="M6 5.5A2.5 2.5 0 0 1 8.5 3H26v21H8.5A2.5 2.5 0 0 0 6 26.5v-21zM6 26.5A2.5 2.5 0 0 0 8.5 29H26v-5M12 9.5h8"/></g>`,
  'i-unsourced': () =>
    html`<g class="line" stroke-width="2.6"><path stroke-dasharray="4.2 3.6" d="M6 26V5.5A2.5 2.5 0 0 1 8.5 3H26v26H8.5A2.5 2.5 0 0 1 6 26z"/><path d="M12.6 12a3.5 3.5 0 1 1 4.9 3.2c-1 .5-1.5 1.2-1.5 2.6M16 22.3v.1"/></g>`,
  'i-bag': () =>
    html`<g class="line" stroke-width="2.5"><path d="M7 10h18v16a3 3 0 0 1-3 3H10a3 3 0 0 1-3-3zM7 10V4h18v6M7 7h18"/><rect x="11.5" y="15" width="9" height="8" rx="1"/></g>`,
  'i-bin': () =>
    html`<g class="line" stroke-width="2.5"><path d="M3 9h26l-2.6 17.5a2 2 0 0 1-2 1.7H7.6a2 2 0 0 1-2-1.7zM3 9l3-5h20l3 5"/><rect x="11" y="15" width="10" height="7" rx="1"/></g>`,
  'i-shelf': () =>
    html`<g class="line" stroke-width="2.5"><path d="M4 3v26M28 3v26M4 15h24M4 27h24M9 15V8h7v7M19 27v-8h5v8"/></g>`,
  'i-cart': () =>
    html`<g class="line" stroke-width="2.6"><polygon points="28,16 22,26.4 10,26.4 4,16 10,5.6 22,5.6" stroke-dasharray="4.4 3"/><path d="M16 11v10M11 16h10"/></g>`,
  'i-shop': () =>
    html`<g class="line" stroke-width="2.6"><polygon points="21,16 16.5,23.8 7.5,23.8 3,16 7.5,8.2 16.5,8.2"/><path d="M17 16h12M24.5 11L29.5 16l-5 5"/></g>`,
  'i-hold': () =>
    html`<g class="line" stroke-width="2.6"><path d="M16 3.5L28.5 16 16 28.5 3.5 16zM12.5 12v8M19.5 12v8"/></g>`,
  'i-star': () =>
    html`<polygon fill="none" stroke="currentColor" stroke-width="2.7" points="27,16 21.5,25.5 10.5,25.5 5,16 10.5,6.5 21.5,6.5"/>`,
  'm-done': () =>
    html`<polygon points="29.5,18.5 22.8,30.2 9.3,30.2 2.5,18.5 9.2,6.8 22.8,6.8" class="steel"/><rect x="-3.6" y="-11" width="7.2" height="22" rx="1.6" transform="translate(23.6 9.6) rotate(38)" class="painted-rim"/>`,
  'v-use': () => html`<polygon points="31,17 24,29.1 10,29.1 3,17 10,4.9 24,4.9" class="steel"/>`,
  'v-spare': () =>
    html`<polygon points="30,17 23.5,28.3 10.5,28.3 4,17 10.5,5.7 23.5,5.7" class="thick"/>`,
  'v-machine': () =>
    html`<g class="line" stroke-width="3"><path d="M20.5 9.5L16.8 5.7H9.3L2.8 17l6.5 11.3h7.5l3.7-3.8"/><path d="M14 17h16M25 11.6L30.6 17 25 22.4"/></g>`,
  'v-scrap': () =>
    html`<g class="line" stroke-width="3"><polygon points="30,17 23.5,28.3 10.5,28.3 4,17 10.5,5.7 23.5,5.7"/><path d="M11.5 11.5l11 11M22.5 11.5l-11 11"/></g>`,
  'm-stripe': () => html`<path d="M8.8 1h4L5.2 19h-4z" class="painted"/>`,
  'm-open': () =>
    html`<path d="M8.8 1.5h3.5L5.2 18.5H1.7z" fill="none" stroke="currentColor" stroke-width="1.6"/>`,
  'i-tray': () =>
    html`<g class="line" stroke-width="2.5"><path d="M3 11h26l-3 14H6zM9 11V8h14v3M12 18h8"/></g>`,
  'i-box': () =>
    html`<g class="line" stroke-width="2.5"><path d="M4 11l12-6 12 6v13l-12 6-12-6zM4 11l12 6 12-6M16 17v13"/></g>`,
  'i-part': () =>
    html`<g class="line" stroke-width="2.7"><polygon points="28,16 22,26.4 10,26.4 4,16 10,5.6 22,5.6"/><circle cx="16" cy="16" r="4.5"/></g>`,
  'i-label': () =>
    html`<g class="line" stroke-width="2.5"><rect x="3" y="7" width="26" height="18" rx="2.5"/><path d="M8 12h5v5H8zM8 21h5M18 13h6M18 18h6"/></g>`,
  'i-home': () =>
    html`<g class="line" stroke-width="2.8"><path d="M4 15L16 5l12 10M7.5 13v14h17V13M12.5 20l3 3 5-6"/></g>`,
  'i-apart': () =>
    html`<g class="line" stroke-width="2.8"><path d="M13 10H8a6 6 0 0 0 0 12h5M19 10h5a6 6 0 0 1 0 12h-5M16 4v4M16 24v4"/></g>`,
  'i-sun': () =>
    html`<g class="line" stroke-width="2.8"><circle cx="16" cy="16" r="5.5"/><path d="M16 3v4M16 25v4M3 16h4M25 16h4M6.8 6.8l2.8 2.8M22.4 22.4l2.8 2.8M25.2 6.8l-2.8 2.8M9.6 22.4l-2.8 2.8"/></g>`,
  'i-device': () =>
    html`<g class="line" stroke-width="2.6"><rect x="9" y="3" width="14" height="26" rx="3"/><path d="M14.5 25h3"/></g>`,
  'i-file': () =>
    html`<g class="line" stroke-width="2.6"><path d="M8 3h11l6 6v20H8zM19 3v6h6M16.5 13v9M12.5 18.5l4 4 4-4"/></g>`,
  'i-set': () =>
    html`<g class="line" stroke-width="2.7"><path d="M4 9h13M23 9h5M4 23h5M15 23h13"/><circle cx="20" cy="9" r="3"/><circle cx="12" cy="23" r="3"/></g>`,
  'i-move': () =>
    html`<g class="line" stroke-width="2.7"><path d="M4 13v14h24V13M16 3v15M10.5 12.5L16 18l5.5-5.5"/></g>`,
  'i-note': () =>
    html`<g class="line" stroke-width="2.7"><path d="M5 27l1.5-6.5L22 5l5 5-15.5 15.5zM18.5 8.5l5 5"/></g>`,
  'i-point': () => html`<path class="line" stroke-width="3" d="M5 27L26 6M12 5.500h14.500V20"/>`,
  'i-print': () =>
    html`<g class="line" stroke-width="2.6"><path d="M9 12V4h14v8M9 23H4V12h24v11h-5M9 19h14v9H9z"/></g>`,
  'i-on': () => html`<path class="line" stroke-width="3.2" d="M13 6l10 10-10 10"/>`,
  'i-workings': () =>
    html`<g class="line" stroke-width="2.6"><path d="M3 11h26v11H3zM8 11v4M13 11v6M18 11v4M23 11v6"/></g>`,
  'i-kind': () =>
    html`<g class="line" stroke-width="2.6"><path d="M16 3l6 3.500v7l-6 3.500l-6 -3.500v-7zM4 22h24M4 28h16"/></g>`,
  'i-study': () =>
    html`<g class="line" stroke-width="2.6"><path d="M4 3v26h25M9.5 12h5M9.5 21h5M20.5 8h5M20.5 17h5"/></g><g class="blot"><circle cx="12" cy="12" r="2.6"/><circle cx="12" cy="21" r="2.6"/><circle cx="23" cy="8" r="2.6"/><circle cx="23" cy="17" r="2.6"/></g>`,
  'i-history': () =>
    html`<g class="line" stroke-width="2.6"><path d="M4 4v24h24M9.500 21l6-6 5 4 7-9.500"/></g>`,
  'i-erase': () =>
    html`<g class="line" stroke-width="2.8"><path d="M11 7h17v18H11L3 16zM15.5 12.5l7 7M22.5 12.5l-7 7"/></g>`,
};

/** @type {Record<string, string>} */
const boxes = { m: '0 0 34 34', v: '0 0 34 34', i: '0 0 32 32' };

/**
 * A mark by its name, hidden from screen readers because its word stands beside it.
 * @param {{name: string, className?: string}} props
 */
export function Icon({ name, className }) {
  const small = name === 'm-stripe' || name === 'm-open';
  const box = small ? '0 0 14 20' : boxes[name.slice(0, 1)];
  return html`<svg class=${className} viewBox=${box} aria-hidden="true">${shapes[name]?.()}</svg>`;
}

/** Whether there is such a mark. @param {string} name */
export const hasIcon = (name) => name in shapes;
