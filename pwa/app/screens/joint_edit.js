/** A joint described at the desk or the bench: how its fasteners stand, what it clamps, its programme. */

import { useEffect, useState } from 'preact/hooks';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, TextField } from '../forms_fields.js';
import { Act, Dock, html, Key, Page, say, useSlice, Wait } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { Adapter } from '../joint_form/adapter.js';
import { Bolt } from '../joint_form/bolt.js';
import { Lubricant } from '../joint_form/lubricant.js';
import { emptyForm, fieldsOf, formOf, wants } from '../joint_form/model.js';
import { Parts } from '../joint_form/parts.js';
import { Passes } from '../joint_form/passes.js';
import { Shape } from '../joint_form/shape.js';
import { Tool, targetOf } from '../joint_form/tool.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

const WORDS = ['caution', 'warning', 'danger', 'notice'];

/** @param {any} props */
export function screen({ params, store, go, back }) {
  const fresh = params.id === 'new';
  const joint = useSlice(
    store,
    (s) => (fresh ? Promise.resolve({ subject: () => null }) : s.jointSlice(params.id)),
    [params.id],
  );
  const wrenches = useSlice(store, (s) => s.allOf('wrench'), []);
  const rows = useRows(store);
  const title = t(fresh ? 'joint.title.new' : 'joint.title');
  if (!joint.workshop || !wrenches.workshop)
    return html`<${Page} title=${title} quiet ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const subject = fresh ? null : joint.workshop.subject(params.id);
  return html`<${Edit} ...${{ params, store, go, back, fresh, title, subject, rows }} wrenches=${wrenches.workshop} />`;
}

/** @param {any} store */
function useRows(store) {
  const [rows, setRows] = useState(/** @type {any[]} */ ([]));
  useEffect(() => {
    Promise.resolve(store.findRows()).then((found) =>
      setRows(Array.isArray(found) ? found : (found.rows ?? [])),
    );
  }, []);
  return rows;
}

/** @param {any} props */
function Edit({ params, store, go, back, fresh, title, subject, rows, wrenches }) {
  const start = subject ? formOf(subject) : emptyForm(params.part);
  const [form, change, forget] = useDraft(store, `joint:${params.id}`, start);
  const { keep, trouble } = useKeep(store);
  useEffect(() => {
    if (form && params.source) document.getElementById('source')?.focus();
  }, [Boolean(form)]);
  const home = fresh ? '/' : `/joint/${params.id}`;
  if (!form)
    return html`<${Page} title=${title} quiet ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const want = wants(form);
  const target = targetOf(form);
  const act = async () => {
    const id = fresh ? freshId() : params.id;
    if (!(await keep([{ heading: 'joint', about: id, body: { fields: fieldsOf(form, subject) } }])))
      return false;
    await forget();
    feedback('kept');
    say(t('form.kept', { name: form.name }));
    if (fresh) go(`/joint/${id}`, { replace: true });
    else back(home);
    return true;
  };
  return html`<${Page} title=${title} back=${{ to: home, says: t('form.back') }} demo=${form.invented} quiet className="desk">
    <div class="left form"><h1 tabindex="-1">${title}</h1>
      <${Names} form=${form} change=${change} /><${Bolt} form=${form} change=${change} /><${Shape} form=${form} change=${change} />
      <${Dock}><${Act} confirm disabled=${Boolean(want)} onPress=${act} label=${t('joint.keep')} second=${want ? t(want.key, want.facts) : undefined} /></${Dock}></div>
    <div class="right form"><${Passes} form=${form} change=${change} /><${Programme} form=${form} change=${change} />
      <${Parts} form=${form} change=${change} rows=${rows} /><${Tool} form=${form} change=${change} workshop=${wrenches} target=${target} />
      <${Adapter} form=${form} change=${change} target=${target} /></div>
    ${trouble}</${Page}>`;
}

/** @param {any} props */
function Names({ form, change }) {
  const field = (
    /** @type {string} */ name,
    /** @type {string} */ label,
    /** @type {string} */ hint = '',
  ) =>
    html`<${TextField} id=${name} label=${label} value=${form[name]} hint=${hint} onChange=${(/** @type {string} */ text) => change({ [name]: text })} />`;
  return html`${field('name', t('form.name'), t('joint.name.hint'))}
    <div class="in-row">${field('noun', t('joint.noun'))}${field('plural', t('joint.plural'))}</div>`;
}

/** @param {any} props */
function Programme({ form, change }) {
  const set = (/** @type {string} */ name) => (/** @type {string} */ text) =>
    change({ [name]: text });
  const cautions = form.cautions;
  const put = (/** @type {number} */ at, /** @type {any} */ part) =>
    change({
      cautions: cautions.map((/** @type {any} */ c, /** @type {number} */ i) =>
        i === at ? { ...c, ...part } : c,
      ),
    });
  return html`<section class="stack">
    <${Lubricant} form=${form} change=${change} />
    <${TextField} id="source" label=${t('joint.source')} value=${form.source} onChange=${set('source')} hint=${form.source.trim() ? '' : t('joint.source.none')} />
    <${TextField} id="retorque" label=${t('joint.retorque')} value=${form.retorque} onChange=${set('retorque')} hint=${t('form.optional')} />
    <h2>${t('joint.cautions')}</h2>
    ${cautions.map(
      (
        /** @type {any} */ c,
        /** @type {number} */ at,
      ) => html`<div class="sheet pass-row" key=${at}>
      <${Chips} label=${t('joint.caution.word')} value=${c.word} onChange=${(/** @type {string} */ word) => put(at, { word })} words=${WORDS.map((word) => ({ value: word, says: t(`signal.${word}`) }))} />
      <${TextField} area id=${`caution-${at}`} label=${t('joint.caution.says')} value=${c.says} onChange=${(/** @type {string} */ says) => put(at, { says })} />
      <${Key} label=${t('form.remove')} onPress=${() => change({ cautions: cautions.filter((/** @type {any} */ _, /** @type {number} */ i) => i !== at) })} /></div>`,
    )}
    <${Key} label=${t('joint.caution.add')} onPress=${() => change({ cautions: [...cautions, { word: 'caution', says: '' }] })} /></section>`;
}
