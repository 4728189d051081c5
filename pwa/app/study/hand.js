/** Who measures now: the instrument goes from hand to hand at the end of a round. */
import { Act, html, Key } from '../frame/index.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { t } from '../texts/index.js';

/** @typedef {import('../../views/study_plan.js').At} At */

/** @param {{study: any, open: At[], leave: () => void, change: (part: any) => void}} props */
export function Handover({ study, open, leave, change }) {
  const firsts = study.people.flatMap(
    (/** @type {string} */ person) => open.find((at) => at.person === person) ?? [],
  );
  const next = open[0];
  if (!next) return null;
  const take = (/** @type {At} */ { person, repeat }) =>
    change({ person, round: repeat, typed: '', sign: '', cell: '' });
  const left = open.filter((at) => at.person === next.person).length;
  const others = firsts.filter((/** @type {At} */ at) => at.person !== next.person);
  return html`<${RunFrame} title=${study.name ?? t('study.title')} demo=${study.invented} leave=${leave} says=${t('study.leave')} className="narrow">
    <${RunTitle} name=${study.name ?? t('study.title')} right=${t('study.far', { done: study.of - open.length, of: study.of })} />
    <div class="asked"><h2>${t('study.hand', next)}</h2>
      ${
        others.length > 0 &&
        html`<fieldset><legend>${t('study.hand.other')}</legend><div class="chips">${others.map(
          (/** @type {At} */ at) =>
            html`<${Key} key=${at.person} className="press" label=${at.person} onPress=${() => take(at)} />`,
        )}</div></fieldset>`
      }<p>${t('study.hand.says', { pieces: study.pieces })}</p></div>
    <${Act} confirm onPress=${() => take(next)} label=${t('study.hand.act', next)} second=${t('study.hand.left', { n: left, person: next.person })} />
  </${RunFrame}>`;
}

/** @param {{study: any, leave: () => void}} props */
export function Whole({ study, leave }) {
  return html`<${RunFrame} title=${study.name ?? t('study.title')} demo=${study.invented} leave=${leave} says=${t('study.leave')} className="narrow">
    <${RunTitle} name=${study.name ?? t('study.title')} right=${t('study.far', study)} />
    <div class="asked"><h2>${t('study.whole', { n: study.of })}</h2></div>
    <${Act} confirm onPress=${leave} label=${t('study.whole.act')} />
  </${RunFrame}>`;
}
