/** One piece under the lamp: what to look at, the verdict, and why. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { standing, value } from '../../log/workshop.js';
import { html, Icon, Key, Sheet, Shots } from '../frame/index.js';
import { Press } from '../press.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { t } from '../texts/index.js';
import { Deck } from './deck.js';
import { FRESH, judged, looked } from './judging.js';
import { Measures, Measuring } from './measures.js';
import { Pieces } from './pieces.js';
import { inHand, Plate } from './plate.js';
import { against } from './says.js';
import { TakePhoto } from './take_photo.js';

/** @param {any} props */
export function Piece(props) {
  const { bag, piece, draft, change, leave, workshop, name, kind, tools } = props;
  const [noting, setNoting] = useState(false);
  useNextUp(piece.id);
  const title = bag.pieces.length > 1 ? titleOf(piece, name, kind) : name;
  const measures = kind?.measures ?? [];
  const measure = measures.find((/** @type {any} */ one) => one.id === draft.measuring);
  const asked = { criteria: bag.criteria, measures, tools: tools.workshop };
  const read = (/** @type {any} */ part) =>
    change((/** @type {any} */ was) =>
      judged(was, asked, typeof part === 'function' ? part(was) : part),
    );
  if (measure)
    return html`<${Measuring} measure=${measure} draft=${draft} change=${read} name=${title} kind=${kind} tools=${tools} />`;
  const plate = !draft.photos.length;
  const shown = inHand(kind, bag.criteria, draft.looks);
  return html`<${RunFrame} title=${title} leave=${leave} className="narrow inspect">
    <${RunTitle} name=${title} right=${donorOf(workshop, piece.id)} />
    <${Pieces} pieces=${bag.pieces} now=${piece.id} />
    ${plate && html`<${Plate} kind=${kind} criteria=${bag.criteria} shown=${shown} />`}
    <${Had} workshop=${workshop} part=${piece.id} />
    <${Looks} criteria=${bag.criteria} shown=${plate && bag.criteria.length > 1 ? shown : null} draft=${draft} change=${change} asked=${asked} />
    <${Measures} measures=${measures} draft=${draft} change=${change} read=${read} tools=${tools} />
    <${Shots} photos=${draft.photos} about=${piece.id} />
    <${Extras} ...${props} note=${() => setNoting(true)} />
    <${Deck} ...${props} held=${against(asked, draft)} />
    ${noting && html`<${NoteSheet} name=${name} draft=${draft} change=${change} close=${() => setNoting(false)} />`}
  </${RunFrame}>`;
}

/** The next piece is read from its top: focus and scroll go there; what stays the same is not drawn anew. @param {string} id */
function useNextUp(id) {
  const shown = useRef(id);
  useEffect(() => {
    if (shown.current === id) return;
    shown.current = id;
    const heading = /** @type {HTMLElement | null} */ (document.querySelector('h1[tabindex]'));
    // On a phone the room above the verdicts scrolls, on a desk the page.
    for (let at = heading?.parentElement; at; at = at.parentElement) at.scrollTop = 0;
    heading?.focus({ preventScroll: true });
  }, [id]);
}

/** @param {any} piece @param {string} name @param {any} kind */
function titleOf(piece, name, kind) {
  return t('inspect.title.of', { name: kind?.name ?? name, number: piece.number, of: piece.of });
}

/** @param {any} workshop @param {string} part */
const donorOf = (workshop, part) =>
  value(workshop.subject(value(workshop.subject(part), 'donor') ?? ''), 'name');

/** What stands already; a new verdict settles it. @param {any} props */
function Had({ workshop, part }) {
  const words = standing(workshop.subject(part), 'verdict').map((fact) =>
    [t(`inspect.word.${fact.body.verdict}`), fact.body.reason].filter(Boolean).join(', '),
  );
  if (!words.length) return null;
  const says =
    words.length > 1
      ? t('inspect.had.ask', { words: words.join(', ') })
      : t('inspect.had', { word: words[0] });
  return html`<p class="tell">${says}</p>`;
}

/** @param {any} props */
function Looks({ criteria, shown, draft, change, asked }) {
  const answer = (/** @type {any} */ one, /** @type {boolean} */ good) =>
    change((/** @type {any} */ was) => looked(was, asked, one.id, good));
  return html`<ul class="looks">${criteria.map(
    (/** @type {any} */ one) => html`<li key=${one.id} class=${one === shown ? 'shown' : ''}>
    <span><b>${one.asks}</b>${one.hint && html`<span class="soft">${one.hint}</span>`}</span>
    <div class="yn" role="group" aria-label=${one.asks}>${[true, false].map(
      (
        good,
      ) => html`<${Press} key=${good} class="press" aria-pressed=${String(draft.looks[one.id] === good)}
        onPress=${() => answer(one, good)}>${t(good ? 'inspect.yes' : 'inspect.no')}</${Press}>`,
    )}</div></li>`,
  )}</ul>`;
}

/** @param {any} props */
function Extras({ bag, piece, draft, change, store, note, name }) {
  const at = bag.pieces.findIndex((/** @type {any} */ one) => one.id === piece.id);
  const before = at > 0 ? bag.pieces[at - 1] : null;
  return html`<div class=${`extras ${before ? 'three' : ''}`}>
    ${before && html`<${Press} class="press" aria-label=${t('inspect.back-one.spoken')} onPress=${() => change({ ...FRESH, piece: before.id })}><${Icon} name="i-back" /><span class="fig">${before.number}</span></${Press}>`}
    <${Press} class="press" aria-pressed=${String(Boolean(draft.note.trim()))} onPress=${note}>${t(draft.note.trim() ? 'inspect.note.has' : 'inspect.note')}</${Press}>
    <${TakePhoto} key=${piece.id} store=${store} name=${name} taken=${(/** @type {string} */ sha) => change({ photos: [...draft.photos, { photo: sha }] })} /></div>`;
}

/** @param {any} props */
function NoteSheet({ name, draft, change, close }) {
  return html`<${Sheet} title=${t('inspect.note.title', { name })} onClose=${close}>
    <label class="field"><span>${t('inspect.note')}</span><textarea id="note" value=${draft.note}
      onInput=${(/** @type {any} */ event) => change({ note: event.target.value })}></textarea></label>
    <div class="stack"><${Key} label=${t('inspect.note.keep')} onPress=${close} /></div></${Sheet}>`;
}
