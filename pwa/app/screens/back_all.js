/** Parts that were sent out together are back: which of them, what was done, one keep. */
import { away, out } from '../../views/away.js';
import { today } from '../dates.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { TextField } from '../forms_fields.js';
import { Act, Dock, html, Key, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { useKeep } from '../run/keeping.js';
import { batchesOf } from '../shelf/batches.js';
import { backEntries } from '../shelf/entries.js';
import { outSays } from '../shelf/says.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';
import { capital } from '../words.js';

const HOME = { to: '/away', says: t('form.back') };

/** Nothing said; all of them are back but these. @type {{note: string, still: string[]}} */
const NOTHING = { note: '', still: [] };

/** @param {any} props */
export function screen({ params, store, back }) {
  const { workshop } = useSlice(store, (s) => s.awaySlice(), []);
  const [draft, change, forget] = useDraft(store, `back-all:${params.of}`, NOTHING);
  const { keep, trouble } = useKeep(store);
  if (!workshop || !draft)
    return html`<${Page} title=${t('away.title')} back=${HOME} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const box = batchesOf(away(workshop, today()).out).find((lines) =>
    lines.some(({ id }) => id === params.of),
  );
  const title = t('back.all.title', { n: box?.length ?? 0 });
  if (!box)
    return html`<${Page} title=${t('away.title')} back=${HOME}><div class="left"><h1 tabindex="-1" class="gone">${t('away.title')}</h1><${Missing} says=${t('back.all.not-out')} then=${t('back.all.not-out.then')} /><${Key} href="/away" icon="i-shop" label=${t('away.title')} /></div></${Page}>`;
  const came = box.filter(({ part }) => !draft.still.includes(part));
  const act = async () => {
    const entries = came.flatMap(({ part }) =>
      backEntries(workshop, part, out(workshop.subject(part)), { note: draft.note, readings: [] }),
    );
    if (!(await keep(entries))) return false;
    await forget();
    feedback('kept');
    say(t('back.all.kept', { n: came.length }));
    back(HOME.to);
    return true;
  };
  const n = came.length;
  return html`<${Page} title=${title} back=${HOME} quiet><div class="left form"><div class="id"><h1 tabindex="-1">${title}</h1></div>
    <p>${capital(outSays(box[0]))}</p><${Which} ...${{ box, draft, change }} />
    <${TextField} id="back-note" area label=${t('back.note')} value=${draft.note} onChange=${(/** @type {string} */ note) => change({ note })} hint=${t('form.optional')} />
    <${Dock}><${Act} confirm disabled=${n === 0} onPress=${act} label=${t('back.all.act', { n })} second=${n ? t('back.all.then') : t('back.all.wants')} /></${Dock}></div>${trouble}</${Page}>`;
}

/** Each of them is back, or is said to be there still. @param {any} props */
function Which({ box, draft, change }) {
  const turn = (/** @type {string} */ part) =>
    change((/** @type {any} */ { still }) => ({
      still: still.includes(part)
        ? still.filter((/** @type {string} */ one) => one !== part)
        : [...still, part],
    }));
  return html`<fieldset><legend>${t('back.all.which')}</legend><div class="chips">${box.map(
    (/** @type {any} */ { part, name }) =>
      html`<${Key} key=${part} className="press" pressed=${!draft.still.includes(part)} label=${name || t('record.nameless')} onPress=${() => turn(part)} />`,
  )}</div></fieldset>`;
}
