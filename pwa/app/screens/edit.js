/** What a part, holder, donor or build is called and said to be, changed field by field. */

import { lost } from '../../views/things.js';
import { useDraft } from '../draft.js';
import { changes, FORMS, shownFields } from '../edit/fields.js';
import { Field } from '../edit/inputs.js';
import { feedback } from '../feedback.js';
import { Before } from '../frame/before.js';
import { Act, Dock, html, Key, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { startOf } from '../kinds/ready.js';
import { named } from '../new_thing/named.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

/** @type {Record<string, any>} */
const NOTHING = {};

/** Where its record is; what has none is only found. @param {any} subject */
const homeOf = ({ heading, id }) =>
  heading === 'part' || heading === 'holder' ? `/${heading}/${id}` : '/find';

/** @param {any} props */
export function screen({ params, store, back }) {
  const { workshop } = useSlice(store, (s) => s.partSlice(params.id), [params.id]);
  const { workshop: kinds } = useSlice(store, (s) => s.allOf('kind'), []);
  const { workshop: donors } = useSlice(store, (s) => s.allOf('donor'), []);
  const subject = workshop?.subject(params.id);
  if (!workshop || !kinds || !donors)
    return html`<${Page} title=${t('edit.title')} back=${{ to: '/find', says: t('form.back') }} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  if (!subject || !FORMS[subject.heading]) return html`<${NotHere} />`;
  return html`<${Form} key=${params.id} subject=${subject} lists=${{ kind: named(kinds, 'kind'), donor: named(donors, 'donor') }} store=${store} back=${back} />`;
}

/**
 * What is kept: the description, and the kind where that is new too.
 * @param {any} subject @param {Record<string, any>} fields @param {string} newKind its name
 * @param {{id: string, name: string}[]} kinds those of the workshop
 */
function entriesOf(subject, fields, newKind, kinds) {
  const described = (/** @type {any} */ said) => ({
    heading: subject.heading,
    about: subject.id,
    body: { fields: said },
  });
  if (!newKind) return [described(fields)];
  const kind = freshId();
  const start = startOf(newKind, kinds);
  return [
    { heading: 'kind', about: kind, body: { fields: start } },
    described({ ...fields, kind }),
  ];
}

const NotHere =
  () => html`<${Page} title=${t('here')} back=${{ to: '/find', says: t('form.back') }}><div class="left">
  <h1 tabindex="-1" class="gone">${t('here')}</h1><${Missing} says=${t('here.part')} /></div></${Page}>`;

/** @param {any} props */
function Form({ subject, lists, store, back }) {
  // Only what was typed lies in the draft: what another device changed meanwhile is not overwritten.
  const [draft, change, forget] = useDraft(store, `edit:${subject.id}`, NOTHING);
  const { keep, trouble } = useKeep(store);
  const home = homeOf(subject);
  const before = shownFields(subject);
  const title = t(`edit.title.${subject.heading}`);
  if (!draft)
    return html`<${Page} title=${title} back=${{ to: home, says: t('form.back') }} quiet><div class="left"><${Wait} /></div></${Page}>`;
  /** @type {Record<string, any>} */
  const shown = { ...before, ...draft };
  const fields = changes(subject, draft);
  const name = String(shown.name ?? '').trim();
  const act = async () => {
    if (!(await keep(entriesOf(subject, fields, shown.newKind, lists.kind)))) return false;
    await forget();
    feedback('kept');
    say(t('form.kept', { name }));
    back(home);
    return true;
  };
  const empty = Object.keys(fields).length === 0 && !shown.newKind;
  const why = name ? (empty ? t('edit.nothing') : undefined) : t('form.wants-name');
  return html`<${Page} title=${title} back=${{ to: home, says: t('form.back') }} quiet><div class="left form">
    <h1 tabindex="-1">${title}</h1>
    ${FORMS[subject.heading]?.map(
      (
        field,
      ) => html`<${Field} key=${field} heading=${subject.heading} name=${field} value=${shown[field]} fresh=${shown.newKind} lists=${lists} called=${before.name ?? ''}
      onChange=${(/** @type {any} */ to, /** @type {string} */ fresh) => change({ [field]: to, ...(field === 'kind' ? { newKind: fresh } : {}) })} />`,
    )}
    ${shown.kind && html`<${Key} href=${`/kind/${shown.kind}`} icon="i-type" label=${t('edit.kind')} />`}
    <${Before} heading=${subject.heading} lost=${lost(subject)} />
    <${Dock}><${Act} confirm disabled=${empty || !name} onPress=${act} label=${t('form.keep')} second=${why} /></${Dock}>
  </div>${trouble}</${Page}>`;
}
