/** The machine shop: what is out, with whom, for what, since when, due when; what came back. */
import { away as awayView } from '../../views/away.js';
import { day, today } from '../dates.js';
import { Act, Dock, html, Key, Missing, Page, useSlice, Wait } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { codeGroups } from '../frame/told.js';
import { batchesOf } from '../shelf/batches.js';
import { outSays } from '../shelf/says.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';
import { local } from '../values.js';

const BACK = { to: '/more', says: t('form.back') };
const LATELY = 20;

/** @param {{store: any}} props */
export function screen({ store }) {
  const { workshop } = useSlice(store, (s) => s.awaySlice(), []);
  const title = t('away.title');
  if (!workshop)
    return html`<${Page} title=${title} back=${BACK} now="more" ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const { out, back, look, ready } = awayView(workshop, today());
  return html`<${Page} title=${title} back=${BACK} now="more" className="list"><div class="left">
    <div class="id"><h1 tabindex="-1">${title}</h1></div>
    ${out.length === 0 ? html`<${Missing} says=${t('away.none')} />` : html`<${Out} lines=${out} />`}
    <${Todo} title=${t('away.look')} lines=${look} icon="i-find" to=${(/** @type {string} */ part) => `/inspect/${part}`} />
    <${Todo} title=${t('away.ready')} lines=${ready} icon="v-machine" to=${(/** @type {string} */ part) => `/send?part=${part}`} />
    ${back.length > 0 && html`<section class="also"><div class="sect"><h2>${t('away.back')}</h2></div><ul class="sheet">${back.slice(0, LATELY).map((/** @type {any} */ one) => html`<li key=${one.id}><${Row} href=${`/part/${one.part}`} icon="i-part" name=${one.name || t('record.nameless')} says=${backSays(one)} /></li>`)}</ul></section>`}
    <${Dock}><${Act} href="/send" label=${t('away.send')} /></${Dock}></div></${Page}>`;
}

/** Parts that something is to be done with. @param {{title: string, lines: any[], icon: string, to: (part: string) => string}} props */
const Todo = ({ title, lines, icon, to }) =>
  lines.length > 0 &&
  html`<section class="also"><div class="sect"><h2>${title}</h2></div><ul class="sheet">${lines.map((one) => html`<li key=${one.part}><${Row} href=${to(one.part)} icon=${icon} name=${one.name || t('record.nameless')} says=${one.kind} figure=${one.quantity} /></li>`)}</ul></section>`;

/** The slip for the box is this list on paper. @param {{lines: any[]}} props */
const Out = ({
  lines,
}) => html`<div class="sect"><h2>${t('away.out')}</h2><span class="soft">${lines.length}</span></div>
  <div class="stack"><ul class="sheet">${batchesOf(lines).map(
    (
      box,
    ) => html`${box.length > 1 && html`<li key=${`of ${box[0].id}`} class="together"><${Row} href=${`/back?of=${box[0].id}`} icon="i-shop" name=${t('away.all', { n: box.length })} says=${[t('away.to', { to: box[0].to }), box[0].for].filter(Boolean).join(' · ')} /></li>`}
    ${box.map((one) => html`<li key=${one.id}><${Row} href=${`/back/${one.part}`} icon="i-move" name=${one.name || t('record.nameless')} says=${[outSays(one), ...one.codes.map(codeGroups)].join(' · ')} figure=${one.quantity} /></li>`)}`,
  )}</ul>
  <${Key} icon="i-print" label=${t('away.print')} onPress=${() => window.print()} /></div>`;

/** @param {any} one */
const backSays = (one) =>
  [
    t('away.from', { to: one.to ?? '', day: day(one.made) }),
    one.for,
    one.note,
    ...one.readings.map((/** @type {any} */ read) => `${local(read.value)} ${read.unit}`),
  ]
    .filter(Boolean)
    .join(' · ');
