/** Which build a set is for, and why a piece goes elsewhere than to its own place. */
import { value } from '../../log/workshop.js';
import { Chips, TextField } from '../forms_fields.js';
import { Caution, html } from '../frame/index.js';
import { t } from '../texts/index.js';

/** The build there is, when there is but one. @param {any} workshop @returns {string} */
export function onlyBuild(workshop) {
  const builds = workshop.all('build');
  return builds.length === 1 ? builds[0].id : '';
}

/** @param {{workshop: any, build: string, change: (part: any) => void}} props */
export function ForBuild({ workshop, build, change }) {
  const builds = workshop
    .all('build')
    .map((/** @type {any} */ one) => ({ value: one.id, says: value(one, 'name') ?? '' }));
  if (!builds.length) return null;
  const words = [{ value: '', says: t('set.build.none') }, ...builds];
  return html`<${Chips} label=${t('set.build')} value=${build} words=${words} onChange=${(/** @type {string} */ id) => change({ build: id })} />`;
}

/** Another place than its own is held back until somebody says why. @param {{n: number, draft: any, change: (part: any) => void}} props */
export function Elsewhere({ n, draft, change }) {
  if (!n) return null;
  return html`<section class="stack"><${Caution} says=${t('set.place.caution', { n })} />
    <${TextField} id="why-elsewhere" label=${t('set.place.why')} value=${draft.why} onChange=${(/** @type {string} */ why) => change({ why })} /></section>`;
}
