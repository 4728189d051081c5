/** Which chosen piece goes to which place: in order, its own place first, changed by two taps. */

import { useState } from 'preact/hooks';
import { compared } from '../../views/own_place.js';
import { html, say } from '../frame/index.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { natural } from '../words.js';

/**
 * @typedef {{place: string, piece: any, own: string | null, elsewhere: boolean}} Seat
 */

/**
 * A seat for each chosen piece. A piece with an own place is proposed there; what a person moved stays moved.
 * @param {any[]} chosen in order
 * @param {Record<string, string>} moved place by piece
 * @returns {Seat[]}
 */
export function seated(chosen, moved) {
  const owns = chosen.map((piece) => piece.own_place ?? null);
  const numbers = chosen.map((_, at) => String(at + 1));
  const taken = new Set(owns.filter((own) => own !== null));
  const known = numbers.filter((number) => ![...taken].some((own) => numberOf(own) === number));
  const first = new Map();
  for (const [at, piece] of chosen.entries())
    first.set(piece.id, owns[at] ?? known.shift() ?? numbers[at]);
  const places = swapped(first, moved);
  return chosen
    .map((piece) => {
      const place = String(places.get(piece.id));
      const own = piece.own_place ?? null;
      return { place, piece, own, elsewhere: compared(own, place) === 'elsewhere' };
    })
    .sort((one, other) => natural(one.place, other.place));
}

/** The number in a place: "Lobe 4" is place 4. @param {string} place */
const numberOf = (place) => /(\d+)\D*$/.exec(place)?.[1]?.replace(/^0+(?=\d)/, '') ?? null;

/** Each moved piece takes its place from whoever had it. @param {Map<string, string>} first @param {Record<string, string>} moved */
function swapped(first, moved) {
  const places = new Map(first);
  for (const [id, wanted] of Object.entries(moved)) {
    const was = places.get(id);
    const holder = [...places].find(([, place]) => place === wanted)?.[0];
    if (was === undefined || holder === undefined) continue;
    places.set(holder, was);
    places.set(id, wanted);
  }
  return places;
}

/** @param {{seats: Seat[], draft: any, change: (part: any) => void}} props */
export function Places({ seats, draft, change }) {
  const [held, setHeld] = useState('');
  const press = (/** @type {Seat} */ seat) => {
    if (!held) {
      setHeld(seat.piece.id);
      say(t('set.places.moving', { name: seat.piece.name ?? '' }));
      return;
    }
    // The last move stands last, so that moves are told one after the other.
    const { [held]: _, ...others } = draft.places;
    if (held !== seat.piece.id) change({ places: { ...others, [held]: seat.place } });
    setHeld('');
  };
  const hand = seats.find(({ piece }) => piece.id === held);
  return html`<section class="stack"><h2>${t('set.places')}</h2>
    <p class="hint">${hand ? t('set.places.moving', { name: hand.piece.name ?? '' }) : t('set.places.hint')}</p>
    <ol class="sheet set-places">${seats.map(
      (
        seat,
      ) => html`<li key=${seat.piece.id}><${Press} class="row" aria-pressed=${String(seat.piece.id === held)}
        aria-label=${t('set.place', { place: seat.place, name: seat.piece.name ?? '' })} onPress=${() => press(seat)}>
        <span class="fig place">${seat.place}</span><span class="says"><b>${seat.piece.name ?? seat.piece.id}</b>${ownSays(seat)}</span></${Press}></li>`,
    )}</ol></section>`;
}

/** @param {Seat} seat */
function ownSays({ own, elsewhere }) {
  if (own === null) return null;
  return html`<span class="soft">${elsewhere ? t('set.place.elsewhere', { own }) : t('set.place.own')}</span>`;
}
