// Reads texts of entries, a line each; answers canonical text and digest as a line of JSON.
import { createInterface } from 'node:readline';
import { asHex, digest } from '../../pwa/log/digest.js';
import { read } from '../../pwa/log/entry.js';

for await (const line of createInterface({ input: process.stdin })) {
  const { text } = read(line);
  const sum = asHex(digest(text, '01c185379c5f-0004'));
  process.stdout.write(`${JSON.stringify([text, sum])}\n`);
}
