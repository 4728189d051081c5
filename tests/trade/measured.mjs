// Reads calls, one [rule, given] a line, and answers each: a result, or {"refused": code}.
// {"odd": word} in a case stands for what JSON cannot write.
import { createInterface } from 'node:readline';
import { rules } from '../pwa/vector_rules/measure.js';

const ODD = { nan: Number.NaN, infinity: Infinity, 'minus infinity': -Infinity };

const odd = (_, value) => (value && value.odd in ODD ? ODD[value.odd] : value);

function answer([rule, given]) {
  try {
    return rules[rule](given);
  } catch (refused) {
    return { refused: refused.code ?? null, broke: refused.code ? undefined : String(refused) };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(answer(JSON.parse(line, odd)) ?? null));
}
