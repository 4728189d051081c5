// Reads calls, one [rule, given] a line, and answers each, one result or {"refused": code} a line.
import { createInterface } from 'node:readline';
import { rules } from '../pwa/vector_rules/trade.js';

function answer([rule, given]) {
  try {
    return rules[rule](given);
  } catch (refused) {
    return { refused: refused.code };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(answer(JSON.parse(line)) ?? null));
}
