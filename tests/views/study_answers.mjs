// Reads gauge studies, one a line, and tells what the page makes of each.
import { createInterface } from 'node:readline';
import { rules } from '../pwa/vector_rules/study.js';

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(rules.study(JSON.parse(line))));
}
