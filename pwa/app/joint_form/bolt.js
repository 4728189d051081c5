/** The bolt of a joint: its thread as typed and as it was read, and the class marked on its head. */

import { CLASSES, classOf } from '../../trade/strength.js';
import { stressAreaMm2 } from '../../trade/thread.js';
import { parse } from '../../trade/thread_text.js';
import { rounded } from '../../trade/units.js';
import { Chips } from '../forms_fields.js';
import { html, Icon } from '../frame/index.js';
import { t } from '../texts/index.js';
import { local } from '../values.js';

/** @typedef {import('../../trade/thread.js').Thread} Thread */

/**
 * A thread as it is typed: what it means, or why it cannot be read.
 * @param {string} typed
 * @returns {{thread: Thread | null, trouble: string}}
 */
export function threadOf(typed) {
  if (!typed.trim()) return { thread: null, trouble: '' };
  try {
    return { thread: parse(typed), trouble: '' };
  } catch (error) {
    const refused = /** @type {any} */ (error);
    if (!refused.says) throw error;
    return { thread: null, trouble: `${refused.says} ${refused.next}` };
  }
}

/** @param {Thread} thread */
function threadSays(thread) {
  const { designation: name, pitch_mm, threads_per_inch: inch } = thread;
  const area = local(rounded(stressAreaMm2(thread), 1));
  if (inch) return t('joint.thread.read.inch', { name, count: inch, area });
  const pitch = local(rounded(pitch_mm, 3).replace(/0+$/, '').replace(/\.$/, ''));
  return t('joint.thread.read', { name, pitch, area });
}

/** The classes that go with a thread; all of them while it is not known. @param {Thread | null} thread */
function classesFor(thread) {
  if (!thread) return CLASSES;
  const metric = thread.standard === 'metric';
  return CLASSES.filter((name) => name.startsWith('SAE') !== metric);
}

/** @param {string} typed its name in the list, else as it was written */
function classNamed(typed) {
  try {
    return classOf(typed);
  } catch {
    return typed;
  }
}

/** @param {{form: any, change: (part: any) => void}} props */
export function Bolt({ form, change }) {
  const { thread, trouble } = threadOf(form.thread);
  const now = form.strength_class && classNamed(form.strength_class);
  const names = [...new Set([...classesFor(thread), now].filter(Boolean))];
  return html`<${ThreadField} value=${form.thread} onChange=${(/** @type {string} */ text) => change({ thread: text })} thread=${thread} trouble=${trouble} />
    <div class="stack"><${Chips} label=${t('joint.class')} value=${now} onChange=${(/** @type {string} */ word) => change({ strength_class: word })}
      words=${[{ value: '', says: t('joint.class.none') }, ...names.map((name) => ({ value: name, says: name }))]} />
      <p class="hint">${t('joint.class.hint')}</p></div>`;
}

/** @param {{value: string, onChange: (text: string) => void, thread: Thread | null, trouble: string}} props */
function ThreadField({ value, onChange, thread, trouble }) {
  const says = trouble
    ? html`<p class="wrong" id="thread-hint"><${Icon} name="i-caution" />${trouble}</p>`
    : html`<p class=${thread ? 'read-as' : 'hint'} id="thread-hint" role="status">${thread ? threadSays(thread) : t('joint.thread.hint')}</p>`;
  return html`<div class="field"><label for="thread">${t('joint.thread')}</label>
    <input id="thread" type="text" autocomplete="off" autocapitalize="characters" spellcheck=${false} value=${value} aria-describedby="thread-hint"
      onInput=${(/** @type {any} */ event) => onChange(event.target.value)} />${says}</div>`;
}
