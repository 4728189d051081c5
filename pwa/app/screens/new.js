/** What a blank label will mark: a part or a holder, in five taps and the name, kept in one go. */

import { code as codeView } from '../../views/code.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Chips, Count, TextField } from '../forms_fields.js';
import { pathOf } from '../frame/code_found.js';
import {
  Act,
  Code,
  codeGroups,
  Dock,
  html,
  Key,
  Missing,
  Page,
  say,
  useSlice,
  Wait,
} from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { readyNames } from '../kinds/ready.js';
import { Choice } from '../new_thing/choice.js';
import { EMPTY, entriesOf } from '../new_thing/entries.js';
import { named } from '../new_thing/named.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

const FORMS = ['bag', 'bin', 'tray', 'box', 'shelf', 'other'];
const BACK = { to: '/scan', says: t('form.back') };

/** @param {any} props */
export function screen({ params, store, go }) {
  const label = useSlice(store, (s) => s.codeSlice(params.code), [params.code]);
  const kinds = useSlice(store, (s) => s.allOf('kind'), []);
  const donors = useSlice(store, (s) => s.allOf('donor'), []);
  const holders = useSlice(store, (s) => s.allOf('holder'), []);
  const [draft, change, forget] = useDraft(store, `new:${params.code}`, EMPTY);
  const read = [label, kinds, donors, holders].map((slice) => slice.workshop);
  if (!draft || read.some((workshop) => !workshop))
    return html`<${Page} title=${t('new.title')} back=${BACK} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const found = codeView(label.workshop, params.code);
  if (found.says !== 'blank') return html`<${Taken} found=${found} />`;
  const lists = {
    kinds: named(kinds.workshop, 'kind'),
    donors: named(donors.workshop, 'donor'),
    holders: named(holders.workshop, 'holder'),
  };
  return html`<${Form} ...${{ store, go, found, lists, draft, change, forget }} />`;
}

/** @param {any} props */
function Taken({ found }) {
  const [thing] = found.things;
  const says = thing ? t('new.taken', { name: thing.name ?? '' }) : t('new.retired');
  return html`<${Page} title=${says} back=${BACK}><div class="left"><h1 tabindex="-1" class="gone">${says}</h1><${Missing} says=${says} />
    ${thing && html`<${Dock}><${Act} href=${pathOf(thing)} label=${t('new.open', { name: thing.name ?? '' })} /></${Dock}>`}</div></${Page}>`;
}

/** @param {any} props */
function Form({ store, go, found, lists, draft, change, forget }) {
  const { keep, trouble } = useKeep(store);
  const name = draft.name.trim();
  const act = async () => {
    const id = freshId();
    if (!(await keep(entriesOf(draft, found, id, lists.kinds)))) return false;
    await store.setSetting('last-holder', draft.holder || null);
    await forget();
    feedback('kept');
    say(t('form.kept', { name }));
    go(`/${draft.what}/${id}`, { replace: true });
    return true;
  };
  const second = name
    ? t('new.keep.second', { code: codeGroups(found.code) })
    : t('form.wants-name');
  return html`<${Page} title=${t('new.title')} back=${BACK} quiet><div class="left form">
    <div class="id"><h1 tabindex="-1">${t('new.title')}</h1><div class="about"><${Code} code=${found.code} /></div></div>
    <${Chips} label=${t('new.form')} value=${draft.what} onChange=${(/** @type {string} */ what) => change({ what })}
      words=${['part', 'holder'].map((what) => ({ value: what, says: t(`new.${what}`) }))} />
    ${
      draft.what === 'holder'
        ? html`<${Chips} label=${t('new.form')} value=${draft.form} onChange=${(/** @type {string} */ form) => change({ form })}
        words=${FORMS.map((form) => ({ value: form, says: t(`new.form.${form}`) }))} />`
        : html`<${PartFields} draft=${draft} change=${change} lists=${lists} />`
    }
    <${TextField} id="name" label=${t('form.name')} value=${draft.name} onChange=${(/** @type {string} */ text) => change({ name: text, named: true })} />
    <${Choice} id="place" label=${t('new.place')} none=${t('new.place.none')} more=${t('new.place.more')} list=${lists.holders} heading="holder"
      first=${store.setting('last-holder')} value=${draft.holder} onChange=${(/** @type {string} */ holder) => change({ holder })} />
    <${Key} href=${`/bind/${found.code}`} icon="i-part" label=${t('new.bind')} />
    <${Key} href=${`/instrument/new?code=${found.code}`} icon="i-gauge" label=${t('new.instrument')} /><${Key} href=${`/wrench/new?code=${found.code}`} icon="i-wrench" label=${t('new.wrench')} />
    <${Dock}><${Act} confirm disabled=${!name} onPress=${act} label=${t('new.keep')} second=${second} /></${Dock}>
  </div>${trouble}</${Page}>`;
}

/** @param {any} props */
function PartFields({ draft, change, lists }) {
  const kind = (/** @type {string} */ id, /** @type {string} */ fresh) => {
    const known = lists.kinds.find((/** @type {any} */ one) => one.id === id)?.name ?? fresh ?? '';
    change({ kind: id, newKind: fresh ?? '', ...(draft.named ? {} : { name: known }) });
  };
  return html`<${Choice} id="kind" label=${t('new.kind')} none=${t('new.kind.none')} more=${t('new.kind.more')} list=${lists.kinds} ready=${readyNames(lists.kinds)} heading="kind"
      value=${draft.kind} fresh=${draft.newKind} onChange=${kind} mayAdd />
    <${Count} label=${t('new.quantity')} value=${draft.quantity} most=${9999} onChange=${(/** @type {number} */ quantity) => change({ quantity })} />
    <${Choice} id="donor" label=${t('new.donor')} none=${t('new.donor.none')} more=${t('new.kind.more')} list=${lists.donors} heading="donor"
      value=${draft.donor} onChange=${(/** @type {string} */ donor) => change({ donor })} />`;
}
