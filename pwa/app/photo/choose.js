/** Which photo to compare with: others of the same thing, then what its kind calls good and not good. */

import { html, Sheet } from '../frame/index.js';
import { Thumb } from '../frame/photo.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { captionOf } from './says.js';

/** @param {{lines: any[], onChoose: (sha: string) => void, onClose: () => void}} props */
export function Choose({ lines, onChoose, onClose }) {
  return html`<${Sheet} title=${t('photo.compare.with')} onClose=${onClose}>
    ${
      lines.length
        ? html`<ul class="shots">${lines.map(
            (
              one,
            ) => html`<li key=${one.photo}><${Press} class="press" onPress=${() => onChoose(one.photo)} aria-label=${captionOf(one) || t('photo')}>
      <${Thumb} sha=${one.photo} /></${Press}><p aria-hidden="true">${captionOf(one)}</p></li>`,
          )}</ul>`
        : html`<p><b>${t('photo.compare.none')}</b></p><p class="soft">${t('photo.compare.then')}</p>`
    }</${Sheet}>`;
}
