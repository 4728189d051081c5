/** Notes, photos, purchases and counts of a record, and what was struck out or changed. */
import { day } from '../dates.js';
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';
import { LostLines } from './before.js';
import { html } from './html.js';
import { StrikeLink, Struck } from './inspections.js';
import { madeSays, makerOf } from './maker.js';
import { Shots } from './photo.js';

/** @param {any} note */
function words(note) {
  const { body, heading } = note;
  if (heading === 'add' || heading === 'take') return t(`note.${heading}`, { n: body.count });
  if (heading === 'purchase')
    return [t('note.purchase'), plain(body.price), body.seller, body.says]
      .filter(Boolean)
      .join(', ');
  if (heading === 'reading') return capital(`${plain(body.of)}: ${plain(body.value)}`);
  return note.text || t('photo');
}

/** Text, or a measured value with its unit. @param {any} said */
const plain = (said) =>
  said && typeof said === 'object' ? `${said.value ?? ''} ${said.unit ?? ''}`.trim() : (said ?? '');

/** @param {{of: any}} props */
export function Notes({ of }) {
  if (of.notes.length === 0) return null;
  return html`<div class="sect"><h2>${t('record.notes')}</h2><span class="soft">${of.notes.length}</span></div><ul class="sheet notes">${of.notes.map(
    (
      /** @type {any} */ note,
    ) => html`<li key=${note.id}><p class=${note.struck ? 'out' : ''}>${words(note)} <time class="soft" datetime=${note.made}>${madeSays(note)}</time></p>
      <${Shots} photos=${note.photos} about=${of.id} />${note.struck ? html`<${Struck} struck=${note.struck} />` : html`<${StrikeLink} entry=${note.id} about=${of.id} what=${words(note)} />`}</li>`,
  )}</ul>`;
}

/** What was struck out and what lost against a newer word, folded. @param {{of: any}} props */
export function History({ of }) {
  const unread = of.unread ?? [];
  const count = of.strikes.length + of.lost.length + unread.length;
  if (count === 0) return null;
  return html`<details class="fold"><summary>${t('record.history', { n: count })}<${Icon} name="i-down" /></summary><ul class="sheet notes">
    ${of.strikes.map((/** @type {any} */ one) => html`<li key=${one.id}>${t('struck.heading', { heading: t(`heading.${one.heading ?? 'other'}`), reason: one.reason, day: [day(one.made), makerOf(one)].filter(Boolean).join(', ') })}</li>`)}
    <${LostLines} heading=${of.heading} lost=${of.lost} />
    ${unread.length > 0 && html`<li>${t('unread', { n: unread.length })}</li>`}</ul></details>`;
}
