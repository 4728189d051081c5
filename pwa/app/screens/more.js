/** More: everything else, sunlight first because it is wanted when nothing can be read. */

import { Sun } from '../frame/choices.js';
import { html, Page } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { t } from '../texts/index.js';

const rows = [
  ['sync', '/sync', 'i-wait'],
  ['labels', '/labels', 'i-print'],
  ['workings', '/workings', 'i-workings'],
  ['strip', '/strip', 'i-bag'],
  ['donors', '/donors', 'i-apart'],
  ['kinds', '/kinds', 'i-kind'],
  ['sets', '/sets', 'i-set-of'],
  ['wrenches', '/wrenches', 'i-wrench'],
  ['devices', '/devices', 'i-device'],
  ['settings', '/settings', 'i-set'],
];

export function screen() {
  return html`<${Page} title=${t('more')} now="more" className="list"><div class="left"><section class="hello"><h1 tabindex="-1">${t('more')}</h1></section><${Sun} />
    <ul class="sheet">${rows.map(([name, href, icon]) => html`<li key=${name}><${Row} href=${href} icon=${icon} name=${t(`more.${name}`)} says=${t(`more.${name}.says`)} /></li>`)}</ul></div></${Page}>`;
}
