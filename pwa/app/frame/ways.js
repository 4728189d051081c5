/** What else may be done with a part or holder: photo, note, move, labels. */
import { useRef, useState } from 'preact/hooks';
import { Icon } from '../icons.js';
import { keepAll } from '../keeping.js';
import { reducePhoto } from '../reduce_photo.js';
import { t } from '../texts/index.js';
import { Key } from './act.js';
import { html } from './html.js';
import { say } from './live.js';
import { NoteSheet } from './note_sheet.js';
import { useStore } from './store.js';

/**
 * Takes a photo and keeps it: one press here, one in the camera.
 * @param {{about: string}} props
 */
export function PhotoKey({ about }) {
  const store = useStore();
  const input = useRef(/** @type {HTMLInputElement | null} */ (null));
  const [busy, setBusy] = useState(false);
  const take = async () => {
    const file = input.current?.files?.[0];
    if (!file) return;
    setBusy(true);
    try {
      const photo = await store.keepPhoto(await reducePhoto(file));
      await keepAll(store, [{ heading: 'photo', about, body: { photo } }], t('photo.kept'));
    } catch (error) {
      say(t('photo.unread'), true);
      reportError(error);
    } finally {
      setBusy(false);
      if (input.current) input.current.value = '';
    }
  };
  return html`<${Key} icon="i-photo" label=${t(busy ? 'photo.keeping' : 'way.photo')} onPress=${() => input.current?.click()} />
    <input ref=${input} type="file" accept="image/*" capture="environment" hidden onChange=${take} />`;
}

/** @param {{about: string}} props */
export function NoteKey({ about }) {
  const [now, setNow] = useState('');
  const to = (/** @type {string} */ word) => () => setNow(word);
  return html`<${Key} icon="i-note" label=${t('way.note')} onPress=${to('writing')} />
    ${now === 'kept' && html`<p class="tell wide">${t('note.kept')}</p>`}
    ${now === 'writing' && html`<${NoteSheet} about=${about} onClose=${to('')} onKept=${to('kept')} />`}`;
}

/** @param {{href: string, icon: string, label: string}} props */
const Way = ({ href, icon, label }) => html`<${Key} href=${href} icon=${icon} label=${label} />`;

/** The way to change what it is said to be: a row of its own. @param {{id: string}} props */
const EditWay = ({ id }) =>
  html`<${Key} className="second-act press wide" href=${`/edit/${id}`} icon="i-type" label=${t('way.edit')} />`;

/** Where it is fitted. @param {{id: string}} props */
const FitWay = ({ id }) =>
  html`<${Key} className="second-act press wide" href=${`/fit/${id}`} icon="i-home" label=${t('way.fit')} />`;

/** Workings that are kept on this record in one tap. @param {{id: string}} props */
const WorkWay = ({ id }) =>
  html`<${Key} className="second-act press wide" href=${`/workings?about=${id}`} icon="i-workings" label=${t('way.work-out')} />`;

/** What a part of its kind is looked at for. @param {{kind: any}} props */
const KindWay = ({ kind }) =>
  html`<${Key} className="second-act press wide" href=${`/kind/${kind.id}`} icon="i-kind" label=${t('way.kind', { name: kind.name ?? '' })} />`;

/** What was found on it over time. @param {{id: string}} props */
const HistoryWay = ({ id }) =>
  html`<${Key} className="second-act press wide" href=${`/history/part/${id}`} icon="i-history" label=${t('way.history')} />`;

/** That it came back from where it was sent. @param {{id: string}} props */
const BackWay = ({ id }) =>
  html`<${Key} className="second-act press wide" href=${`/back/${id}`} icon="i-shop" label=${t('code.away.back')} />`;

/** @param {{part: any}} props */
export function PartWays({ part }) {
  const { id } = part;
  return html`<section class="also" aria-label=${t('ways')}><div class="sect"><h2>${t('ways')}</h2></div>
    <div class="pair">${part.away.length > 0 && html`<${BackWay} id=${id} />`}<${PhotoKey} about=${id} /><${NoteKey} about=${id} />
    <${Way} href=${`/move/${id}`} icon="i-move" label=${t('way.move')} /><${Way} href=${`/inspect/${id}`} icon="i-find" label=${t('way.inspect')} />
    <${Way} href=${`/label/${id}`} icon="i-label" label=${t('way.label')} /><${Way} href=${`/joint/new/edit?part=${id}`} icon="i-star" label=${t('way.joint')} />
    <${HistoryWay} id=${id} /><${FitWay} id=${id} />${part.kind && html`<${KindWay} kind=${part.kind} />`}<${WorkWay} id=${id} /><${EditWay} id=${id} /></div></section>`;
}

/** @param {{holder: any}} props */
export function HolderWays({ holder }) {
  const { id } = holder;
  return html`<section class="also" aria-label=${t('ways')}><div class="sect"><h2>${t('ways')}</h2></div>
    <div class="pair"><${PhotoKey} about=${id} /><${NoteKey} about=${id} />
    <${Way} href=${`/move/${id}`} icon="i-move" label=${t('way.move')} /><${Way} href=${`/label/${id}`} icon="i-label" label=${t('way.label')} /><${EditWay} id=${id} /></div></section>`;
}

/** A mark of a holder's form. @param {string | null} form */
export const formIcon = (form) =>
  ({ bag: 'i-bag', bin: 'i-bin', tray: 'i-tray', box: 'i-box', shelf: 'i-shelf' })[form ?? ''] ??
  'i-bin';

/** @param {{form: string | null}} props */
export const FormMark = ({ form }) => html`<${Icon} name=${formIcon(form)} />`;
