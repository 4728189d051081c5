// Reads calls of the bolts' rules, one [rule, given] a line; answers the result or {refused, says}.
import { createInterface } from 'node:readline';
import { rules as torque } from '../pwa/vector_rules/bolt_torque.js';
import { rules as bolts } from '../pwa/vector_rules/bolts.js';

const rules = { ...bolts, ...torque };

function answer([rule, given]) {
  try {
    return rules[rule](given);
  } catch (refused) {
    if (!refused.code) throw refused;
    return { refused: refused.code, says: refused.says };
  }
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(JSON.stringify(answer(JSON.parse(line)) ?? null));
}
