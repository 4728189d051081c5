/** The owner's own photo of what is good, or not good, for one question: taken, chosen, or taken away. */

import '../texts/photo.js';
import { useRef, useState } from 'preact/hooks';
import { html, Key, Photo, say, useStore } from '../frame/index.js';
import { reducePhoto } from '../reduce_photo.js';
import { t } from '../texts/index.js';

/**
 * @param {{row: any, side: 'good' | 'bad', put: (part: any) => void, about?: string}} props about: the kind, once it is kept
 */
export function Example({ row, side, put, about }) {
  const store = useStore();
  const file = useRef(/** @type {HTMLInputElement | null} */ (null));
  const [busy, setBusy] = useState(false);
  const name = `${side}_photo`;
  const sha = row[name];
  const word = t(`photo.side.${side}`);
  const take = async (/** @type {any} */ event) => {
    const [picture] = event.target.files;
    if (!picture) return;
    setBusy(true);
    try {
      put({ [name]: await store.keepPhoto(await reducePhoto(picture)) });
      say(t('photo.kept'));
    } catch (error) {
      say(/** @type {any} */ (error).says ?? t('photo.unread'), true);
    } finally {
      setBusy(false);
      event.target.value = '';
    }
  };
  const says = t('photo.example', { side: word, asks: row.asks ?? '' });
  // Without `capture` a phone offers its camera and what was taken before.
  return html`<div class="example"><h3>${t(`photo.own.${side}`)}</h3>${sha && html`<div class="shots"><${Photo} sha=${sha} says=${says} about=${about} /></div>`}
    <${Key} icon="i-photo" label=${t(busy ? 'photo.keeping' : sha ? 'photo.own.other' : 'photo.own.take')} spoken=${`${t(sha ? 'photo.own.other' : 'photo.own.take')}: ${word}`} onPress=${() => file.current?.click()} />
    ${sha && html`<${Key} label=${t('photo.own.away')} spoken=${`${t('photo.own.away')}: ${word}`} onPress=${() => put({ [name]: '' })} />`}
    <input ref=${file} class="gone" type="file" accept="image/*" tabindex="-1" aria-label=${says} onChange=${take} /></div>`;
}
