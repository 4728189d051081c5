/** What can be gone on with, looked at and put away with what is here. */
import { standing, value } from '../log/workshop.js';
import { away, cameBack } from './away.js';
import { joint } from './joint.js';
import * as plain from './plain.js';
import { latestFirst, summary } from './summary.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

const MOST = 100;

/**
 * Joints that were left, joints ready to begin, parts to look at, parts without a place, parts
 * that should be back from the machine shop.
 * @param {Workshop} workshop
 * @param {string | null} [today] the date, for what is late
 */
export function tonight(workshop, today = null) {
  const all = workshop.all('joint').map(({ id }) => summary(workshop, id));
  const lines = plain.sorted(all, (line) => [plain.natural(line.name), line.id]);
  const fresh = lines.filter(({ state }) => state === 'not-begun');
  const parts = workshop.all('part');
  return {
    go_on: latestFirst(lines.filter(({ state }) => state === 'running' || state === 'not-whole')),
    begin: fresh.filter((line) => !line.held_back),
    look: look(workshop, parts),
    put: put(parts),
    late: away(workshop, today).out.filter(({ days }) => days !== null && days > 0),
    no_value: lines
      .filter(({ state }) => state === 'no-value')
      .map(({ id, name }) => ({ id, name })),
    held: fresh
      .filter((line) => line.held_back)
      .map(({ id, name }) => ({ id, name, held: joint(workshop, id).held })),
    asks: lines.reduce((sum, line) => sum + line.asks, 0),
  };
}

/**
 * Parts nobody judged yet, or not since they came back, by holder and kind, most first.
 * @param {Workshop} workshop
 * @param {Subject[]} parts
 */
function look(workshop, parts) {
  /** @type {Map<string, {holder: string, kind: string, group: Subject[]}>} */
  const groups = new Map();
  for (const each of parts) {
    const mark = things.mark(each);
    if (mark !== 'look' && (mark === 'empty' || !cameBack(each))) continue;
    const holder =
      standing(each, 'place').flatMap(({ body }) => plain.text(body.in) ?? [])[0] ?? '';
    const kind = plain.text(value(each, 'kind')) ?? '';
    const key = JSON.stringify([holder, kind]);
    const kept = groups.get(key) ?? { holder, kind, group: [] };
    kept.group.push(each);
    groups.set(key, kept);
  }
  const sorted = plain.sorted(groups.values(), ({ holder, kind, group }) => [
    -group.length,
    holder,
    kind,
  ]);
  return sorted.slice(0, MOST).map(({ holder, kind, group }) => ({
    holder: holder || null,
    name: things.nameOf(workshop, holder),
    kind: kind || null,
    kind_name: things.nameOf(workshop, kind) ?? plain.text(value(group[0] ?? null, 'name')),
    part: /** @type {Subject} */ (plain.sorted(group, byName)[0]).id,
    left: group.length,
  }));
}

/** @param {Subject} part */
function byName(part) {
  return [plain.natural(plain.text(value(part, 'name'))), part.id];
}

/**
 * Parts that lie nowhere and are fitted nowhere.
 * @param {Subject[]} parts
 */
function put(parts) {
  const lost = parts.filter(
    (each) => !standing(each, 'place').length && !standing(each, 'fitted').length,
  );
  return plain
    .sorted(lost, byName)
    .slice(0, MOST)
    .map((each) => ({ id: each.id, name: plain.text(value(each, 'name')), heading: 'part' }));
}
