/** The lines of a history, newest first: whole for one part, a row each for many. */
import { html, Icon, Key } from '../frame/index.js';
import { StrikeLink, Struck } from '../frame/inspections.js';
import { Shots } from '../frame/photo.js';
import { Row } from '../frame/row.js';
import { hasIcon } from '../icons.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';
import { badSays, headSays, madeSays, readingSays, rowSays } from './says.js';

/** How many older lines come at a press. */
export const MORE = 40;

/** @param {any} line */
function iconOf({ struck, verdict, heading }) {
  if (struck) return 'i-strike';
  if (verdict && hasIcon(`v-${verdict}`)) return `v-${verdict}`;
  return heading === 'sent' || heading === 'returned' ? 'v-machine' : 'i-find';
}

/** @param {{lines: any[]}} props */
export const WholeLines = ({ lines }) =>
  html`<div>${lines.map((line) => html`<${WholeLine} key=${line.id} line=${line} />`)}</div>`;

/** @param {{line: any}} props */
function WholeLine({ line }) {
  const said = [line.reason, line.for, badSays(line), line.note]
    .filter(Boolean)
    .map(capital)
    .join('. ');
  const word = headSays(line);
  const made = madeSays(line);
  return html`<article class=${`look ${line.struck ? 'out' : ''}`}><${Icon} name=${iconOf(line)} /><div>
    <h3><span>${word}</span><time datetime=${line.made}>${made}</time></h3>
    ${line.stands && html`<p class="soft">${t('history.stands')}</p>`}${said && html`<p>${said}</p>`}
    ${line.readings.length > 0 && html`<ul>${line.readings.map((/** @type {any} */ one, /** @type {number} */ at) => html`<li key=${at}>${readingSays(one)}</li>`)}</ul>`}
    <${Shots} photos=${line.photos} about=${line.part} />
    ${line.struck ? html`<${Struck} struck=${line.struck} />` : html`<${StrikeLink} entry=${line.id} about=${line.part} what=${`${word}, ${made}`} />`}</div></article>`;
}

/** @param {{lines: any[], of: number, older: () => void}} props */
export function Lines({ lines, of, older }) {
  const rest = of - lines.length;
  return html`<div class="sect"><h2>${t('history.found')}</h2><span class="soft">${t('history.lines', { n: of })}</span></div>
    <ul class="sheet">${lines.map((line) => html`<li key=${line.id}><${Row} href=${`/history/part/${line.part}`} icon=${iconOf(line)} name=${line.name || t('record.nameless')} says=${rowSays(line)} /></li>`)}</ul>
    ${rest > 0 && html`<div class="pair"><${Key} icon="i-down" label=${t('history.older', { n: Math.min(MORE, rest) })} onPress=${older} /></div>`}`;
}
