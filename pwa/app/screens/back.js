/** A part came back from the machine shop: what was done, and on to its inspection. */

import { value } from '../../log/workshop.js';
import { out } from '../../views/away.js';
import { today } from '../dates.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { TextField } from '../forms_fields.js';
import { Act, Dock, html, Key, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { useTools } from '../inspect/instrument.js';
import { Measures, Measuring } from '../inspect/measures.js';
import { measuresOf } from '../inspect/readings.js';
import { useKeep } from '../run/keeping.js';
import { backEntries } from '../shelf/entries.js';
import { outSays } from '../shelf/says.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';
import { capital } from '../words.js';

/** Nothing said, nothing read. @type {{note: string, readings: any[], measuring: string, typed: string, unit: string}} */
const NOTHING = { note: '', readings: [], measuring: '', typed: '', unit: '' };

const HOME = { to: '/away', says: t('form.back') };

/** @param {any} props */
export function screen({ params, store, go }) {
  const { workshop } = useSlice(store, (s) => s.partSlice(params.id), [params.id]);
  const [draft, change, forget] = useDraft(store, `back:${params.id}`, NOTHING);
  const { keep, trouble } = useKeep(store);
  const tools = useTools(store);
  if (!workshop || !draft || !tools)
    return html`<${Page} title=${t('away.back')} back=${HOME} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const part = workshop.subject(params.id);
  const name = value(part, 'name') ?? t('record.nameless');
  const title = t('back.title', { name });
  const sent = out(part, today());
  if (sent.length === 0)
    return html`<${Page} title=${title} back=${HOME}><div class="left"><h1 tabindex="-1" class="gone">${title}</h1><${Missing} says=${t('back.not-out')} then=${t('back.not-out.then')} /><${Key} href=${`/part/${params.id}`} icon="i-part" label=${name} /></div></${Page}>`;
  const act = async () => {
    if (!(await keep(backEntries(workshop, params.id, sent, draft)))) return false;
    await forget();
    feedback('kept');
    say(t('back.kept', { name }));
    go(`/inspect/${params.id}`, { replace: true });
    return true;
  };
  const kind = workshop.subject(value(part, 'kind') ?? '');
  const measures = kind ? measuresOf(kind) : [];
  const measure = measures.find(({ id }) => id === draft.measuring);
  const facts = { draft, change, tools };
  if (measure) return html`<${Measuring} ...${{ measure, name, kind, ...facts }} />`;
  return html`<${Page} title=${title} back=${HOME} quiet><div class="left form"><div class="id"><h1 tabindex="-1">${title}</h1></div>
    ${sent.map((one) => html`<p key=${one.id}>${capital(outSays(one))}</p>`)}
    <${TextField} id="back-note" area label=${t('back.note')} value=${draft.note} onChange=${(/** @type {string} */ note) => change({ note })} />
    ${measures.length > 0 && html`<section class="stack"><h2>${t('back.readings')}</h2><p class="soft">${t('form.optional')}</p><${Measures} measures=${measures} ...${facts} read=${change} /></section>`}
    <${Dock}><${Act} confirm onPress=${act} label=${t('back.act')} second=${t('back.then')} /></${Dock}></div>${trouble}</${Page}>`;
}
