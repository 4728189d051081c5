/** The gauge studies of the workshop; with none yet, what one is for and what it takes. */
import { study } from '../../views/study.js';
import { Act, Dock, html, Icon, Page, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { readStudies } from '../study/read.js';
import { rowSays } from '../study/says.js';
import { t } from '../texts/index.js';
import { byName } from '../words.js';
import '../texts/study.js';

const BACK = { to: '/more', says: t('form.back') };

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop } = useSlice(store, readStudies, []);
  const title = t('study.list');
  if (!workshop)
    return html`<${Page} title=${title} back=${BACK} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const studies = workshop
    .all('study')
    .map((/** @type {any} */ one) => study(workshop, one.id))
    .sort(byName);
  return html`<${Page} title=${title} back=${BACK} now="more" className="list"><div class="left">
    <div class="id"><h1 tabindex="-1">${title}</h1></div>
    ${
      studies.length
        ? html`<ul class="sheet">${studies.map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/study/${one.id}`} icon="i-study" name=${one.name ?? t('study.nameless')} says=${rowSays(one)} /></li>`)}</ul>`
        : html`<${Teach} />`
    }
    <${Dock}><${Act} href="/study/new" label=${t('study.new')} /></${Dock}></div></${Page}>`;
}

const Teach = () =>
  html`<div class="sheet empty"><${Icon} name="i-study" /><p><b>${t('study.none')}</b></p>${['why', 'how', 'long', 'then'].map((word) => html`<p key=${word}>${t(`study.${word}`)}</p>`)}</div>`;
