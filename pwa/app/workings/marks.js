/** A mark for each working, drawn without words. */
import { html } from '../frame/index.js';

/** @type {Record<string, any>} */
const marks = {
  convert: html`<path d="M4 11h20l-5-5M28 21H8l5 5" />`,
  adapter: html`<path d="M3 20h14M17 16v8h4v-8zM21 20l6-9M25 8.5a3.4 3.4 0 1 1 4.6 4" />`,
  preload: html`<path d="M9 4h14v6H9zM12.500 10v18h7V10M12.500 15h7M12.500 20h7M12.500 25h7" />`,
  stretch: html`<path d="M5 4h9v5H5zM7 9v18h5V9M21 5v22M17.500 8.500L21 5l3.500 3.500M17.500 23.500L21 27l3.500-3.500" />`,
  clearance: html`<circle cx="16" cy="16" r="12" /><circle cx="16" cy="17.500" r="8.500" />`,
  'ring-gap': html`<path d="M13 4.400a12 12 0 1 0 6 0M13 9.500a7 7 0 1 0 6 0M13 4.400v5.100M19 4.400v5.100" />`,
  ratio: html`<path d="M6 3v26M26 3v26M6 4h20M6 14h20v8H6zM16 22v7" />`,
  set: html`<path d="M3 25h26" /><g class="blot"><circle cx="7" cy="19" r="2.400" /><circle cx="14" cy="19" r="2.400" /><circle cx="17.500" cy="13.500" r="2.400" /><circle cx="21" cy="19" r="2.400" /><circle cx="27" cy="19" r="2.400" /></g>`,
  bring: html`<path d="M6 11h20l-2 17H8zM11 15V8a5 5 0 0 1 10 0v7" />`,
};

/** @param {{name: string}} props */
export const WorkingMark = ({ name }) =>
  html`<svg viewBox="0 0 32 32" aria-hidden="true"><g class="line" stroke-width="2.6">${marks[name]}</g></svg>`;
