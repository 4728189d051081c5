/** The figure read from a metre: what to pull the next fastener to. */

import { hexagon } from '../drawing/heads.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';
import { figures, lengthOf, local, namedFirst, written } from './figures.js';
import { markGives } from './setting_now.js';

/**
 * @param {{view: any, fastener: any, pass: any, setting: any, wrenchUnit: string | null, ownUnit: string, unsourced: boolean}} props
 */
export function Figure(props) {
  const { view, fastener, pass } = props;
  const content = fastener.target
    ? html`<${TargetFigure} ...${props} />`
    : html`<${WordFigure} view=${view} fastener=${fastener} pass=${pass} />`;
  return content;
}

/** What is large and what is beside it: the target, or what to set where an adapter is used. @param {any} props */
function shownOf({ fastener, setting, wrenchUnit, ownUnit, unsourced }) {
  const says = unsourced ? t('run.unsourced') : '';
  if (!setting?.through) {
    const { figure, other } = figures(fastener.target, wrenchUnit, ownUnit);
    return { figure, other: other && written(other), head: says };
  }
  const head = [t('run.set'), says].filter(Boolean).join(', ');
  const other = t('run.at-the-bolt', { value: written(fastener.target) });
  return { figure: setting.figure, other, head };
}

/** @param {any} props */
function TargetFigure({ view, fastener, setting, wrenchUnit, ownUnit, unsourced }) {
  const { figure, other, head } = shownOf({ fastener, setting, wrenchUnit, ownUnit, unsourced });
  const gives = markGives(setting);
  const text = local(figure.value);
  const turn = figure.unit === '°';
  const kind = unsourced ? 'unsourced-figure' : '';
  return html`<section class=${`pull ${kind}`} data-length=${lengthOf(turn ? `${text}°` : text)}>
    <div>${head && html`<p class="quiet-head">${head}</p>`}
      <div class="big">${text}${turn && '°'}</div></div>
    <div class="side"><${Who} view=${view} fastener=${fastener} />
      <div>${turn ? html`<${Arc} degrees=${Number(figure.value)} />` : html`<p class="unit">${figure.unit}</p>`}
        ${other && html`<p class=${`other ${setting?.through ? 'at-bolt' : ''}`}>${other}</p>`}
        ${gives && html`<p class="own-note">${gives}</p>`}
        ${fastener.group && html`<p class="grouped">${fastener.group}</p>`}
        ${fastener.note && html`<p class="own-note">${fastener.note}</p>`}</div></div>
  </section>`;
}

/** @param {any} props */
function WordFigure({ view, fastener, pass }) {
  const hand = pass?.how === 'hand';
  return html`<section class="pull" data-length="hand">
    <div class="big">${t(hand ? 'run.by-hand' : 'run.back-off')}</div>
    <div class="side"><${Who} view=${view} fastener=${fastener} />
      <div>${!hand && html`<p class="grouped">${t('run.back-off.all', { n: view.count })}</p>`}
      ${fastener.note && html`<p class="own-note">${fastener.note}</p>`}</div></div>
  </section>`;
}

/** The ring of what is next, with its number. @param {any} props */
function Who({ view, fastener }) {
  return html`<p class="who"><svg viewBox="-34 -30 68 60" aria-hidden="true">
    <polygon class="next-o" points=${hexagon(0, 0, 31)} /><polygon class="next-h" points=${hexagon(0, 0, 24)} />
    <text y="12.5">${fastener.number}</text></svg>${t('run.next')}<span class="gone">, ${namedFirst(view, fastener.number)}</span></p>`;
}

/** The angle as an arc from the stripe. @param {{degrees: number}} props */
function Arc({ degrees }) {
  const turn = (Math.min(degrees, 359) * Math.PI) / 180;
  const [x, y] = [26 * Math.sin(turn), -26 * Math.cos(turn)];
  const large = degrees > 180 ? 1 : 0;
  return html`<svg class="arc" viewBox="-34 -34 68 68" aria-hidden="true">
    <path class="arc-start" d="M0 0V-32" /><path d=${`M0 -26A26 26 0 ${large} 1 ${x.toFixed(1)} ${y.toFixed(1)}`} />
    <path d=${`M0 0L${(x * 0.7).toFixed(1)} ${(y * 0.7).toFixed(1)}`} /></svg>
    <p class="own-note">${t('run.mark-first')}</p>`;
}
