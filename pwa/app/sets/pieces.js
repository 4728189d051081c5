/** The pieces as a table: what each measures, what it is in the set; pressed, it is pinned or left out. */
import { useState } from 'preact/hooks';
import { Chips } from '../forms_fields.js';
import { html, Key } from '../frame/index.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { ifOnly } from './model.js';
import { figure, namesSay, spreadSays } from './says.js';

/** @type {Record<string, number>} */
const FIRST = { pinned: 0, in: 0, spare: 1, idle: 2, outside: 3, out: 3, missing: 4 };

/** So many are listed at first: the set and its next best. */
const FEW = 24;
const FEW_OFF = 12;
/** Fewer than these are not worth a press. */
const LEAST = 4;

/** The first of a list, and a key that shows all of them. @param {any[]} list @param {number} few @returns {[any[], any]} */
function useFew(list, few) {
  const [all, setAll] = useState(false);
  if (all || list.length <= few + LEAST) return [list, null];
  const more = html`<${Key} icon="i-down" label=${t('set.all', { n: list.length })} onPress=${() => setAll(true)} />`;
  return [list.slice(0, few), more];
}

/** @param {{pieces: any[], asked: any, draft: any, change: (part: any) => void}} props */
export function Pieces({ pieces, asked, draft, change }) {
  const [open, setOpen] = useState('');
  const order = [...pieces].sort(
    (one, other) =>
      Number(FIRST[one.state]) - Number(FIRST[other.state]) || (one.rank ?? 0) - (other.rank ?? 0),
  );
  const [shown, more] = useFew(order, FEW);
  return html`<section class="stack"><h2>${t('set.pieces')}</h2><ul class="sheet set-pieces">${shown.map(
    (
      piece,
    ) => html`<li key=${piece.id}><${Press} class="row" aria-expanded=${String(open === piece.id)}
      onPress=${() => setOpen(open === piece.id ? '' : piece.id)}><span class="says"><b>${piece.name ?? piece.id}</b>
      <span class="soft">${stateSays(piece)}${piece.donor?.name ? ` · ${piece.donor.name}` : ''}</span></span>
      <span class="fig">${sizesSay(piece, asked.measures)}</span></${Press}>
      ${open === piece.id && html`<${Wish} ...${{ piece, asked, draft, change }} />`}</li>`,
  )}</ul>${more}</section>`;
}

/** @param {any} piece @param {any[]} measures */
export const sizesSay = ({ sizes }, measures) =>
  measures
    .map(({ at, unit }) =>
      sizes[at] ? `${figure(sizes[at].size, sizes[at].decimals)} ${unit ?? ''}` : '–',
    )
    .join(' · ');

/** @param {any} piece */
function stateSays({ state, rank, verdict, outside }) {
  return [
    t(`set.state.${state}`, { n: rank ?? 0 }),
    ...outside.map((/** @type {any} */ one) => t('set.spot.outside', { measure: one.name ?? '' })),
    verdict === 'spare' && t('set.wear.spare'),
  ]
    .filter(Boolean)
    .join(' · ');
}

/** @param {string[]} ids @param {string} id @param {boolean} on */
const withOne = (ids, id, on) => [...ids.filter((one) => one !== id), ...(on ? [id] : [])];

/** Must be in, left out, or as it comes; each says at once what it would cost. @param {any} props */
function Wish({ piece, asked, draft, change }) {
  const { id, state } = piece;
  const now = draft.pinned.includes(id) ? 'pin' : draft.excluded.includes(id) ? 'exclude' : 'free';
  const pick = (/** @type {string} */ word) =>
    change((/** @type {any} */ was) => ({
      pinned: withOne(was.pinned, id, word === 'pin'),
      excluded: withOne(was.excluded, id, word === 'exclude'),
    }));
  const words = ['free', 'pin', 'exclude'].map((word) => ({
    value: word,
    says: t(`set.piece.${word}`),
  }));
  const inside = state === 'in' || state === 'pinned';
  const other = state === 'missing' ? null : ifOnly(asked, inside ? 'excluded' : 'pinned', id);
  return html`<div class="set-wish stack"><${Chips} label=${t('set.piece.as')} value=${now} words=${words} onChange=${pick} />
    ${other && html`<p role="status">${costSays(asked, other, inside)}</p>`}</div>`;
}

/** @param {any} asked @param {any} other @param {boolean} inside */
function costSays(asked, other, inside) {
  if (!other.found) return t('set.piece.cannot', { why: other.trouble ?? '' });
  const spread = spreadSays(asked, other.found.spreads);
  return t(inside ? 'set.piece.costs-out' : 'set.piece.costs', { spread });
}

/** Pieces nothing can be chosen from, and why. @param {{off: any[]}} props */
export function HeldOff({ off }) {
  const [shown, more] = useFew(off, FEW_OFF);
  if (!off.length) return null;
  return html`<section class="stack"><h2>${t('set.off')}</h2><ul class="sheet set-off">${shown.map(
    (
      piece,
    ) => html`<li key=${piece.id}><a class="row" href=${`/part/${piece.id}`}><span class="says"><b>${piece.name ?? piece.id}</b>
      <span class="soft">${t(`set.why.${piece.why}`, { set: namesSay(piece.sets) })}</span></span></a></li>`,
  )}</ul>${more}</section>`;
}
