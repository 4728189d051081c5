// Reads calls, one [rule, given] a line, and answers each: a result, or {"refused": code}.
import { createInterface } from 'node:readline';
import { rules } from '../pwa/vector_rules/measure.js';

function answer([rule, given]) {
  try {
    return rules[rule](given);
  } catch (refused) {
    return { refused: refused.code ?? String(refused) };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(answer(JSON.parse(line)) ?? null));
}
