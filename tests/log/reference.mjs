// Answers the published cases for the log by the phone's code: one JSON list on standard output.
import { readFileSync } from 'node:fs';
import { canonical } from '../../pwa/log/clean.js';
import { idFacts, isUuid7, uuid7 } from '../../pwa/log/ids.js';
import { sha256 } from '../../pwa/log/sha256.js';
import { nextStamp, seen } from '../../pwa/log/stamp.js';

const file = new URL('../../fixtures/reference/log.json', import.meta.url);
const utf8 = (text) => new TextEncoder().encode(text);
const bytes = (hex) => Uint8Array.from(hex.match(/../g), (pair) => Number.parseInt(pair, 16));

const rules = {
  'UUID version 7': (given) => {
    if (given.uuid) {
      const { unixMs, version, variant } = idFacts(given.uuid);
      const ours = isUuid7(given.uuid.toLowerCase());
      return ours ? { unix_ms: unixMs, version, variant } : { version, version_7: ours };
    }
    const random = bytes(`0${given.rand_a_hex ?? '000'}${given.rand_b_hex ?? '0'.repeat(16)}`);
    return { uuid: uuid7(given.unix_ms, random) };
  },
  'SHA-256': ({ text }) => ({ sha256_hex: sha256(utf8(text)) }),
  'Canonical text of an entry': ({ entry }) => {
    const text = canonical(entry);
    return { text, sha256_hex: sha256(utf8(text)) };
  },
  'Stamps of a hybrid clock': ({ last_stamp: last, seen_stamp: other, clock_ms: ms }) => ({
    stamp: nextStamp(seen({ last, correctionMs: 0 }, other ?? last).last, ms),
  }),
};

function answer(rule, given) {
  try {
    return rule(given);
  } catch (refused) {
    return { refused: refused.code };
  }
}

const groups = JSON.parse(readFileSync(file, 'utf8')).filter(({ topic }) => topic in rules);
const answers = groups.map(({ topic, cases }) => [
  topic,
  cases.map(({ given }) => answer(rules[topic], given)),
]);
process.stdout.write(JSON.stringify(Object.fromEntries(answers)));
