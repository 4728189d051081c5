/** The share thrown out as a bar with its band, the counts, why not, and how many to bring home. */
import { useMemo } from 'preact/hooks';
import { bringHome } from '../../views/history_counts.js';
import { Chips, Count } from '../forms_fields.js';
import { Caution, html, Icon } from '../frame/index.js';
import { Row } from '../frame/row.js';
import { hasIcon } from '../icons.js';
import { t } from '../texts/index.js';
import { percent } from './says.js';

const WIDE = 272;
const EDGE = 12;
const VERDICTS = ['use', 'spare', 'machine', 'scrap', 'look', 'ask'];
const CHANCES = ['80', '90', '95'];
const MOST_WANTED = 400;

/** What a person last asked for. */
export const FRESH = Object.freeze({ wanted: 12, chance: '90' });

/** @param {any} counts */
const sharesOf = ({ judged, rejected, share }) => ({
  judged,
  rejected,
  share: percent(share.observed),
  low: percent(share.low),
  high: percent(share.high),
});

/** "2 of 16 rejected, 4 to 36 %". @param {any} counts */
const shortSays = (counts) =>
  counts.share
    ? t('history.share.row', sharesOf(counts))
    : t('history.share.short', { n: counts.pieces });

/** @param {{counts: any}} props */
export function Share({ counts }) {
  if (!counts.share) return null;
  return html`<section class="sheet share"><h2>${t('history.share')}</h2><${Bar} ...${counts.share} />
    <p class="set-says">${t('history.share.says', sharesOf(counts))}</p>
    ${counts.few && html`<${Caution} word="notice" says=${t('history.share.few')} />`}
    <p class="soft">${t('history.share.means')}</p></section>`;
}

/** The counted share filled, the band above it; the sentence below says the same. @param {any} share */
function Bar({ observed, low, high }) {
  const x = (/** @type {number} */ share) => EDGE + share * (WIDE - 2 * EDGE);
  const ends = [0, 50, 100];
  return html`<svg viewBox=${`0 0 ${WIDE} 84`} aria-hidden="true">
    <path class="ot-bar" d=${`M${x(low)} 14H${x(high)}M${x(low)} 6v16M${x(high)} 6v16`} />
    <rect class="share-all" x=${EDGE} y="28" width=${WIDE - 2 * EDGE} height="24" /><rect class="steel" x=${EDGE} y="28" width=${x(observed) - EDGE} height="24" />
    <path class="ot-axis" d=${ends.map((end) => `M${x(end / 100)} 52v8`).join('')} />
    ${ends.map((end) => html`<text key=${end} class=${`fig ot-day ${end === 0 ? '' : end === 50 ? 'middle' : 'end'}`} x=${end === 50 ? x(0.5) : end === 0 ? 2 : WIDE - 2} y="79">${end} %</text>`)}</svg>`;
}

/** "24 use, 8 scrap", each with its mark. @param {{counts: any}} props */
export const Counts = ({ counts }) =>
  html`<ul class="set-legend">${VERDICTS.filter((word) => counts.verdicts[word] > 0).map(
    (word) =>
      html`<li key=${word}><${Icon} name=${hasIcon(`v-${word}`) ? `v-${word}` : 'i-find'} />${t(`count.${word}`, { n: counts.verdicts[word] })}</li>`,
  )}</ul>`;

/** The same counts for each donor or each kind. @param {{rows: any[], title: string, to: string, icon: string, none: string}} props */
export function Groups({ rows, title, to, icon, none }) {
  if (!rows.length) return null;
  return html`<div class="sect"><h2>${title}</h2></div><ul class="sheet">${rows.map((row) => {
    const name = (row.pieces === 1 ? row.name : row.plural) ?? row.name ?? t('record.nameless');
    return row.id
      ? html`<li key=${row.id}><${Row} href=${`/history/${to}/${row.id}`} icon=${icon} name=${name} says=${shortSays(row)} figure=${row.pieces} /></li>`
      : html`<li key="none" class="row"><${Icon} name=${icon} /><span class="says"><b>${none}</b><span class="soft">${shortSays(row)}</span></span><span class="fig">${row.pieces}</span></li>`;
  })}</ul>`;
}

/** @param {{reasons: any[]}} props */
export function Reasons({ reasons }) {
  if (!reasons.length) return null;
  return html`<div class="sect"><h2>${t('history.reasons')}</h2></div><ul class="sheet">${reasons.map(
    ({ verdict, reason, count }) =>
      html`<li key=${`${verdict} ${reason}`} class="row"><${Icon} name=${`v-${verdict}`} /><span class="says"><b>${reason}</b><span class="soft">${t(`mark.${verdict}`)}</span></span><span class="fig">${count}</span></li>`,
  )}</ul>`;
}

/** How many used ones to bring so that so many may be used. @param {{counts: any, draft: any, change: (part: any) => void}} props */
export function Bring({ counts, draft, change }) {
  const { judged, rejected } = counts;
  const { wanted, chance } = draft;
  const found = useMemo(
    () => bringHome(judged, rejected, wanted, Number(chance) / 100),
    [judged, rejected, wanted, chance],
  );
  const says = found.bring
    ? t('history.bring.says', { bring: found.bring, wanted, chance: percent(found.chance) })
    : t('history.bring.none');
  const words = CHANCES.map((value) => ({ value, says: `${value} %` }));
  return html`<section class="sheet share form"><h2>${t('history.bring')}</h2>
    <${Count} label=${t('history.bring.wanted')} value=${wanted} most=${MOST_WANTED} onChange=${(/** @type {number} */ many) => change({ wanted: many })} />
    <${Chips} label=${t('history.bring.chance')} value=${chance} words=${words} onChange=${(/** @type {string} */ one) => change({ chance: one })} />
    <p class="set-says" role="status">${says}</p><p class="soft">${t('history.bring.from', { n: judged })}</p>
    <a class="second-act press" href="/workings/bring">${t('history.bring.more')}</a></section>`;
}
