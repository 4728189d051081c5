// Reads calls of shared rules, one [rule, given] a line; answers each with what it gives or refuses.
import { readdirSync } from 'node:fs';
import { createInterface } from 'node:readline';

const areas = new URL('../pwa/vector_rules/', import.meta.url);
const rules = {};
for (const name of readdirSync(areas).filter((each) => each.endsWith('.js'))) {
  Object.assign(rules, (await import(new URL(name, areas))).rules);
}

function answer([rule, given]) {
  try {
    return rules[rule](given);
  } catch (refused) {
    return refused.code ? { refused: refused.code } : { broke: String(refused.stack) };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  const told = JSON.stringify(answer(JSON.parse(line)) ?? null, (_, value) =>
    typeof value === 'number' && !Number.isFinite(value) ? { broke: String(value) } : value);
  console.log(told);
}
