/** What is tightened and measured with: wrenches, then instruments, each with its range and age. */
import { instruments } from '../../views/instrument.js';
import { today } from '../dates.js';
import { Act, Dock, Empty, html, Key, Page, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { lineSays } from '../instruments/says.js';
import { readAll } from '../read_all.js';
import { t } from '../texts/index.js';

const BACK = { to: '/more', says: t('form.back') };
const HEADINGS = ['wrench', 'instrument'];

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop } = useSlice(store, (s) => readAll(s, HEADINGS), []);
  const title = t('tool.short');
  if (!workshop)
    return html`<${Page} title=${title} back=${BACK} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const { wrenches, instruments: measuring } = instruments(workshop, today());
  const none = wrenches.length + measuring.length === 0;
  return html`<${Page} title=${title} back=${BACK} now="more"><div class="left">
    <div class="id"><h1 tabindex="-1">${t('tool.list')}</h1></div>
    ${none ? html`<${Empty} icon="i-gauge" says=${t('tool.none')} then=${t('tool.none.then')} />` : html`<${Group} name="wrenches" icon="i-wrench" tools=${wrenches} />`}
    <div class="also"><${Key} href="/wrench/new" icon="i-wrench" label=${t('tool.wrench.new')} /></div>
    <${Dock}><${Act} href="/instrument/new" label=${t('tool.instrument.new')} second=${t('tool.instrument.new.second')} /></${Dock}></div>
    ${!none && html`<div class="right"><${Group} name="instruments" icon="i-gauge" tools=${measuring} /></div>`}</${Page}>`;
}

/** @param {{name: string, icon: string, tools: any[]}} props */
function Group({ name, icon, tools }) {
  return html`<div class="sect"><h2>${t(`tool.${name}`)}</h2><span class="soft">${tools.length || ''}</span></div>
    ${tools.length === 0 && html`<p class="soft">${t(`tool.${name}.none`)}</p>`}
    ${tools.length > 0 && html`<ul class="sheet">${tools.map((tool) => html`<li key=${tool.id}><${Row} href=${`/${tool.heading}/${tool.id}`} icon=${icon} name=${tool.name || t('record.nameless')} says=${lineSays(tool)} /></li>`)}</ul>`}`;
}
