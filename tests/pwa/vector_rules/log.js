/** How a shared case of the log is put to the rules in JavaScript. */
import { Refusal } from '../../../pwa/errors.js';
import { canonical, deepest, parse } from '../../../pwa/log/clean.js';
import { added, asHex, digest } from '../../../pwa/log/digest.js';
import { read, unwrapped } from '../../../pwa/log/entry.js';
import { headings } from '../../../pwa/log/headings/index.js';
import { idFacts, isUuid7, uuid7 } from '../../../pwa/log/ids.js';
import { links } from '../../../pwa/log/links.js';
import { answered, NEW_CLOCK, nextStamp, orderGiven, seen, tick } from '../../../pwa/log/stamp.js';
import { standing, subject, value, Workshop } from '../../../pwa/log/workshop.js';

/** @typedef {any} Given */

/** @param {Given} given */
function raw(given) {
  if ('text' in given) return given.text;
  const facts = structuredClone(given.entry);
  if ('pad' in given) facts.body.text = 'x'.repeat(given.pad);
  if ('deep' in given) {
    facts.body.deep = JSON.parse('['.repeat(given.deep) + ']'.repeat(given.deep));
  }
  return JSON.stringify(facts);
}

/** @param {Given} given */
function readCase(given) {
  const { text } = read(raw(given));
  if ('pad' in given) return { bytes: String(new TextEncoder().encode(text).length) };
  return { text, digest: asHex(digest(text, given.order)) };
}

/** @param {Given} given */
function refusal(given) {
  try {
    read(raw(given));
  } catch (refused) {
    if (refused instanceof Refusal) return refused.answer();
    throw refused;
  }
  return null;
}

/** @param {Given} given */
function setDigest({ entries }) {
  let total = 0n;
  for (const { text, order } of entries) total = added(total, [digest(text, order)]);
  return asHex(total);
}

/** @param {Given} given */
function clockCase({ steps }) {
  let clock = NEW_CLOCK;
  const made = [];
  for (const step of steps) {
    if ('seen' in step) clock = seen(clock, step.seen);
    else if ('server_ms' in step) clock = answered(clock, step.server_ms, step.device_ms);
    else {
      const ticked = tick(clock, step.device_ms);
      made.push(ticked.stamp);
      clock = ticked.clock;
    }
  }
  return made;
}

/** @param {Given} given */
function orders({ batch, server_ms: serverMs }) {
  /** @type {string | null} */
  let last = null;
  return batch.map((/** @type {Given} */ { stamp, order: held }) => {
    const order = orderGiven(stamp, serverMs, last, held);
    last = order ?? last;
    return order;
  });
}

/** @param {Given} given */
function workshopCase({ subjects, asks }) {
  const shop = Workshop(
    subjects.map((/** @type {Given} */ { about, entries }) => subject(about, entries)),
  );
  return {
    all: shop.all(asks.all).map(({ id }) => id),
    linked: shop.linked(asks.linked[0], asks.linked[1]).map(({ id }) => id),
    value: value(shop.subject(asks.value[0]), asks.value[1]),
    standing: standing(shop.subject(asks.standing[0]), asks.standing[1]).map(({ id }) => id),
  };
}

/** @param {Given} given */
function idFactsCase({ uuid }) {
  const { unixMs, version, variant } = idFacts(uuid);
  return { unix_ms: unixMs, version, variant, ours: isUuid7(uuid) };
}

/** @param {string} hex */
const bytes = (hex) => Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

/** @param {string} name */
const dashed = (name) => name.replace(/[A-Z]/g, (sign) => `-${sign.toLowerCase()}`);

/** @type {Record<string, (given: Given) => unknown>} */
export const rules = {
  'log.canonical': ({ text }) => canonical(parse(text)),
  'log.deepest': ({ text }) => deepest(text),
  'log.read': readCase,
  'log.refusal': refusal,
  'log.set_digest': setDigest,
  'log.uuid7': ({ unix_ms: unixMs, random }) => uuid7(unixMs, bytes(random)),
  'log.id_facts': idFactsCase,
  'log.next_stamp': ({ last, unix_ms: unixMs }) => nextStamp(last, unixMs),
  'log.clock': clockCase,
  'log.orders': orders,
  'log.unwrapped': ({ item }) => unwrapped(item).order,
  'log.subject': ({ about, entries }) => subject(about, entries),
  'log.links': ({ about, entries }) => links(subject(about, entries)),
  'log.workshop': workshopCase,
  'log.headings': () =>
    Object.fromEntries(
      [...headings.values()].map(({ word, merge, v, names }) => [
        word,
        [dashed(merge.name), v, names],
      ]),
    ),
};
