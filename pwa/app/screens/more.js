/** More: everything else, sunlight first because it is wanted when nothing can be read. */

import { Sun } from '../frame/choices.js';
import { html, Page } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { t } from '../texts/index.js';

/** What is there, by what it is about: name, address, icon. @type {[string, string[][]][]} */
const groups = [
  [
    'parts',
    [
      ['builds', '/builds', 'i-home'],
      ['strip', '/strip', 'i-bag'],
      ['donors', '/donors', 'i-apart'],
      ['kinds', '/kinds', 'i-kind'],
      ['sets', '/sets', 'i-set-of'],
      ['shelf', '/shelf', 'i-shelf'],
      ['away', '/away', 'i-move'],
    ],
  ],
  [
    'bench',
    [
      ['wrenches', '/wrenches', 'i-wrench'],
      ['studies', '/studies', 'i-study'],
      ['workings', '/workings', 'i-workings'],
      ['labels', '/labels', 'i-print'],
    ],
  ],
  [
    'device',
    [
      ['sync', '/sync', 'i-wait'],
      ['devices', '/devices', 'i-device'],
      ['settings', '/settings', 'i-set'],
    ],
  ],
];

/** @param {{about: string, rows: string[][]}} props */
const Group = ({ about, rows }) => html`<div class="sect"><h2>${t(`more.of.${about}`)}</h2></div>
  <ul class="sheet">${rows.map(([name = '', href, icon]) => html`<li key=${name}><${Row} href=${href} icon=${icon} name=${t(`more.${name}`)} says=${t(`more.${name}.says`)} /></li>`)}</ul>`;

export function screen() {
  return html`<${Page} title=${t('more')} now="more" className="list"><div class="left"><section class="hello"><h1 tabindex="-1">${t('more')}</h1></section><${Sun} />
    ${groups.map(([about, rows]) => html`<${Group} key=${about} about=${about} rows=${rows} />`)}</div></${Page}>`;
}
