// Calls every exported rule of pwa/trade as the shared cases do, but with something odd in one place,
// and tells where anything but a result or a refusal of ours came of it.
import { readdirSync, readFileSync } from 'node:fs';
import { register } from 'node:module';

// Each exported function of the trade is handed through `recorded`, which keeps its arguments.
const HOOK = `
const EXPORTED = /^export (?:function|const|let) (\\w+)/gm;
export async function load(url, context, next) {
  const loaded = await next(url, context);
  const stem = /\\/pwa\\/trade\\/(\\w+)\\.js$/.exec(url)?.[1];
  if (!stem) return loaded;
  const text = String(loaded.source);
  const names = [...text.matchAll(EXPORTED)].map((found) => found[1]);
  const last = names.map((name) => \`\${name} = globalThis.recorded('\${stem}.\${name}', \${name});\`);
  return { ...loaded, source: text.replace(/^export const /gm, 'export let ') + '\\n' + last.join('\\n') };
}`;
register(`data:text/javascript,${encodeURIComponent(HOOK)}`);

const FEW = 2;
const calls = new Map();
let recording = true;
globalThis.recorded = (name, rule) => {
  if (typeof rule !== 'function' || /^class\b/.test(String(rule))) return rule;
  return (...args) => {
    const known = calls.get(name) ?? [];
    if (recording && known.length < FEW) calls.set(name, [...known, { rule, args: copied(args) }]);
    return rule(...args);
  };
};
const copied = (value) => {
  try {
    return structuredClone(value);
  } catch {
    return value;
  }
};

const here = new URL('.', import.meta.url);
const rules = {};
for (const area of readdirSync(new URL('../pwa/vector_rules/', here)).filter((n) => n.endsWith('.js')))
  Object.assign(rules, (await import(new URL(`../pwa/vector_rules/${area}`, here))).rules);
const vectors = new URL('../../fixtures/vectors/', here);
for (const name of readdirSync(vectors).filter((each) => each.endsWith('.json'))) {
  const file = JSON.parse(readFileSync(new URL(name, vectors), 'utf8'));
  for (const group of file.groups)
    for (const item of group.tests.filter((each) => 'gives' in each).slice(0, 6)) {
      await rules[item.rule ?? group.rule ?? file.rule]?.(item.given);
    }
}
recording = false;

const ODD = [
  null, undefined, true, '', 'x', 'N·m', '9'.repeat(5000), '\ud800', '١٢', 'NaN', [], [1], [null], {},
  { value: 1 }, Number.NaN, Infinity, -Infinity, 1e300, 5e-324, 10n ** 400n, Symbol('odd'), () => 1,
];
/** Rules, files and single places that nobody gives anything to, or that take words of any kind. */
const ASIDE = new Set([
  'alike', 'beta', 'both_ends', 'even_totals', 'exact', 'narrowest', 'set_bounds', 'set_limits', 'set_pick',
  'set_search', 'set_window', 'thread_inches', 'thread_tables', 'yield_series', 'assemblies.arranged',
  'amounts.count(2)', 'amounts.facts', 'amounts.numbers', 'dimension.sum', 'sequence.loosening', 'torque_form.friction(2)',
  'unit_spelled.translated', 'money.checked',
]);
/** Named arguments in one object, which the language has no other way for: spoilt one by one only. */
const NAMED = new Set([
  'adapter.band(5)', 'adapter.plan(4)', 'choosing.choose(3)', 'compression_ratio.measured(1)', 'dimension.reading(1)',
  'expansion.clearanceAt(4)', 'fit.oilClearance(3)', 'gauge_study.averageAndRange(1)', 'interaction.chance(2)',
  'mixing.choose(3)', 'number.parseNumber(1)', 'plausibility.plausibility(3)', 'preload.atShareOfYield(0)',
  'preload.band(0)', 'preload.change(0)', 'proof.oilPressure(0)', 'sets.best(3)', 'typed.read(2)',
]);

function* spoilt(value, whole = true) {
  if (whole) for (const odd of ODD) yield odd;
  if (Array.isArray(value) && value.length > 0)
    for (const inner of spoilt(value[0])) yield [inner, ...value.slice(1)];
  else if (value && typeof value === 'object' && !(value instanceof Map))
    for (const key of Object.keys(value)) for (const odd of ODD) yield { ...value, [key]: odd };
}

const finite = (came) => {
  if (typeof came === 'number') return Number.isFinite(came);
  if (came && typeof came === 'object') return Object.values(came).every(finite);
  return true;
};
const tell = (value) =>
  JSON.stringify(value, (_, each) =>
    typeof each === 'number' || typeof each === 'object' ? each : String(each).slice(0, 20));

const wrong = new Map();
for (const [name, listed] of calls) {
  if (ASIDE.has(name) || ASIDE.has(name.split('.')[0])) continue;
  for (const { rule, args } of listed)
    args.forEach((_, at) => {
      const place = `${name}(${at})`;
      if (ASIDE.has(place)) return;
      for (const odd of spoilt(args[at], !NAMED.has(place))) {
        let why = null;
        try {
          if (!finite(rule(...args.with(at, odd)))) why = 'gave no finite number';
        } catch (refused) {
          const told = [refused?.code, refused?.says, refused?.next];
          if (!told.every((text) => typeof text === 'string' && text.trim())) why = String(refused).slice(0, 90);
        }
        if (why && !wrong.has(place)) wrong.set(place, `${tell(odd)?.slice(0, 120)}: ${why}`);
      }
    });
}
console.log(JSON.stringify({ tried: [...calls.keys()].sort(), wrong: [...wrong] }));
