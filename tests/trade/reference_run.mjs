// Reads cases, one [stem, topic, given] a line; answers {…}, {"refused": code} or {"no adapter": topic}.
import { createInterface } from 'node:readline';

async function answer([stem, topic, given]) {
  const { topics, byShape } = await import(`./reference_rules/${stem}.mjs`);
  const run = topics[topic] ?? byShape;
  if (!run) return { 'no adapter': topic };
  try {
    return run(given);
  } catch (refused) {
    if (!refused.code || !refused.says) throw refused;
    return { refused: refused.code, says: refused.says };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify((await answer(JSON.parse(line))) ?? null));
}
