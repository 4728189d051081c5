/** Photos from the phone's own store; one that has not come yet is on its way, not broken. */
import { useEffect, useState } from 'preact/hooks';
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { Sheet } from './sheet.js';
import { useStore } from './store.js';

/**
 * The blob address of a photo: undefined while it is looked for, null when it is on its way.
 * @param {string} sha
 * @returns {string | null | undefined}
 */
function usePhoto(sha) {
  const store = useStore();
  const [address, setAddress] = useState(/** @type {string | null | undefined} */ (undefined));
  useEffect(() => {
    let made = '';
    let gone = false;
    const read = async () => {
      if (made) return;
      const blob = await store.photo(sha).catch(() => null);
      if (gone) return;
      if (blob) made = URL.createObjectURL(blob);
      setAddress(made || null);
    };
    read();
    const off = store.onChange(read);
    return () => {
      gone = true;
      off();
      if (made) URL.revokeObjectURL(made);
    };
  }, [sha]);
  return address;
}

/**
 * One photo; pressing it opens it large.
 * @param {{sha: string, says?: string | null}} props
 */
export function Photo({ sha, says }) {
  const address = usePhoto(sha);
  const [large, setLarge] = useState(false);
  const words = says || t('photo');
  if (!address) {
    const what = address === null ? t('photo.coming') : '';
    return html`<p class="coming" aria-busy=${String(address === undefined)}><${Icon} name="i-photo" /><span>${what}</span></p>`;
  }
  return html`<button type="button" class="press" aria-label=${t('photo.open', { says: words })} onClick=${() => setLarge(true)}>
    <img src=${address} alt="" width="160" height="104" /></button>
    ${large && html`<${Sheet} title=${words} className="large" onClose=${() => setLarge(false)}><img src=${address} alt=${words} /></${Sheet}>`}`;
}

/** @param {{photos?: {photo: string, says?: string | null}[]}} props */
export function Shots({ photos = [] }) {
  if (photos.length === 0) return null;
  return html`<ul class="shots">${photos.map((one) => html`<li key=${one.photo}><${Photo} sha=${one.photo} says=${one.says} /></li>`)}</ul>`;
}
