/** Inspection, quick: looks, verdict in two taps, reason, note, photo; then the next piece of the bag. */

import { useMemo } from 'preact/hooks';
import { value } from '../../log/workshop.js';
import { nextPiece } from '../../views/next_piece.js';
import { examples } from '../../views/pictures.js';
import { quantity } from '../../views/things.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Act, html, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { useTools } from '../inspect/instrument.js';
import { entriesOf, FRESH } from '../inspect/judging.js';
import { Piece } from '../inspect/piece.js';
import { Pieces } from '../inspect/pieces.js';
import { measuresOf } from '../inspect/readings.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

/** @param {any} props */
export function screen({ params, store, back }) {
  const { id, kind } = params;
  const { workshop } = useSlice(store, readOf(id), [id], knownOf(id));
  const [draft, change, forget] = useDraft(store, `inspect:${id}`, FRESH);
  const tools = useTools(store);
  const bag = useMemo(
    () => workshop && nextPiece(workshop, id, null, kind ?? null),
    [workshop, id, kind],
  );
  const { keep, trouble } = useKeep(store);
  const leave = () => back(`/part/${id}`);
  if (!workshop || !draft || !tools) return html`<main class="run narrow"><${Wait} /></main>`;
  const piece = pieceOf(bag, id, draft.piece);
  if (!piece) return html`<${AllDone} bag=${bag} workshop=${workshop} leave=${leave} />`;
  const next = bag.pieces.length > 1 ? nextPiece(workshop, id, piece.id, kind ?? null).piece : null;
  const told = kindOf(workshop, piece.id, bag);
  const facts = {
    bag: told ? { ...bag, criteria: told.criteria } : bag,
    piece,
    next: next?.id === piece.id ? null : next,
    workshop,
    draft,
    // What was answered stays with its piece, should another device judge it meanwhile.
    change: (/** @type {any} */ part) =>
      change((/** @type {any} */ was) => ({
        piece: piece.id,
        ...(typeof part === 'function' ? part(was) : part),
      })),
    leave,
    tools,
  };
  const act = async () => {
    if (!(await keep(entriesOf(draft, workshop, piece.id)))) return false;
    feedback('kept');
    say(t('inspect.kept', { name: nameOf(piece), word: t(`inspect.word.${draft.verdict}`) }));
    if (bag.pieces.length < 2) {
      await forget();
      leave();
    } else change({ ...FRESH, piece: facts.next?.id ?? 'none' });
    return true;
  };
  return html`<${Piece} ...${facts} store=${store} act=${act} name=${nameOf(piece)} kind=${told} />${trouble}`;
}

/** A part, or the parts of a holder. @param {string} id @returns {(store: any) => Promise<any>} */
const readOf = (id) => async (store) => {
  const held = await store.holderSlice(id);
  return held.subject(id)?.heading === 'holder' ? held : store.partSlice(id);
};

/** The same, where it has been read already. @param {string} id @returns {(store: any) => any} */
const knownOf = (id) => (store) => {
  const held = store.known('holder', id);
  return held?.subject(id)?.heading === 'holder' ? held : store.known('part', id);
};

/**
 * The piece in the hand: the one this device was at, else the first not judged. A single part may
 * always be looked at again.
 * @param {any} bag
 * @param {string} id
 * @param {string} at
 */
function pieceOf(bag, id, at) {
  const kept = bag.pieces.findIndex((/** @type {any} */ one) => one.id === at);
  if (kept >= 0) return numbered(bag, kept);
  if (at === 'none' && !bag.piece) return null;
  if (bag.piece) return bag.piece;
  const alone = bag.pieces.length === 1 && bag.pieces[0].id === id;
  return alone ? numbered(bag, 0) : null;
}

/** @param {any} bag @param {number} at */
function numbered(bag, at) {
  const one = bag.pieces[at];
  return {
    quantity: null,
    verdict: null,
    ...one,
    number: one.number ?? at + 1,
    of: bag.pieces.length,
  };
}

/** @param {any} piece */
const nameOf = (piece) => piece.name ?? '';

/** What a kind says; the same until it is described otherwise, so that its drawings stay as they are. @type {WeakMap<any, any>} */
const kinds = new WeakMap();

/** @param {any} workshop @param {string} part @param {any} bag */
function kindOf(workshop, part, bag) {
  const kind = workshop.subject(value(workshop.subject(part), 'kind') ?? '');
  if (!kind) return null;
  const told = kinds.get(kind) ?? toldBy(kind, bag.criteria);
  kinds.set(kind, told);
  return told;
}

/** @param {any} kind @param {any[]} asked the questions as the view tells them */
function toldBy(kind, asked) {
  const criteria = value(kind, 'criteria') ?? [];
  const drawings = Object.fromEntries(
    criteria.map((/** @type {any} */ one) => [one.id, one.drawing]),
  );
  return {
    id: kind.id,
    criteria: asked,
    name: value(kind, 'name'),
    drawing: value(kind, 'drawing'),
    drawings,
    examples: examples(kind),
    measures: measuresOf(kind),
  };
}

/** How many have this verdict: a bag entered as one counts all that are in it. @param {any} bag @param {any} workshop @param {string} word */
const countOf = (bag, workshop, word) =>
  bag.pieces
    .filter((/** @type {any} */ one) => one.mark === word)
    .reduce(
      (/** @type {number} */ sum, /** @type {any} */ one) =>
        sum + (quantity(workshop.subject(one.id)) ?? 1),
      0,
    );

/** @param {any} props */
function AllDone({ bag, workshop, leave }) {
  if (!bag.pieces.length) {
    return html`<${Page} title=${t('inspect.nothing')}><div class="left"><h1 tabindex="-1" class="gone">${t('inspect.nothing')}</h1>
      <${Missing} says=${t('inspect.nothing')} then=${t('inspect.nothing.then')} /></div></${Page}>`;
  }
  const words = ['use', 'spare', 'machine', 'scrap'].map((word) => ({
    word,
    n: countOf(bag, workshop, word),
  }));
  return html`<${RunFrame} title=${t('inspect.done')} leave=${leave} className="narrow inspect">
    <${RunTitle} name=${t('inspect.done')} /><${Pieces} pieces=${bag.pieces} now="" />
    <ul class="sheet summary">${words.filter(({ n }) => n).map(({ word, n }) => html`<li class="row plain"><b>${t(`inspect.verdict.${word}`)}</b><span class="fig">${n}</span></li>`)}</ul>
    <${Act} confirm onPress=${leave} label=${t('inspect.done.act')} />
  </${RunFrame}>`;
}
