/** An address that no screen answers. */
import { Act, Dock, Empty, html, Page } from '../frame/index.js';
import { t } from '../texts/index.js';

export function screen() {
  return html`<${Page} title=${t('lost.title')}><div class="left"><section class="hello"><h1 tabindex="-1">${t('lost.title')}</h1></section>
    <${Empty} icon="i-find" says=${t('lost.means')} /><${Dock}><${Act} href="/scan" label=${t('doors.scan')} /></${Dock}></div></${Page}>`;
}
