/** Zoom with one thumb: further, the whole picture, closer. */

import { html } from '../frame/index.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { times } from './use_views.js';
import { STEP } from './view.js';

/** @param {{views: any}} props */
export function Zoom({ views }) {
  const { now } = views;
  const by = (/** @type {number} */ step) => () => views.zoom(step);
  return html`<div class="zoom" role="group" aria-label=${t('photo.zoom')}>
    <${Press} class="press" typing aria-label=${t('photo.further')} onPress=${by(1 / STEP)}>−</${Press}>
    <${Press} class="press" typing onPress=${views.whole}>${t('photo.whole')} <span class="fig">${t('photo.times', { n: times(now.k) })}</span></${Press}>
    <${Press} class="press" typing aria-label=${t('photo.closer')} onPress=${by(STEP)}>+</${Press}></div>`;
}
