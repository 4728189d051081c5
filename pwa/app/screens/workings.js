/** Workings: what can be worked out at the bench without any record. */
import { WORKINGS } from '../../trade/workings/registry.js';
import { html, Icon, Page } from '../frame/index.js';
import { t } from '../texts/index.js';
import '../texts/workings_engine.js';
import { WorkingMark } from '../workings/marks.js';

const BACK = { to: '/more', says: t('more') };

/** @param {{params: Record<string, string>}} props */
export function screen({ params }) {
  const about = params.about ? `?about=${encodeURIComponent(params.about)}` : '';
  return html`<${Page} title=${t('work.title')} back=${BACK} now="more" className="list"><div class="left">
    <section class="hello"><h1 tabindex="-1">${t('work.title')}</h1><p class="soft">${t('work.title.says')}</p></section>
    <ul class="sheet">${[...WORKINGS.keys()].map(
      (
        name,
      ) => html`<li key=${name}><a class="row" href=${`/workings/${name}${about}`}><${WorkingMark} name=${name} />
      <span class="says"><b>${t(`work.${name}`)}</b><span class="soft">${t(`work.${name}.says`)}</span></span><${Icon} name="i-on" /></a></li>`,
    )}</ul></div></${Page}>`;
}
