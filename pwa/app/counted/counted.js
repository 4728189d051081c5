/** A counted part on its record: made single in one press, and counted together again. */

import { counted } from '../../views/counted.js';
import { Caution, html, Key } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { hasIcon, Icon } from '../icons.js';
import { keepAll } from '../keeping.js';
import '../texts/strip.js';
import { t } from '../texts/index.js';
import { singly, together } from './entries.js';

/** @param {{part: any, workshop: any, store: any}} props */
export function Counted({ part, workshop, store }) {
  const now = counted(workshop, part.id);
  if (!now.single && now.make.length < 2 && !now.judged_back.length && !now.lost.length)
    return null;
  const back = now.pieces.filter(({ id }) => now.back.includes(id));
  const look = now.pieces.find(({ mark }) => mark === 'look');
  const make = () =>
    keepAll(store, singly(workshop, part.id, now.make), t('counted.made', { n: now.make.length }));
  const bring = () =>
    keepAll(store, together(part.id, back, t('counted.back.reason')), t('counted.back.kept'));
  return html`<section><div class="sect"><h2>${t('counted.head')}</h2><span class="soft">${t('counted.says', { left: now.left, single: now.single })}</span></div>
    ${now.left < 0 && html`<${Caution} says=${t('counted.too-few')} />`}
    ${now.judged_back.length + now.lost.length > 0 && html`<${JudgedBack} now=${now} part=${part} workshop=${workshop} store=${store} />`}
    <div class="stack">${look && html`<${Key} href=${`/inspect/${look.id}`} icon="i-find" label=${t('counted.inspect')} />`}
    ${now.make.length > 0 && html`<${Key} icon="i-apart" label=${t('counted.make')} onPress=${make} />`}
    ${back.length > 0 && html`<${Key} icon="i-bag" label=${backWords(back.length, now.single)} onPress=${bring} />`}</div>
    ${now.pieces.length > 0 && html`<${Pieces} pieces=${now.pieces} />`}</section>`;
}

/** @param {number} n @param {number} single */
const backWords = (n, single) => (n === single ? t('counted.back') : t('counted.back.some', { n }));

/** @param {{pieces: any[]}} props */
const Pieces = ({ pieces }) =>
  html`<details class="fold"><summary>${t('counted.pieces')}<${Icon} name="i-down" /></summary><ul class="sheet">${pieces.map(
    (piece) =>
      html`<li key=${piece.id}><${Row} href=${`/part/${piece.id}`} icon=${hasIcon(`v-${piece.mark}`) ? `v-${piece.mark}` : 'i-part'} name=${piece.name} says=${t(`mark.${piece.mark}`)} /></li>`,
  )}</ul></details>`;

/** What another device said of a piece is not lost: it becomes single again. @param {any} props */
function JudgedBack({ now, part, workshop, store }) {
  const back = [...now.judged_back, ...now.lost];
  const numbers = back.map((/** @type {any} */ one) => one.number).join(', ');
  const counted = now.make.flatMap((/** @type {any} */ one) =>
    now.judged_back
      .filter((/** @type {any} */ was) => was.number === one.number)
      .map((/** @type {any} */ was) => ({ ...one, was: was.id })),
  );
  const missing = [...counted, ...now.lost];
  const again = () =>
    keepAll(
      store,
      singly(workshop, part.id, missing, now.lost),
      t('counted.made', { n: missing.length }),
    );
  return html`<div class="stack"><${Caution} says=${t('counted.judged', { n: back.length, names: numbers })} />
    ${missing.length > 0 && html`<${Key} icon="i-apart" label=${t('counted.single-again')} onPress=${again} />`}</div>`;
}
