/** One field of a description as it is typed or chosen. */

import { value as saidOf } from '../../log/workshop.js';
import { Chips, Count, TextField, YesNo } from '../forms_fields.js';
import { fieldWords } from '../frame/before.js';
import { html, useAnswer } from '../frame/index.js';
import { Choice } from '../new_thing/choice.js';
import { t } from '../texts/index.js';

const HOLDERS = ['bag', 'bin', 'tray', 'box', 'shelf', 'other'];

/** @param {{heading: string, name: string, value: any, onChange: (to: any) => void}} props */
export function Field({ heading, name, value, onChange }) {
  const Input = inputs[name] ?? Words;
  return html`<${Input} name=${name} label=${fieldWords(heading, name)} value=${value} onChange=${onChange} />`;
}

/** @param {any} props */
const Words = ({ name, label, value, onChange }) =>
  html`<${TextField} id=${name} label=${label} value=${value ?? ''} area=${name === 'note'} onChange=${onChange} />`;

/** @param {any} props */
const HowMany = ({ label, value, onChange }) =>
  html`<${Count} label=${label} value=${value ?? 1} most=${9999} onChange=${onChange} />`;

/** @param {any} props */
const Once = ({ label, value, onChange }) =>
  html`<${YesNo} label=${label} texts="once" value=${value} onChange=${onChange} />`;

/** @param {any} props */
const Form = ({ label, value, onChange }) =>
  html`<${Chips} label=${label} value=${value ?? ''} words=${HOLDERS.map((form) => ({ value: form, says: t(`new.form.${form}`) }))} onChange=${onChange} />`;

/** A kind or a donor of this workshop. @param {any} props */
function OneOf({ name, label, value, onChange }) {
  const { value: workshop } = useAnswer((store) => store.allOf(name), [name]);
  const list = (workshop?.all(name) ?? []).map((/** @type {any} */ subject) => ({
    id: subject.id,
    name: saidOf(subject, 'name') ?? '',
  }));
  return html`<${Choice} id=${name} label=${label} none=${t('new.donor.none')} more=${t('edit.more')} list=${list} heading=${name}
    value=${value ?? ''} onChange=${(/** @type {string} */ id) => onChange(id || null)} />`;
}

/** @type {Record<string, any>} */
const inputs = { quantity: HowMany, single_use: Once, form: Form, kind: OneOf, donor: OneOf };
