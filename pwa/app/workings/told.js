/** What a working found: cautions first, then the lines, the first of them large. */
import { Caution, html } from '../frame/index.js';
import { local } from '../run/figures.js';
import { t, unitWords } from '../texts/index.js';
import { lineSays, wordSays } from './words.js';

/** @typedef {import('../../trade/workings/working.js').Line} Line */

/** @param {Line} line its value as text, words included */
const figureOf = (line) =>
  typeof line.value === 'string' ? wordSays(line.value) : local(line.shown);

/** @param {Line} line "53.3 N·m" */
export const lineText = (line) => [figureOf(line), line.unit].filter(Boolean).join(' ');

/** What a line is called; converted amounts are called by their unit. @param {string} working @param {Line} line */
export function nameOf(working, line) {
  return working === 'convert' ? unitWords(line.unit) : lineSays(working, line.name);
}

/** @param {Line} line "57.7 to 62.5" */
function bandOf(line) {
  if (!line.between) return '';
  const [low, high] = line.between.map(local);
  return t('work.band', { low, high });
}

/** A figure for the eye, its words for the ear. @param {{line: Line}} props */
function Figure({ line }) {
  const spoken = [figureOf(line), line.unit && unitWords(line.unit)].filter(Boolean).join(' ');
  const kind = typeof line.value === 'string' ? 'as-word' : 'fig';
  return html`<span class="gone">${spoken}</span><span class="seen" aria-hidden="true"><b class=${kind}>${figureOf(line)}</b>${line.unit && html` <span class="unit">${line.unit}</span>`}</span>`;
}

/** @param {{working: string, line: Line, first: boolean}} props */
function OneLine({ working, line, first }) {
  const more = [bandOf(line), line.other && local(line.other)].filter(Boolean);
  const kind = [first && 'first', Array.isArray(line.value) && 'several'].filter(Boolean).join(' ');
  return html`<div class=${`line ${kind}`}><dt>${nameOf(working, line)}</dt>
    <dd><${Figure} line=${line} />${more.map((each) => html`<span class="soft more" key=${each}>${each}</span>`)}
    ${line.mark && html`<span class="mark">${t(`work.mark.${line.mark}`)}</span>`}</dd></div>`;
}

/** @param {{told: any}} props */
export function Told({ told }) {
  const large = told.working !== 'convert';
  return html`${told.cautions.map((/** @type {any} */ each) => html`<${Caution} key=${each.code} word=${each.word} says=${each.says} />`)}
    <dl class="sheet lines">${told.lines.map((/** @type {Line} */ line, /** @type {number} */ at) => html`<${OneLine} key=${`${line.name}${line.unit}`} working=${told.working} line=${line} first=${large && at === 0} />`)}</dl>`;
}
