/** What the histories of a kind and of a donor have alike. */
import { html, Missing, Page, Wait } from '../frame/index.js';
import { t } from '../texts/index.js';
import '../texts/history.js';
import { Counts, Share } from './share.js';

/** Something of another sort, or nothing at all. @param {{back: any}} props */
export const NotHere = ({ back }) =>
  html`<${Page} title=${t('history.gone')} back=${back}><div class="left"><h1 tabindex="-1" class="gone">${t('history.gone')}</h1><${Missing} says=${t('history.gone')} then=${t('history.gone.then')} /></div></${Page}>`;

/** What it will be is named as soon as that is known. @param {{back: any, title?: string | null}} props */
export const Reading = ({ back, title }) =>
  html`<${Page} title=${title || t('way.history')} back=${back} ready=${false}><div class="left">${title && html`<section class="id"><h1 tabindex="-1">${title}</h1><p class="where">${t('wait.reading')}</p></section>`}<${Wait} /></div></${Page}>`;

/** Name, counts, and the share with its band; or what is to be done first. @param {{title: string, counts: any, empty: string}} props */
export function Head({ title, counts, empty }) {
  const { pieces, judged } = counts;
  return html`<section class="id"><h1 tabindex="-1">${title}</h1><p class="where">${t('history.pieces', { n: pieces })}</p></section>
    ${pieces === 0 && html`<${Missing} says=${t(empty)} then=${t(`${empty}.then`)} />`}
    ${pieces > 0 && html`<${Counts} counts=${counts} />`}
    ${pieces > 0 && judged === 0 && html`<${Missing} says=${t('history.unjudged', { n: pieces })} then=${t('history.unjudged.then')} />`}
    <${Share} counts=${counts} />`;
}
