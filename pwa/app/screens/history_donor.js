/** The history of a donor: verdicts on all that came from it, by kind, and the last lines. */
import { useMemo, useState } from 'preact/hooks';
import { MOST, ofDonor } from '../../views/history.js';
import { html, Key, Page, useSlice } from '../frame/index.js';
import { Lines, MORE } from '../history/lines.js';
import { Head, NotHere, Reading } from '../history/many.js';
import { Groups, Reasons } from '../history/share.js';
import { t } from '../texts/index.js';

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const { workshop } = useSlice(
    store,
    (s) => s.donorSlice(params.id),
    [params.id],
    (s) => s.known('donor', params.id),
  );
  const [most, setMost] = useState(MOST);
  const donor = useMemo(() => workshop && ofDonor(workshop, params.id, most), [workshop, most]);
  const back = { to: `/donor/${params.id}`, says: t('form.back') };
  if (!donor) return html`<${Reading} back=${back} />`;
  if (donor.heading !== 'donor' || donor.hidden) return html`<${NotHere} back=${back} />`;
  const title = t('history.title', { name: donor.name ?? t('record.nameless') });
  return html`<${Page} title=${title} back=${back} demo=${donor.invented} className="list"><div class="left">
    <${Head} title=${title} counts=${donor} empty="history.empty.donor" />
    <div class="pair"><${Key} href=${`/donor/${donor.id}`} icon="i-apart" label=${t('history.record')} /></div></div>
    ${
      donor.pieces > 0 &&
      html`<div class="right"><${Groups} rows=${donor.kinds} title=${t('history.kinds')} to="kind" icon="i-kind" none=${t('history.no-kind')} /><${Reasons} reasons=${donor.reasons} />
    ${donor.of > 0 && html`<${Lines} lines=${donor.lines} of=${donor.of} older=${() => setMost(most + MORE)} />`}</div>`
    }</${Page}>`;
}
