/** What has been found on a part, newest first; struck-out lines stay readable. */
import { day } from '../dates.js';
import { hasIcon, Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';
import { html } from './html.js';
import { madeSays, makerOf } from './maker.js';
import { Shots } from './photo.js';

/**
 * The way to strike out one fact: reason and confirm come there.
 * @param {{entry: string, about: string, what: string}} props
 */
export function StrikeLink({ entry, about, what }) {
  return html`<a class="strike press" href=${`/strike/${entry}?about=${encodeURIComponent(about)}`} aria-label=${t('strike.what', { what })}>
    <${Icon} name="i-strike" />${t('strike')}</a>`;
}

/** What was struck, why and when. @param {{struck: any}} props */
export const Struck = ({ struck }) =>
  html`<p class="soft">${t('struck', { reason: struck.reason, day: [day(struck.made), makerOf(struck)].filter(Boolean).join(', ') })}</p>`;

/** @param {any} one @param {any[]} criteria */
function bad(one, criteria) {
  const looked = one.looks ?? [];
  return looked
    .filter((/** @type {any} */ look) => !look.good)
    .map(
      (/** @type {any} */ look) =>
        criteria.find((criterion) => criterion.id === look.criterion)?.asks ?? look.criterion,
    );
}

/** A criterion inside our sentence: without its own full stop. @param {string} asks */
const bare = (asks) => asks.replace(/[.?]+$/, '');

/** @param {{one: any, criteria: any[], readings: any}} props */
function Words({ one, criteria, readings }) {
  const wrong = bad(one, criteria);
  const said = capital([one.reason, one.note].filter(Boolean).join('. '));
  return html`${said && html`<p>${said}</p>`}${readings}
    ${wrong.length > 0 && html`<p>${t('inspection.not-good', { what: wrong.map(bare).join('; ') })}</p>`}
    ${!said && wrong.length === 0 && html`<p class="soft">${t('inspection.plain')}</p>`}`;
}

/** @param {{one: any, criteria: any[], readings: any, about: string}} props */
function Inspection({ one, criteria, readings, about }) {
  const icon = one.verdict && hasIcon(`v-${one.verdict}`) ? `v-${one.verdict}` : 'i-find';
  const word = t(`verdict.${one.verdict ?? 'none'}`);
  return html`<article class=${`look ${one.struck ? 'out' : ''}`}><${Icon} name=${one.struck ? 'i-strike' : icon} /><div>
    <h3><span>${word}</span><time datetime=${one.made}>${madeSays(one)}</time></h3>
    <${Words} one=${one} criteria=${criteria} readings=${readings} /><${Shots} photos=${one.photos} about=${about} />
    ${one.struck ? html`<${Struck} struck=${one.struck} />` : html`<${StrikeLink} entry=${one.id} about=${about} what=${`${word}, ${day(one.made)}`} />`}</div></article>`;
}

/** @param {{part: any, readings: (one: any) => any}} props readings: what one of them read */
export function Inspections({ part, readings }) {
  const all = part.inspections;
  return html`<div class="sect"><h2>${t('record.found')}</h2><span class="soft">${t('record.inspections', { n: all.length })}</span></div>
    ${all.length === 0 && html`<p class="soft">${t('record.found.none')}</p>`}
    <div>${all.map((/** @type {any} */ one) => html`<${Inspection} key=${one.id} one=${one} criteria=${part.criteria} readings=${readings(one)} about=${part.id} />`)}</div>`;
}
