/** What was bagged this evening, the newest first, each with the way to strike it out. */

import { useState } from 'preact/hooks';
import { Act, codeGroups, html, Key, Sheet } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { strikeOut } from '../run/drafts.js';
import { t } from '../texts/index.js';

const REASONS = ['mistake', 'wrong-thing', 'typed-wrong', 'twice'];

/**
 * @param {{lines: any[], workshop: any, keep: (drafts: any[]) => Promise<any>, struck: (id: string) => void}} props
 */
export function Bagged({ lines, workshop, keep, struck }) {
  const [out, setOut] = useState(/** @type {any} */ (null));
  const standing = lines.filter((line) => !isOut(workshop, line));
  return html`<section><div class="sect"><h2>${t('strip.bagged')}</h2><span class="soft">${t('strip.bagged.count', { n: standing.length })}</span></div>
    ${lines.length === 0 && html`<p class="soft">${t('strip.bagged.none')}</p>`}
    ${lines.length > 0 && html`<ul class="sheet notes">${lines.map((line) => html`<${Line} key=${line.id} line=${line} out=${isOut(workshop, line)} strike=${() => setOut(line)} />`)}</ul>`}
    ${out && html`<${Why} line=${out} keep=${keep} struck=${struck} close=${() => setOut(null)} />`}</section>`;
}

/** Whether the part was struck out here; a hidden one is no longer among the donor's. @param {any} workshop @param {any} line */
export const isOut = (workshop, line) => Boolean(line.out || workshop.subject(line.id)?.hidden);

/** @param {{line: any, out: boolean, strike: () => void}} props */
function Line({ line, out, strike }) {
  const rest = [
    line.quantity > 1 ? t('record.pieces', { n: line.quantity }) : '',
    line.code ? codeGroups(line.code) : t('strip.bagged.no-label'),
    out ? t('strip.bagged.out') : '',
  ];
  return html`<li><div class=${out ? 'out' : ''}><${Row} href=${`/part/${line.id}`} icon=${out ? 'i-strike' : 'i-part'} name=${line.name} says=${rest.filter(Boolean).join(', ')} /></div>
    ${!out && html`<${Key} className="strike press" icon="i-strike" label=${t('strike')} spoken=${t('strike.what', { what: line.name })} onPress=${strike} />`}</li>`;
}

/** @param {{line: any, keep: (drafts: any[]) => Promise<any>, struck: (id: string) => void, close: () => void}} props */
function Why({ line, keep, struck, close }) {
  const [reason, setReason] = useState('');
  const act = async () => {
    const drafts = line.voids.map((/** @type {string} */ id) => strikeOut(id, reason));
    if (!(await keep(drafts))) return false;
    struck(line.id);
    close();
    return true;
  };
  return html`<${Sheet} title=${t('strip.out.title', { name: line.name })} onClose=${close}><div class="form">
    <p class="soft">${t('strip.out.says')}</p>
    <div class="chips" role="group" aria-label=${t('strike.reason')}>${REASONS.map(
      (
        word,
      ) => html`<${Key} key=${word} className="press" label=${t(`reason.${word}`)} pressed=${reason === t(`reason.${word}`)}
        onPress=${() => setReason(t(`reason.${word}`))} />`,
    )}</div>
    <${Act} disabled=${!reason} onPress=${act} label=${t('strike.act.plain')} second=${reason || t('strike.held')} /></div></${Sheet}>`;
}
