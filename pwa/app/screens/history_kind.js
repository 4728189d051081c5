/** The history of a kind: verdicts, the share thrown out, how many to bring, readings over time. */
import { useMemo, useState } from 'preact/hooks';
import { linesOfKind, MOST, ofKind } from '../../views/history.js';
import { useDraft } from '../draft.js';
import { html, Key, Page, useSlice } from '../frame/index.js';
import { Lines, MORE } from '../history/lines.js';
import { Head, NotHere, Reading } from '../history/many.js';
import { Bring, FRESH, Groups, Reasons } from '../history/share.js';
import { Sizes } from '../history/sizes.js';
import { t } from '../texts/index.js';

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { workshop } = useSlice(
    store,
    (s) => s.kindSlice(params.id),
    [params.id],
    (s) => s.known('kind', params.id),
  );
  const [draft, change] = useDraft(store, `history:${params.id}`, FRESH);
  const [most, setMost] = useState(MOST);
  const kind = useMemo(() => workshop && ofKind(workshop, params.id), [workshop]);
  // Older lines come alone: what was read is not judged anew for them.
  const told = useMemo(() => workshop && linesOfKind(workshop, params.id, most), [workshop, most]);
  const back = { to: `/kind/${params.id}`, says: t('form.back') };
  if (!kind || !told || !draft) return html`<${Reading} back=${back} />`;
  if (kind.heading !== 'kind' || kind.hidden) return html`<${NotHere} back=${back} />`;
  const title = t('history.title', { name: kind.plural ?? kind.name ?? t('record.nameless') });
  return html`<${Page} title=${title} back=${back} demo=${kind.invented} className="list"><div class="left">
    <${Head} title=${title} counts=${kind} empty="history.empty.kind" />
    <div class="pair"><${Key} href=${`/kind/${kind.id}`} icon="i-kind" label=${t('history.kind.record')} /></div>
    ${kind.judged > 0 && html`<${Bring} counts=${kind} draft=${draft} change=${change} />`}</div>
    ${
      kind.pieces > 0 &&
      html`<div class="right"><${Sizes} measures=${kind.measures} many />
    <${Groups} rows=${kind.donors} title=${t('history.donors')} to="donor" icon="i-apart" none=${t('history.no-donor')} /><${Reasons} reasons=${kind.reasons} />
    ${kind.of > 0 && html`<${Lines} ...${told} older=${() => setMost(most + MORE)} />`}</div>`
    }</${Page}>`;
}
