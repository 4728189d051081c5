/** The wrench to use on a joint: those that take its value first, each with its nearest mark. */

import { ratio } from '../../views/setting.js';
import { wrenches as linesOf } from '../../views/wrenches.js';
import { numberOf } from '../forms_fields.js';
import { html, Icon } from '../frame/index.js';
import { Press } from '../press.js';
import { written } from '../run/figures.js';
import { markSays } from '../run/marks.js';
import { wrenchSays } from '../screens/wrench.js';
import { t } from '../texts/index.js';
import { adapterKept } from './adapter.js';

/** The torque of the last torque pass, which the wrench has to reach. @param {any} form */
export function targetOf(form) {
  const values = form.passes
    .filter((/** @type {any} */ pass) => pass.how === 'torque')
    .flatMap((/** @type {any} */ pass) => pass.values);
  const typed = values.map((/** @type {any} */ v) => ({ value: numberOf(v.value), unit: v.unit }));
  return typed.findLast((/** @type {any} */ v) => Number(v.value) > 0) ?? null;
}

/** @param {{form: any, change: (part: any) => void, workshop: any, target: any}} props */
export function Tool({ form, change, workshop, target }) {
  const adapter = adapterKept(form.adapter);
  const fields = { wrench: { value: form.wrench }, adapter: { value: adapter } };
  const lines = linesOf(/** @type {any} */ ({ fields }), target, workshop);
  const through = typeof adapter === 'object' && ratio(/** @type {any} */ (adapter)) !== null;
  const pick = (/** @type {string} */ wrench) => change({ wrench });
  return html`<section class="stack"><h2>${t('joint.wrench')}</h2>
    ${target && lines.length > 0 && html`<p class="hint">${t('joint.wrench.for', { value: written(target) })}</p>`}
    <div class="sheet pick" role="group" aria-label=${t('joint.wrench')}>
      ${lines.map((/** @type {any} */ line) => html`<${Row} key=${line.id} line=${line} through=${through} on=${line.id === form.wrench} pick=${() => pick(line.id)} />`)}
      <${Press} class="row" aria-pressed=${String(!form.wrench)} onPress=${() => pick('')}><${Icon} name="i-star" />
        <span class="says"><b>${t('joint.wrench.none')}</b></span></${Press}></div></section>`;
}

/** @param {any} props */
function Row({ line, through, on, pick }) {
  const says = [...wrenchSays(line), markSays(line, through)].filter(Boolean).join(' · ');
  return html`<${Press} class="row" aria-pressed=${String(on)} onPress=${pick}><${Icon} name="i-wrench" />
    <span class="says"><b>${line.name}</b><span class="soft">${says}</span></span></${Press}>`;
}
