/** A few words to a record: written, kept, gone back to where one was. */
import { useEffect, useState } from 'preact/hooks';
import { keepAll } from '../keeping.js';
import { t } from '../texts/index.js';
import { Act } from './act.js';
import { html } from './html.js';
import { Sheet } from './sheet.js';
import { useStore } from './store.js';

/** @param {{about: string, onClose: () => void, onKept: () => void}} props */
export function NoteSheet({ about, onClose, onKept }) {
  const store = useStore();
  const name = `note:${about}`;
  const [text, setText] = useState('');
  useEffect(() => {
    // A half-written note comes back after the page was killed.
    Promise.resolve(store.draft(name)).then((was) => was && setText(was));
  }, []);
  const write = (/** @type {string} */ words) => {
    setText(words);
    store.setDraft(name, words);
  };
  const keep = async () => {
    const kept = await keepAll(store, [{ heading: 'note', about, body: { text: text.trim() } }]);
    if (kept === false) return false;
    store.setDraft(name, null);
    onKept();
    return true;
  };
  return html`<${Sheet} title=${t('way.note')} onClose=${onClose}><div class="form">
    <label class="field"><span>${t('note.text')}</span><textarea value=${text} onInput=${(/** @type {any} */ event) => write(event.target.value)} autofocus></textarea></label>
    <${Act} label=${t('note.keep')} disabled=${text.trim() === ''} onPress=${keep} /></div></${Sheet}>`;
}
