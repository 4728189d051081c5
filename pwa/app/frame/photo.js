/** Photos from the phone's own store; one that has not come yet is on its way, not broken. */
import { useEffect, useState } from 'preact/hooks';
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { useStore } from './store.js';

/**
 * The blob address of a photo: undefined while it is looked for, null when it is on its way.
 * @param {string} sha
 * @returns {string | null | undefined}
 */
export function usePhoto(sha) {
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

/** Where a photo stands large. @param {string} sha @param {string} [about] what it is a photo of */
export const photoPath = (sha, about) =>
  `/photo/${sha}${about ? `?about=${encodeURIComponent(about)}` : ''}`;

/** A small photo, or that it is on its way. @param {{sha: string}} props */
export function Thumb({ sha }) {
  const address = usePhoto(sha);
  if (address) return html`<img src=${address} alt="" width="160" height="104" />`;
  const what = address === null ? t('photo.coming') : '';
  return html`<span class="coming" aria-busy=${String(address === undefined)}><${Icon} name="i-photo" /><span>${what}</span></span>`;
}

/**
 * One photo; pressing it opens it large, also one that has not come yet.
 * @param {{sha: string, says?: string | null, about?: string}} props
 */
export const Photo = ({ sha, says, about }) =>
  html`<a class="press" href=${photoPath(sha, about)} aria-label=${t('photo.open', { says: says || t('photo') })}><${Thumb} sha=${sha} /></a>`;

/** @param {{photos?: {photo: string, says?: string | null}[], about?: string}} props */
export function Shots({ photos = [], about }) {
  if (photos.length === 0) return null;
  return html`<ul class="shots">${photos.map((one) => html`<li key=${one.photo}><${Photo} sha=${one.photo} says=${one.says} about=${about} /></li>`)}</ul>`;
}
