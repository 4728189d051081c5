/** The passes of a joint in its form: how, and the value of each group. */

import { TORQUE_WORDS } from '../../trade/units.js';
import { Chips, NumberField, TextField } from '../forms_fields.js';
import { html, Key } from '../frame/index.js';
import { t } from '../texts/index.js';
import { newPass, newValue } from './model.js';
import { Plausible } from './plausible.js';

const HOWS = ['hand', 'torque', 'angle', 'back-off'];

/** @param {{form: any, change: (part: any) => void}} props */
export function Passes({ form, change }) {
  const set = (/** @type {number} */ at, /** @type {any} */ pass) =>
    change({
      passes: form.passes.map((/** @type {any} */ p, /** @type {number} */ i) =>
        i === at ? pass : p,
      ),
    });
  const remove = (/** @type {number} */ at) =>
    change({
      passes: form.passes.filter((/** @type {any} */ _, /** @type {number} */ i) => i !== at),
    });
  return html`<section class="stack"><h2>${t('joint.passes')}</h2>
    ${form.passes.map(
      (
        /** @type {any} */ pass,
        /** @type {number} */ at,
      ) => html`<${PassRow} key=${pass.id} form=${form} pass=${pass} at=${at}
      set=${(/** @type {any} */ next) => set(at, next)} remove=${form.passes.length > 1 ? () => remove(at) : null} />`,
    )}
    <${Key} label=${t('joint.pass.add')} onPress=${() => change({ passes: [...form.passes, newPass('torque', form.passes)] })} />
    <${Groups} form=${form} change=${change} /></section>`;
}

/** @param {any} props */
function PassRow({ form, pass, at, set, remove }) {
  const followed = form.passes.slice(at + 1).some((/** @type {any} */ p) => p.values.length > 0);
  const how = (/** @type {string} */ word) => set({ ...newPass(word, [pass]), id: pass.id });
  const values = pass.values;
  const put = (/** @type {number} */ i, /** @type {any} */ part) =>
    set({
      ...pass,
      values: values.map((/** @type {any} */ v, /** @type {number} */ k) =>
        k === i ? { ...v, ...part } : v,
      ),
    });
  return html`<div class="sheet pass-row"><header><h3>${t('joint.pass', { n: at + 1 })}</h3>
      ${remove && html`<${Key} className="small-press press" label=${t('form.remove')} onPress=${remove} />`}</header>
    <${Chips} label=${t('joint.pass.how')} value=${pass.how} onChange=${how} words=${HOWS.map((word) => ({ value: word, says: t(`joint.pass.${word}`) }))} />
    ${values.map(
      (
        /** @type {any} */ v,
        /** @type {number} */ i,
      ) => html`<${ValueRow} key=${i} id=${`${pass.id}-${i}`} value=${v}
      grouped=${values.length > 1} form=${form} followed=${followed} units=${pass.how === 'angle' ? ['°'] : TORQUE_WORDS} put=${(/** @type {any} */ part) => put(i, part)} />`,
    )}
    ${values.length > 0 && html`<${Key} label=${t('joint.pass.group.add')} onPress=${() => set({ ...pass, values: [...values, newValue(values[0].unit)] })} />`}</div>`;
}

/** @param {any} props */
function ValueRow({ id, form, followed, value, grouped, units, put }) {
  return html`<div class="stack">
    ${grouped && html`<${TextField} id=${`${id}-group`} label=${t('joint.pass.group')} value=${value.group} onChange=${(/** @type {string} */ group) => put({ group })} />`}
    <${NumberField} id=${`${id}-value`} label=${t('joint.pass.value')} value=${value.value} onChange=${(/** @type {string} */ text) => put({ value: text })} />
    <${Chips} label=${t('joint.pass.unit')} value=${value.unit} onChange=${(/** @type {string} */ unit) => put({ unit })} words=${units.map((/** @type {string} */ unit) => ({ value: unit, says: unit }))} />
    ${value.unit !== '°' && html`<${Plausible} form=${form} value=${value} followed=${followed} />`}
  </div>`;
}

/** Which fasteners belong to which group, once a pass has several values. @param {any} props */
function Groups({ form, change }) {
  const names = [
    ...new Set(
      form.passes.flatMap((/** @type {any} */ p) =>
        p.values.map((/** @type {any} */ v) => v.group.trim()),
      ),
    ),
  ].filter(Boolean);
  if (!names.length) return null;
  return html`<fieldset><legend>${t('joint.groups', { noun: form.noun || t('noun.one') })}</legend>${names.map(
    (
      /** @type {any} */ name,
    ) => html`<${TextField} key=${name} id=${`group-${name}`} label=${t('joint.groups.hint', { group: name })}
      value=${form.groups[name] ?? ''} onChange=${(/** @type {string} */ text) => change({ groups: { ...form.groups, [name]: text } })} />`,
  )}</fieldset>`;
}
