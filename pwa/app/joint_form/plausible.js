/** Under a torque as it is typed: whether it can be meant so, and its share of the proof load. */

import { PRELOAD } from '../../trade/workings/preload.js';
import { numberOf } from '../forms_fields.js';
import { Caution, html } from '../frame/index.js';
import { choiceOf } from '../lubricants.js';
import { t } from '../texts/index.js';
import { local } from '../values.js';
import { outcomeOf } from '../workings/outcome.js';
import { threadOf } from './bolt.js';

const WIDE = 360;
const HIGH = 36;
const PROOF = 100;
/** Said once beneath the bar, or already said by the fields that are empty. */
const ELSEWHERE = ['preload-thumb', 'preload-no-class', 'preload-no-nut-factor'];

/**
 * What the working on preload tells of a value of the form; null until thread, class and value are.
 * Another pass that follows makes a small value no surprise.
 * @param {any} form
 * @param {{value: string, unit: string}} value
 * @param {boolean} followed
 */
function toldOf(form, value, followed) {
  const typed = numberOf(value.value);
  if (typed === null || !form.strength_class || !threadOf(form.thread).thread) return null;
  const given = {
    thread: form.thread,
    class: form.strength_class,
    torque: { value: typed, unit: value.unit },
    lubricant: choiceOf(form.lubricant),
    'then-angle': followed ? 'yes' : 'no',
  };
  return outcomeOf(PRELOAD, given).told;
}

/** @param {{form: any, value: {value: string, unit: string}, followed: boolean}} props */
export function Plausible({ form, value, followed }) {
  const told = toldOf(form, value, followed);
  const line = told?.lines.find((/** @type {any} */ each) => each.name === 'share-of-proof');
  if (!line) return null;
  const [low, high] = line.between.map((/** @type {string} */ each) => `${local(each)} %`);
  const facts = { share: `${local(line.shown)} %`, low, high };
  const cautions = told.cautions.filter(
    (/** @type {any} */ each) => !ELSEWHERE.includes(each.code),
  );
  return html`<div class="plausible" role="group" aria-label=${t('joint.proof.thumb')}>
    ${cautions.map((/** @type {any} */ each) => html`<${Caution} key=${each.code} word=${each.word} says=${each.says} />`)}
    <${ShareBar} line=${line} says=${t('joint.proof.drawn', facts)} />
    <p class="hint">${t('joint.proof', facts)} ${t('joint.proof.thumb')}</p></div>`;
}

/** @param {{line: any, says: string}} props */
function ShareBar({ line, says }) {
  const most = Math.max(PROOF * 1.25, line.high * 1.05);
  const x = (/** @type {number} */ share) => 4 + (share / most) * (WIDE - 8);
  return html`<svg class="share-bar" viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${says}>
    <rect class="room" x="4" y="8" width=${x(PROOF) - 4} height="20" />
    <path class="proof" d=${`M${x(PROOF)} 1V35`} />
    <path class="sure" d=${`M${x(line.low)} 18H${x(line.high)}M${x(line.low)} 10v16M${x(line.high)} 10v16`} />
    <circle class="point" cx=${x(line.value)} cy="18" r="7" /></svg>`;
}
