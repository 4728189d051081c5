/** What a description said before, in the words of its form. */
import { value } from '../../log/workshop.js';
import { Icon } from '../icons.js';
import { hasText, t } from '../texts/index.js';
import { local } from '../values.js';
import { html } from './html.js';
import { deviceSays } from './maker.js';
import { useAnswer } from './store.js';

/** What a field is called. @param {string} heading @param {string} name */
export function fieldWords(heading, name) {
  const key = [`field.${heading}.${name}`, `field.${name}`].find(hasText);
  return key ? t(key) : name.replaceAll('_', ' ');
}

/** Fields that name another thing of the workshop. */
const NAMING = ['kind', 'donor', 'build'];

/** The name of the kind or donor it was. @param {{heading: string, id: any}} props */
function Named({ heading, id }) {
  const { value: workshop } = useAnswer((store) => store.allOf(heading), [heading]);
  const subject = workshop?.subject(id);
  return html`${(subject && value(subject, 'name')) || t('lost.other')}`;
}

/** @param {{field: string, value: any}} props */
function Was({ field, value: was }) {
  if (was === null || was === undefined || was === '') return html`${t('lost.nothing')}`;
  if (NAMING.includes(field)) return html`<${Named} heading=${field} id=${was} />`;
  if (typeof was === 'boolean') return html`${t(was ? 'once.yes' : 'once.no')}`;
  if (field === 'form' && hasText(`form.${was}`)) return html`${t(`form.${was}`)}`;
  if (typeof was === 'object') return html`${t('lost.other')}`;
  return html`${local(String(was))}`;
}

/** One line for each word that was replaced. @param {{heading: string, lost: any[]}} props */
export function LostLines({ heading, lost }) {
  return html`${lost.map(
    (
      one,
    ) => html`<li key=${`${one.entry} ${one.field}`}>${t('lost', { field: fieldWords(heading, one.field) })} <b><${Was} field=${one.field} value=${one.value} /></b>
    <span class="soft">${deviceSays(one.device)}</span></li>`,
  )}`;
}

/** What its fields were before, folded. @param {{heading: string, lost: any[]}} props */
export function Before({ heading, lost }) {
  if (lost.length === 0) return null;
  return html`<details class="fold"><summary>${t('edit.before', { n: lost.length })}<${Icon} name="i-down" /></summary>
    <ul class="sheet notes"><${LostLines} heading=${heading} lost=${lost} /></ul></details>`;
}
