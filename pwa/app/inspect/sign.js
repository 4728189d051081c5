/** Beside what is outside its limits: a triangle, so that it is told apart without any colour. */

import { html } from '../frame/html.js';

export const Sign = () =>
  html`<svg class="sign" viewBox="0 0 32 32" aria-hidden="true"><path d="M16 4L29.5 27.5h-27zM16 12.500v7.500M16 23v1.500" /></svg>`;
