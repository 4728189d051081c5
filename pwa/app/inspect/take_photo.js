/** A photo from the phone's camera, reduced here and kept before the inspection names it. */

import { useRef, useState } from 'preact/hooks';
import { feedback } from '../feedback.js';
import { html, Icon, say } from '../frame/index.js';
import { Press } from '../press.js';
import { reducePhoto } from '../reduce_photo.js';
import { t } from '../texts/index.js';

/** @param {{store: any, name: string, taken: (sha: string) => void}} props */
export function TakePhoto({ store, name, taken }) {
  const file = useRef(/** @type {HTMLInputElement | null} */ (null));
  const [says, setSays] = useState('');
  const take = async (/** @type {any} */ event) => {
    const [picture] = event.target.files;
    if (!picture) return;
    setSays(t('inspect.photo.taking'));
    try {
      const sha = await store.keepPhoto(await reducePhoto(picture));
      taken(sha.sha ?? sha);
      feedback('kept');
      setSays('');
    } catch (error) {
      const words = /** @type {any} */ (error).says ?? t('inspect.photo.not');
      feedback('notKept');
      say(words, true);
      setSays(words);
    }
    event.target.value = '';
  };
  return html`<${Press} class="press" onPress=${() => file.current?.click()}><${Icon} name="i-photo" />${says || t('inspect.photo')}</${Press}>
    <input ref=${file} class="gone" type="file" accept="image/*" capture="environment" tabindex="-1" aria-label=${t('inspect.photo.of', { name })} onChange=${take} />`;
}
