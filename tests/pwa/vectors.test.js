// Runs every shared vector file against the rules of the page. Started by tests/test_vectors.py.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const here = new URL('.', import.meta.url);
const vectors = new URL('../../fixtures/vectors/', here);
const rules = {};
for (const name of readdirSync(new URL('vector_rules/', here)).filter((n) => n.endsWith('.js'))) {
  Object.assign(rules, (await import(new URL(`vector_rules/${name}`, here))).rules);
}

function sameNumber(expected, actual, within) {
  if (within?.relative) {
    return Math.abs(expected - actual) <= within.relative * Math.max(Math.abs(expected), Math.abs(actual));
  }
  return within?.absolute ? Math.abs(expected - actual) <= within.absolute : expected === actual;
}

function same(expected, actual, within) {
  if (typeof expected === 'number' && typeof actual === 'number') {
    return sameNumber(expected, actual, within);
  }
  if (Array.isArray(expected)) {
    return Array.isArray(actual) && expected.length === actual.length
      && expected.every((item, i) => same(item, actual[i], within));
  }
  if (expected && typeof expected === 'object') {
    const keys = Object.keys(expected);
    return actual && typeof actual === 'object' && !Array.isArray(actual)
      && keys.length === Object.keys(actual).length
      && keys.every((key) => key in actual && same(expected[key], actual[key], within));
  }
  return expected === actual;
}

async function fault(item) {
  const rule = rules[item.rule];
  if (!rule) return `no JavaScript rule runs ${item.rule}`;
  let actual;
  try {
    actual = await rule(item.given);
  } catch (refused) {
    const code = refused.code ?? String(refused.stack);
    return item.refused === code ? null : `refused with ${code}`;
  }
  if ('refused' in item) return `expected ${item.refused}, gave ${JSON.stringify(actual)}`;
  const plain = actual === undefined ? null : JSON.parse(JSON.stringify(actual));
  const within = item.within === 'exact' ? null : item.within;
  return same(item.gives, plain, within) ? null
    : `${JSON.stringify(item.gives)} != ${JSON.stringify(plain)}`;
}

for (const name of readdirSync(vectors).filter((n) => n.endsWith('.json')).sort()) {
  test(name, async () => {
    const file = JSON.parse(readFileSync(fileURLToPath(new URL(name, vectors)), 'utf8'));
    const wrong = [];
    for (const group of file.groups) {
      for (const item of group.tests) {
        const why = await fault({ ...item, rule: item.rule ?? group.rule ?? file.rule });
        if (why) wrong.push(`${group.description} / ${item.description}: ${why}`);
      }
    }
    assert.deepEqual(wrong.slice(0, 20), []);
  });
}
