/** How many of a kind are on the shelf, with the way there. */
import { shelf } from '../../views/shelf.js';
import { html, Key, useSlice } from '../frame/index.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';
import { readShelf } from './read.js';

/** @param {{store: any, kind: string}} props */
export function OnShelf({ store, kind }) {
  const { workshop } = useSlice(store, readShelf, []);
  const groups = workshop ? shelf(workshop).groups : [];
  const n = groups.find((one) => one.kind?.id === kind)?.count ?? 0;
  return html`<${Key} href=${`/shelf?kind=${encodeURIComponent(kind)}`} icon="i-shelf" label=${workshop ? t('shelf.on', { n }) : t('shelf.title')} />`;
}
