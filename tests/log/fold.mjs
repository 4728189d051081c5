// Folds histories given as lines of JSON on standard input; answers one line of JSON each.
import { createInterface } from 'node:readline';
import { canonical } from '../../pwa/log/clean.js';
import { links } from '../../pwa/log/links.js';
import { subject } from '../../pwa/log/workshop.js';

for await (const line of createInterface({ input: process.stdin })) {
  const { about, entries } = JSON.parse(line);
  const found = subject(about, entries);
  process.stdout.write(`${canonical([found, links(found)])}\n`);
}
