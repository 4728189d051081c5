/** A row of a list: the whole of it is the target. */
import { Icon } from '../icons.js';
import { html } from './html.js';

/**
 * @param {{href?: string, icon: string, name: any, says?: any, figure?: any, code?: string, now?: boolean, onPress?: () => void}} props
 */
export function Row({ href, icon, name, says, figure, code, now, onPress }) {
  const inside = html`<${Icon} name=${icon} /><span class="says"><b>${name}</b>${says && html`<span class="soft">${says}</span>`}</span>
    <span class=${code ? 'fig code-small' : 'fig'}>${code ?? figure ?? ''}</span>`;
  if (href) return html`<a class=${`row ${now ? 'now' : ''}`} href=${href}>${inside}</a>`;
  return html`<button type="button" class=${`row ${now ? 'now' : ''}`} onClick=${onPress}>${inside}</button>`;
}
