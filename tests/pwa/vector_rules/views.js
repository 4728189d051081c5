// Shared cases of views: a short story, the question, and what of the answer is looked at.
// The story is told as in tests/vector_rules/story.py.
import { readFileSync } from 'node:fs';
import { subject, Workshop } from '../../../pwa/log/workshop.js';
import { nameRow } from '../../../pwa/store/fold.js';
import { Names } from '../../../pwa/store/names.js';
import { away, days, out } from '../../../pwa/views/away.js';
import { chosen } from '../../../pwa/views/chosen.js';
import { code } from '../../../pwa/views/code.js';
import { counted } from '../../../pwa/views/counted.js';
import { donor } from '../../../pwa/views/donor.js';
import { find, folded } from '../../../pwa/views/find.js';
import { row } from '../../../pwa/views/find_row.js';
import { holder } from '../../../pwa/views/holder.js';
import { joint } from '../../../pwa/views/joint.js';
import { distance } from '../../../pwa/views/near.js';
import { nextPiece } from '../../../pwa/views/next_piece.js';
import { nextPlaces } from '../../../pwa/views/next_place.js';
import { compared, heldBack, ownPlace } from '../../../pwa/views/own_place.js';
import { part } from '../../../pwa/views/part.js';
import { natural, sorted } from '../../../pwa/views/plain.js';
import { pool } from '../../../pwa/views/pool.js';
import { shelf } from '../../../pwa/views/shelf.js';
import { tonight } from '../../../pwa/views/tonight.js';

const here = new URL('../../vector_rules/workshops.json', import.meta.url);
const bases = JSON.parse(readFileSync(here, 'utf8'));
const START = 0x01c185370000;

export function workshop(given) {
  const base = bases[given.base] ?? {};
  const facts = [...(base.facts ?? []), ...(given.facts ?? []).map((each) => whole(each, base))];
  const about = new Map();
  const kept = new Map();
  const counts = new Map();
  facts.forEach((fact, place) => {
    const entry = entryOf(fact, place, counts);
    about.set(entry.id, entry.about);
    const struck = entry.heading === 'strike-out';
    const of = struck ? (about.get(entry.about) ?? entry.about) : entry.about;
    kept.set(of, [...(kept.get(of) ?? []), { entry, order: fact.order ?? entry.stamp }]);
  });
  const subjects = new Map([...kept].map(([of, lines]) => [of, subject(of, lines)]));
  for (const [of, path, value] of given.odd ?? []) put(subjects.get(of), path, value);
  return Workshop(subjects.values());
}

function put(subject, path, value) {
  let at = subject;
  for (const step of path.slice(0, -1)) at = at[step];
  at[path.at(-1)] = value;
}

function whole(fact, base) {
  if (!fact.pull) return fact;
  const [fastener, pass] = fact.pull;
  const target = base.targets[pass] ?? null;
  const body = { run: base.run, fastener, pass, wrench: null, target, reading: null, ...fact.with };
  return { ...fact, heading: 'pull', about: base.joint, body };
}

const two = (number, width = 2) => String(number).padStart(width, '0');

function entryOf(fact, place, counts) {
  const device = fact.device ?? 'a';
  counts.set(device, (counts.get(device) ?? 0) + 1);
  const ms = Math.round((fact.at ?? place * 60) * 1000);
  const seconds = Math.floor(ms / 1000);
  const [hour, minute] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const clock = `${two(hour)}:${two(minute)}:${two(seconds % 60)}.${two(ms % 1000, 3)}`;
  return {
    id: fact.id ?? `e${place}`,
    heading: fact.heading,
    about: fact.about,
    device,
    n: counts.get(device),
    stamp: fact.stamp ?? `${(START + ms).toString(16).padStart(12, '0')}-0000`,
    made: fact.made ?? `2031-03-07T${clock}Z`,
    by: fact.by ?? null,
    v: 1,
    after: fact.after ?? [],
    body: fact.body,
  };
}

export function picked(result, paths) {
  if (!paths) return result;
  return Object.fromEntries(paths.map((path) => [path, follow(result, path.split('.'))]));
}

function follow(value, [step, ...rest]) {
  if (step === undefined) return value;
  if (step === '*') return value.map((each) => follow(each, rest));
  if (value === null) return null;
  if (value === undefined || !(step in value)) throw new Error(`nothing at ${step}`);
  return follow(value[step], rest);
}

const NAMED = ['part', 'holder', 'joint', 'step', 'kind', 'donor', 'build', 'label'].concat([
  'wrench',
  'instrument',
]);

const looked = (row) =>
  row && JSON.stringify({ ...row, words: [...new Set(row.words.split(' '))].sort() });

/** The rows that the phone's search reads are made from less, and have to say the same. */
function alsoOnThePhone(w, asked, id) {
  const names = new Names();
  for (const one of NAMED.flatMap((heading) => w.all(heading))) names.set(one.id, nameRow(one));
  names.show(names.rows.keys());
  const found = names.shown.get(id) ?? null;
  if (looked(found) === looked(asked)) return asked;
  throw new Error(`the phone looks through ${looked(found)}, not ${looked(asked)}`);
}

export const views = {
  joint: (w, g) => joint(w, g.id, g.run),
  part: (w, g) => part(w, g.id),
  holder: (w, g) => holder(w, g.id),
  code: (w, g) => code(w, g.code),
  tonight: (w, g) => tonight(w, g.today),
  next_piece: (w, g) => nextPiece(w, g.holder, g.after, g.kind),
  own_place: (w, g) => ownPlace(w, g.id, g.wanted),
  'own_place.held_back': (w, g) => heldBack(w, g.id, g.wanted),
  donor: (w, g) => donor(w, g.id),
  counted: (w, g) => counted(w, g.id),
  pool: (w, g) => pool(w, g.id, g.own),
  chosen: (w, g) => chosen(w, g.id),
  shelf: (w) => shelf(w),
  away: (w, g) => away(w, g.today),
  'away.out': (w, g) => out(w.subject(g.id), g.today),
  'find.row': (w, g) => alsoOnThePhone(w, row(w, g.id), g.id),
};
const told = Object.entries(views).map(([name, view]) => [
  name,
  (given) => picked(view(workshop(given), given), given.pick),
]);

export const rules = {
  ...Object.fromEntries(told),
  find: (g) => picked(find(g.rows, g.query), g.pick),
  'own_place.compared': (g) => compared(g.own, g.wanted),
  'away.days': (g) => days(g.due, g.today),
  next_place: (g) => nextPlaces(g.last, g.used),
  'find.folded': (g) => folded(g.text),
  'near.distance': (g) => distance(g.one, g.other, g.most),
  'plain.natural': (g) => sorted(g.names, natural),
};
