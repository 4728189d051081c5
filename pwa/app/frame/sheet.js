/** A sheet over the page: focus stays inside, Escape closes it, focus goes back where it was. */
import { useEffect, useRef } from 'preact/hooks';
import { t } from '../texts/index.js';
import { Key } from './act.js';
import { html } from './html.js';

/**
 * @param {{title: string, onClose: () => void, className?: string, children?: any}} props
 */
export function Sheet({ title, onClose, className = '', children }) {
  const box = useRef(/** @type {HTMLDialogElement | null} */ (null));
  useEffect(() => {
    const was = /** @type {HTMLElement | null} */ (document.activeElement);
    box.current?.showModal();
    return () => was?.focus({ preventScroll: true });
  }, []);
  return html`<dialog ref=${box} class=${className} aria-labelledby="sheet-title" onCancel=${(
    /** @type {Event} */ event,
  ) => {
    event.preventDefault();
    onClose();
  }}><div class="head"><h2 id="sheet-title">${title}</h2>
    <${Key} className="close press" label=${t('close')} onPress=${onClose} /></div>${children}</dialog>`;
}
