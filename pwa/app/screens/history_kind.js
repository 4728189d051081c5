/** The history of a kind: verdicts, the share thrown out, how many to bring, readings over time. */
import { useMemo, useState } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { linesOfKind, MOST, ofKindWithoutSizes } from '../../views/history.js';
import { text } from '../../views/plain.js';
import { useDraft } from '../draft.js';
import { html, Key, Page, useSlice } from '../frame/index.js';
import { useSizes } from '../history/in_slices.js';
import { Lines, MORE } from '../history/lines.js';
import { Head, NotHere, Reading } from '../history/many.js';
import { Bring, FRESH, Groups, Reasons } from '../history/share.js';
import { Sizes } from '../history/sizes.js';
import { comesBack, useLater } from '../later.js';
import { t } from '../texts/index.js';

/** So many pieces are counted before the first frame. */
const AT_ONCE = 40;

/**
 * What is told of a kind: first its title, then counts and lines, last its sizes.
 * @param {any} store @param {string} id @param {number} most lines
 */
function useTold(store, id, most) {
  const { workshop } = useSlice(
    store,
    (s) => s.kindSlice(id),
    [id],
    (s) => s.known('kind', id),
  );
  const { workshop: kinds } = useSlice(store, (s) => s.allOf('kind'), []);
  const later = useLater(kinds);
  // With very many pieces the heading is painted before they are counted.
  const counts = workshop && (later || workshop.linked(id, 'of-kind').length <= AT_ONCE);
  const kind = useMemo(
    () => (counts ? ofKindWithoutSizes(workshop, id) : null),
    [workshop, counts],
  );
  // Older lines come alone: what was read is not judged anew for them.
  const told = useMemo(
    () => (most > MOST && workshop ? linesOfKind(workshop, id, most) : kind),
    [workshop, kind, most],
  );
  const measures = useSizes(workshop, id);
  const subject = (workshop ?? kinds)?.subject(id);
  // Who comes back to a place far down waits until all of it is there.
  const all = Boolean(kind && told && (measures || !comesBack()));
  return { title: subject && titleOf(subject), kind, told, measures, all };
}

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const [draft, change] = useDraft(store, `history:${params.id}`, FRESH);
  const [most, setMost] = useState(MOST);
  const { title, kind, told, measures, all } = useTold(store, params.id, most);
  const back = { to: `/kind/${params.id}`, says: t('form.back') };
  if (!kind || !all || !draft) return html`<${Reading} back=${back} title=${title} />`;
  if (kind.heading !== 'kind' || kind.hidden) return html`<${NotHere} back=${back} />`;
  return html`<${Page} title=${title} back=${back} demo=${kind.invented} className="list"><div class="left">
    <${Head} title=${title} counts=${kind} empty="history.empty.kind" />
    <div class="pair"><${Key} href=${`/kind/${kind.id}`} icon="i-kind" label=${t('history.kind.record')} /></div>
    ${kind.judged > 0 && html`<${Bring} counts=${kind} draft=${draft} change=${change} />`}</div>
    ${kind.pieces > 0 && html`<div class="right" aria-busy=${String(!measures)}>${measures && html`<${Found} ...${{ kind, told, measures }} older=${() => setMost(most + MORE)} />`}</div>`}</${Page}>`;
}

/** What was found on them: its room is kept until the sizes are told. @param {any} props */
const Found = ({ kind, told, measures, older }) => html`<${Sizes} measures=${measures} many />
  <${Groups} rows=${kind.donors} title=${t('history.donors')} to="donor" icon="i-apart" none=${t('history.no-donor')} /><${Reasons} reasons=${kind.reasons} />
  ${kind.of > 0 && html`<${Lines} ...${told} older=${older} />`}`;

/** @param {any} subject */
const titleOf = (subject) => {
  const name = text(value(subject, 'plural')) ?? text(value(subject, 'name'));
  return t('history.title', { name: name ?? t('record.nameless') });
};
