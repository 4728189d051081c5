/** The first screen: scan, or on the first day how to begin. */

import { Act, Dock, Empty, html, Key, Page, useStore, Wait } from '../frame/index.js';
import { useAnswer } from '../frame/store.js';
import { t } from '../texts/index.js';
import { screen as scan } from './scan.js';

/** Nothing is kept yet: how to begin. */
function FirstDay() {
  const { state } = useStore();
  const paired = state.paired.value === 'yes';
  return html`<${Page} title="Witnessmark"><div class="left"><section class="hello"><h1 tabindex="-1">Witnessmark</h1></section>
    <${Empty} icon="i-label" says=${t('first-day')} then=${t('first-day.then')} />
    <div class="also stack"><${Key} href="/scan" icon="i-scan" label=${t('doors.scan')} />${paired ? '' : html`<${Key} href="/labels" icon="i-print" label=${t('labels')} />`}</div>
    <${Dock}>${paired ? html`<${Act} href="/labels" label=${t('labels')} second=${t('more.labels.says')} />` : html`<${Act} href="/pair" label=${t('sync.pair')} second=${t('sync.pair.second')} />`}</${Dock}></div></${Page}>`;
}

/** @param {any} props */
export function screen(props) {
  const { state, value } = useAnswer((store) => store.findRows(), []);
  if (state === 'wait' && !value)
    return html`<${Page} title="" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const first = !value || value.length === 0;
  return first ? html`<${FirstDay} />` : html`<${scan} ...${props} />`;
}
