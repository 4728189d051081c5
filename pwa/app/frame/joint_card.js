/** A joint on a record: passes as figures, both units, lubricant, order, cautions, source. */
import { Icon } from '../icons.js';
import { t, unitWords } from '../texts/index.js';
import { inOther, local } from '../values.js';
import { capital } from '../words.js';
import { Key } from './act.js';
import { html } from './html.js';
import { Caution, Source } from './told.js';

/** What may be done with a joint, as the word on its key. @type {Record<string, string>} */
const ways = {
  'no-value': 'card.add-value',
  'not-begun': 'card.begin',
  running: 'card.go-on',
  'not-whole': 'card.open',
  done: 'card.look',
};

/** @param {{value: {group?: string | null, value: string, unit: string}}} props */
function Value({ value }) {
  const other = inOther(value);
  const degrees = value.unit === '°';
  return html`<span class="grouped">
    <span class="fig n">${local(value.value)}${degrees ? '°' : ''}</span>
    <span class="gone"> ${unitWords(value.unit)}, </span>
    ${other && html`<span class="u">${local(other.value)} <span aria-hidden="true">${other.unit}</span><span class="gone">${unitWords(other.unit)}</span></span>`}
    ${degrees && html`<span class="u">${t('card.pass.turn')}</span>`}
    ${value.group && html`<span class="u">${value.group}</span>`}</span>`;
}

/** @param {{pass: any}} props */
function Pass({ pass }) {
  const plain = pass.how === 'hand' || pass.how === 'back-off';
  const mark =
    pass.state === 'done' &&
    html`<${Icon} name="m-stripe" className="mark" /><span class="gone">${t('card.pass.done')}</span>`;
  if (plain) {
    return html`<li><span class="h">${t(`card.pass.${pass.how}`)}</span><span class="u">${t('card.pass.all', { n: pass.of })}</span>${mark}</li>`;
  }
  if (pass.values.length === 0)
    return html`<li><span class="h">${t('card.pass.no-value')}</span>${mark}</li>`;
  return html`<li>${pass.values.map((/** @type {any} */ value, /** @type {number} */ at) => html`<${Value} key=${at} value=${value} />`)}${mark}</li>`;
}

/** The torque figures of a joint in one line, both units. @param {{joint: any}} props */
export function Torques({ joint }) {
  const values = joint.passes.flatMap((/** @type {any} */ pass) => pass.values ?? []);
  if (values.length === 0) return html`<span>${t('card.no-value')}</span>`;
  return html`<span>${values.map(bothUnits).join('; ')}</span>`;
}

/** @param {{value: string, unit: string}} value */
function bothUnits(value) {
  const other = inOther(value);
  const mine =
    value.unit === '°' ? `${local(value.value)}°` : `${local(value.value)} ${value.unit}`;
  return other ? `${mine} (${local(other.value)} ${other.unit})` : mine;
}

/** How many passes are counted: the one by hand comes before the first. @param {any[]} passes */
export const passCount = (passes) => Math.max(0, ...passes.map((pass) => pass.number));

/** The units of the written figures, once each. @param {any} joint */
function unitsOf(joint) {
  const units = joint.passes.flatMap((/** @type {any} */ pass) =>
    pass.values.map((/** @type {any} */ v) => v.unit),
  );
  return [...new Set(units)].filter((unit) => unit !== '°');
}

/** How far it is: nothing while nothing was pulled. @param {any} joint */
function progress(joint) {
  if (joint.state === 'done')
    return t(joint.overruled ? 'card.done.overruled' : 'card.done', { n: joint.count });
  if (joint.state === 'not-begun' || joint.state === 'no-value') return '';
  return t(joint.pass_number ? 'card.progress' : 'card.progress.hand', {
    done: joint.done,
    of: joint.of,
    pass: joint.pass_number,
  });
}

/** The order of pulling: the numbers themselves, or the sequence in full. @param {any} joint */
function orderWords({ sequence, pattern }) {
  if (!sequence || sequence.length === 0) return t(`order.${pattern}`);
  const rising = sequence.every(
    (/** @type {number} */ n, /** @type {number} */ at) => n === at + 1,
  );
  return rising ? t('card.order.numbers') : t('card.order', { order: sequence.join(' ') });
}

/** Unit, order and progress in one line. @param {any} joint */
function howWords(joint) {
  const order = orderWords(joint);
  return [
    unitsOf(joint).length ? t('card.unit', { unit: unitsOf(joint).join(', ') }) : '',
    order,
    progress(joint),
    joint.overruled ? t('card.overruled', { why: joint.overruled }) : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** @param {{joint: any}} props */
function Told({ joint }) {
  const notes = joint.fastener_notes ?? [];
  return html`${notes.length > 0 && html`<ul class="how">${notes.map((/** @type {any} */ one) => html`<li key=${one.number}>${t('card.fastener-note', { noun: capital(joint.noun ?? t('card.noun')), number: one.number, note: one.note })}</li>`)}</ul>`}
    ${joint.retorque && html`<p class="how">${t('card.retorque', { says: joint.retorque })}</p>`}
    ${joint.cautions.map((/** @type {any} */ one, /** @type {number} */ at) => html`<${Caution} key=${at} word=${one.word} says=${one.says} />`)}`;
}

/**
 * @param {{joint: any}} props a summary of the part view
 */
export function JointCard({ joint }) {
  const valued = joint.passes.some((/** @type {any} */ pass) => pass.values.length > 0);
  const size = [joint.thread, joint.lubricant].filter(Boolean).join(', ');
  return html`<article class="sheet joint"><h3>${joint.name}</h3>
    <p class="state">${t('card.size', { count: joint.count, size: size || t(joint.count === 1 ? 'card.noun' : 'card.noun.many') })}</p>
    ${joint.passes.length > 0 && html`<ol class="values">${joint.passes.map((/** @type {any} */ pass) => html`<${Pass} key=${pass.id} pass=${pass} />`)}</ol>`}
    <p class="how">${howWords(joint)}</p><${Told} joint=${joint} />
    ${valued ? html`<${Source} text=${joint.source} />` : html`<p class="how">${t('card.no-value')}</p>`}
    <div class="open-joint"><${Key} className="strike press" icon="i-star" href=${`/joint/${joint.id}`} label=${t(ways[joint.state] ?? 'card.look')} spoken=${`${t(ways[joint.state] ?? 'card.look')}: ${joint.name}`} /></div></article>`;
}
