/** One field of a description as it is typed or chosen. */

import { Chips, Count, TextField, YesNo } from '../forms_fields.js';
import { fieldWords } from '../frame/before.js';
import { html } from '../frame/index.js';
import { readyNames } from '../kinds/ready.js';
import { Choice } from '../new_thing/choice.js';
import { t } from '../texts/index.js';

const HOLDERS = ['bag', 'bin', 'tray', 'box', 'shelf', 'other'];

/**
 * @param {{heading: string, name: string, value: any, onChange: (to: any, fresh?: string) => void,
 *   fresh?: string, called?: string, lists?: Record<string, {id: string, name: string}[]>}} props
 *   fresh: the name of a new kind; called: what the thing is called; lists: what there is to choose from
 */
export function Field({ heading, name, ...rest }) {
  const Input = inputs[name] ?? Words;
  return html`<${Input} name=${name} label=${fieldWords(heading, name)} ...${rest} />`;
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

/** A kind or a donor of this workshop; a kind may be new, and a ready one brings its criteria. @param {any} props */
function OneOf({ name, label, value, fresh, called, lists, onChange }) {
  const list = lists[name] ?? [];
  const isKind = name === 'kind';
  return html`<${Choice} id=${name} label=${label} none=${t('new.donor.none')} more=${t('edit.more')} list=${list} heading=${name}
    value=${value ?? ''} fresh=${isKind ? fresh : ''} ready=${isKind ? readyNames(list) : []} called=${isKind ? called : ''} mayAdd=${isKind}
    onChange=${(/** @type {string} */ id, /** @type {string} */ added) => onChange(id || null, added)} />`;
}

/** @type {Record<string, any>} */
const inputs = { quantity: HowMany, single_use: Once, form: Form, kind: OneOf, donor: OneOf };
