/** The places with their totals; one opens to its pieces, and two pieces tapped stay together. */
import { useState } from 'preact/hooks';
import { html, Key, say } from '../frame/index.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { joinedLines } from './even_model.js';
import { figure } from './says.js';

/** @param {{found: any, asked: any, change: (part: any) => void}} props */
export function EvenPlaces({ found, asked, change }) {
  const [open, setOpen] = useState('');
  const [held, setHeld] = useState('');
  const names = new Map(
    asked.columns.flatMap((/** @type {any} */ one) =>
      one.taken.map((/** @type {any} */ piece) => [piece.id, piece.name ?? piece.id]),
    ),
  );
  const kindOf = new Map(
    asked.columns.flatMap((/** @type {any} */ one) =>
      one.taken.map((/** @type {any} */ piece) => [piece.id, one.id]),
    ),
  );
  const lineOf = (/** @type {string} */ id) =>
    asked.together.find((/** @type {string[]} */ line) => line.includes(id)) ?? null;
  const put = (/** @type {string[][]} */ together) => {
    change({ together });
    setHeld('');
  };
  const press = (/** @type {string} */ id) => {
    const line = lineOf(id);
    if (!held && line) return put(asked.together.filter((/** @type {any} */ one) => one !== line));
    if (held === id) return setHeld('');
    if (held && kindOf.get(held) !== kindOf.get(id)) return put(bound(asked, kindOf, held, id));
    say(t('even.held', { name: names.get(id) }));
    return setHeld(id);
  };
  const facts = { found, asked, open, setOpen, held, press, names, lineOf, put };
  return html`<section class="stack"><h2>${t('even.places')}</h2>
    <p class="hint">${held ? t('even.held', { name: names.get(held) }) : t(open ? 'even.hold' : 'even.hint')}</p>
    <ol class="sheet set-places even">${found.rows.map((/** @type {any} */ row) => html`<${Place} key=${row.place} row=${row} ...${facts} />`)}</ol></section>`;
}

/** Two pieces in one line; a piece of the same kind that was there gives way. @param {any} asked @param {Map<string, string>} kindOf @param {string} held @param {string} id */
function bound({ together }, kindOf, held, id) {
  const joined = joinedLines(together, [held, id]);
  const line = joined[joined.length - 1] ?? [];
  const kept = line.filter((one) =>
    [held, id].every((piece) => piece === one || kindOf.get(piece) !== kindOf.get(one)),
  );
  const first = kept.filter(
    (one, at) => kept.findIndex((other) => kindOf.get(other) === kindOf.get(one)) === at,
  );
  return [...joined.slice(0, -1), first];
}

/** @param {any} props */
function Place({ row, found, asked, open, setOpen, held, press, names, lineOf, put }) {
  const { place, pieces, total, off } = row;
  const { unit, decimals } = found;
  const sum = figure(total, decimals);
  const less = figure(off, decimals);
  const none = Number(off.toFixed(decimals)) === 0;
  const loses = none ? t('even.lightest') : t('even.off.from', { off: less, unit });
  const ids = pieces.map((/** @type {any} */ { id }) => id);
  const whole = asked.together.some((/** @type {string[]} */ line) =>
    ids.every((/** @type {string} */ id) => line.includes(id)),
  );
  const others = asked.together.filter(
    (/** @type {string[]} */ line) => !ids.some((/** @type {string} */ id) => line.includes(id)),
  );
  return html`<li><${Press} class="row" aria-expanded=${String(open === place)} aria-label=${`${t('even.place', { place, total: sum, unit })}, ${loses}`}
      onPress=${() => setOpen(open === place ? '' : place)}><span class="fig place">${place}</span>
      <span class="says"><b>${sum} ${unit} · ${loses}</b><span class="soft">${pieces.map((/** @type {any} */ { id }) => names.get(id)).join(' · ')}</span></span></${Press}>
    ${
      open === place &&
      html`<div class="set-wish stack">${pieces.map(
        (
          /** @type {any} */ piece,
        ) => html`<${Press} key=${piece.id} class="row piece" aria-pressed=${String(held === piece.id)} onPress=${() => press(piece.id)}>
          <span class="says"><b>${names.get(piece.id)}</b>${stays(lineOf(piece.id), piece.id, names)}</span>
          <span class="fig">${weightOf(piece, asked)}</span></${Press}>`,
      )}
      <${Key} label=${t(whole ? 'even.let-go' : 'even.keep-together')} onPress=${() => put(whole ? others : [...others, ids])} /></div>`
    }</li>`;
}

/** @param {any} piece @param {any} asked */
function weightOf({ id, size }, { columns }) {
  const one = columns.find((/** @type {any} */ { taken }) =>
    taken.some((/** @type {any} */ each) => each.id === id),
  );
  return `${figure(size.size, size.decimals)} ${one?.measure.unit ?? ''}`;
}

/** @param {string[] | null} line @param {string} id @param {Map<string, string>} names */
const stays = (line, id, names) =>
  line &&
  html`<span class="soft">${t('even.stays', {
    name: line
      .filter((one) => one !== id)
      .map((one) => names.get(one))
      .join(', '),
  })}</span>`;
