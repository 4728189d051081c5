/** The history of a part: its readings over time, and every line of what was found. */
import { ofPart } from '../../views/history.js';
import { html, Key, Missing, Page, useSlice, Verdict, Wait } from '../frame/index.js';
import { WholeLines } from '../history/lines.js';
import { Sizes } from '../history/sizes.js';
import { t } from '../texts/index.js';
import '../texts/history.js';

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { workshop } = useSlice(
    store,
    (s) => s.partSlice(params.id),
    [params.id],
    (s) => s.known('part', params.id),
  );
  const back = { to: `/part/${params.id}`, says: t('form.back') };
  if (!workshop)
    return html`<${Page} title=${t('way.history')} back=${back} ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const part = ofPart(workshop, params.id);
  const title = t('history.title', { name: part.name ?? t('record.nameless') });
  if (part.heading !== 'part' || part.hidden)
    return html`<${Page} title=${t('history.gone')} back=${back}><div class="left"><h1 tabindex="-1" class="gone">${t('history.gone')}</h1><${Missing} says=${t('history.gone')} then=${t('history.gone.then')} /></div></${Page}>`;
  return html`<${Page} title=${title} back=${back} demo=${part.invented} className="list"><div class="left">
    <section class="id"><h1 tabindex="-1">${title}</h1><p class="where">${[part.kind?.name, part.donor?.name, part.from].filter(Boolean).join(', ')}</p>
    <div class="about"><${Verdict} verdict=${part.mark === 'look' || part.mark === 'empty' ? null : part.mark} /></div></section>
    <${Ways} part=${part} /></div>
    <div class="right"><${Found} part=${part} /></div></${Page}>`;
}

/** @param {{part: any}} props */
function Ways({ part }) {
  const { id, kind, donor } = part;
  return html`<div class="pair"><${Key} href=${`/part/${id}`} icon="i-part" label=${t('history.part')} />
    ${kind && html`<${Key} href=${`/history/kind/${kind.id}`} icon="i-kind" label=${t('history.kind')} />`}
    ${donor && html`<${Key} href=${`/history/donor/${donor.id}`} icon="i-apart" label=${t('history.donor', { name: donor.name ?? '' })} />`}</div>`;
}

/** @param {{part: any}} props */
function Found({ part }) {
  if (!part.of)
    return html`<${Missing} says=${t('history.none')} then=${t('history.none.then')} /><div class="pair"><${Key} href=${`/inspect/${part.id}`} icon="i-find" label=${t('history.inspect')} /></div>`;
  return html`${part.kind && html`<${Sizes} measures=${part.measures} />`}
    <div class="sect"><h2>${t('history.found')}</h2><span class="soft">${t('history.lines', { n: part.of })}</span></div><${WholeLines} lines=${part.lines} />`;
}
