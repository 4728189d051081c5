/** The entries of sending parts out and of their coming back. */
import { standing } from '../../log/workshop.js';
import { minorDigits, parse, text } from '../../trade/money.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';

/** @typedef {{parts: string[], to: string, for: string, due: string, note: string, price: string, currency: string}} Sending */

/** A price as it is kept, nothing where none was typed, undefined where it cannot be read. @param {Sending} draft */
export function priceOf({ price, currency }) {
  if (!price.trim()) return null;
  try {
    const unit = currency.trim().toUpperCase();
    minorDigits(unit);
    return { value: text(parse(price, unit)), unit };
  } catch {
    return undefined;
  }
}

/** @param {any} workshop @param {string} id @returns {string[]} */
const placed = (workshop, id) =>
  standing(workshop.subject(id), 'place').map((/** @type {any} */ fact) => fact.id);

/** What is kept of each part, and that it has gone. @param {any} workshop @param {Sending} draft */
export function sendingEntries(workshop, draft) {
  const to = draft.to.trim();
  const price = priceOf(draft);
  const body = {
    to,
    ...(draft.for.trim() ? { for: draft.for.trim() } : {}),
    ...(draft.due ? { due: draft.due } : {}),
    ...(price ? { price } : {}),
    ...(draft.note.trim() ? { note: draft.note.trim() } : {}),
  };
  return draft.parts.flatMap((about) => [
    { heading: 'sent', about, body },
    {
      heading: 'place',
      about,
      after: placed(workshop, about),
      body: { in: null, gone: t('send.gone', { to }) },
    },
  ]);
}

/** A part is back: each sending ends, and it lies here again. @param {any} workshop @param {string} about @param {any[]} sent @param {{note: string, readings: any[]}} draft */
export function backEntries(workshop, about, sent, { note, readings }) {
  const said = note.trim() ? { note: note.trim() } : {};
  // Read once: where it was sent twice, the readings stand with the first.
  const read = (/** @type {number} */ at) => (at === 0 && readings.length ? { readings } : {});
  return [
    ...sent.map(({ id }, at) => ({
      heading: 'returned',
      about,
      body: { sent: id, ...said, ...read(at) },
    })),
    {
      heading: 'place',
      about,
      after: placed(workshop, about),
      body: { in: null, where: t('back.where', { to: sent[0]?.to ?? '' }) },
    },
  ];
}
