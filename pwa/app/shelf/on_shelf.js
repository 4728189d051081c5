/** How many of a kind are on the shelf, with the way there. */
import { Workshop } from '../../log/workshop.js';
import { shelf } from '../../views/shelf.js';
import { html, Key, useSlice } from '../frame/index.js';
import { useLater } from '../later.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';

/** Only the parts of this kind and the sets, which rank them. @param {any} store @param {string} kind */
async function read(store, kind) {
  const [slice, sets] = await Promise.all([store.kindSlice(kind), store.allOf('set')]);
  const about = slice.subject(kind);
  return Workshop([...slice.all('part'), ...sets.all('set'), ...(about ? [about] : [])]);
}

/** @param {{store: any, kind: string}} props */
export function OnShelf({ store, kind }) {
  const later = useLater();
  const { workshop } = useSlice(store, async (one) => (later ? read(one, kind) : null), [
    kind,
    later,
  ]);
  const groups = workshop ? shelf(workshop).groups : [];
  const n = groups.find((one) => one.kind?.id === kind)?.count ?? 0;
  return html`<${Key} href=${`/shelf?kind=${encodeURIComponent(kind)}`} icon="i-shelf" label=${workshop ? t('shelf.on', { n }) : t('shelf.title')} />`;
}
