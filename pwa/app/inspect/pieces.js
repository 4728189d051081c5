/** The pieces of a bag as hexagons: judged ones by verdict, the one in the hand with a ring. */

import { useMemo } from 'preact/hooks';
import { hexagon } from '../drawing/heads.js';
import { html } from '../frame/index.js';
import { t } from '../texts/index.js';

/** @param {{pieces: any[], now: string}} props */
export function Pieces({ pieces, now }) {
  if (pieces.length < 2) return null;
  const at = pieces.findIndex((piece) => piece.id === now);
  const done = pieces.filter((piece) => JUDGED.includes(piece.mark) && piece.id !== now);
  const words = JUDGED.map((word) => ({
    word,
    n: done.filter((piece) => piece.mark === word).length,
  })).filter(({ n }) => n);
  const counts = words.map(({ word, n }) =>
    t('inspect.pieces.count', { n, word: t(`inspect.word.${word}`) }),
  );
  const left = pieces.length - done.length - 1;
  const label = [...counts, t('inspect.pieces', { done: done.length, number: at + 1, left })].join(
    ', ',
  );
  return html`<div class="pieces" role="img" aria-label=${label}>${pieces.map(
    (piece) => html`<${Piece} key=${piece.id} mark=${piece.id === now ? 'now' : piece.mark} />`,
  )}</div>`;
}

const JUDGED = ['use', 'spare', 'machine', 'scrap'];

/** Drawn once for each mark, since one verdict changes two of many. @param {{mark: string}} props */
function Piece({ mark }) {
  return useMemo(() => html`<svg viewBox="0 0 20 22">${drawn(mark)}</svg>`, [mark]);
}

/** @param {string} mark */
function drawn(mark) {
  if (mark === 'now') {
    return html`<polygon class="piece-ring" points=${hexagon(10, 12, 10)} /><polygon class="piece-thick" points=${hexagon(10, 12, 6.4)} />`;
  }
  if (mark === 'use') return html`<polygon class="steel" points=${hexagon(10, 12, 8.6)} />`;
  if (mark === 'spare') return html`<polygon class="piece-thick" points=${hexagon(10, 12, 8)} />`;
  if (mark === 'machine')
    return html`<path class="piece-thick" d="M12 7l-2 -2.400H5.700L1.400 12l4.300 7.400H10l2 -2.400M8 12h11M16 9l3 3l-3 3" />`;
  if (mark === 'scrap')
    return html`<polygon class="piece-thick" points=${hexagon(10, 12, 8.6)} /><path class="piece-thick" d="M6.500 8.500l7 7M13.500 8.500l-7 7" />`;
  return html`<polygon class="piece-thin" points=${hexagon(10, 12, 8.6)} />`;
}
