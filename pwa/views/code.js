/** A label that was read: what does it mark? */
import { standing, value } from '../log/workshop.js';
import { parse } from '../trade/label.js';
import { out } from './away.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */

/**
 * thing, blank, retired, scrapped, ask or wrong, with what the label marks.
 * @param {Workshop} workshop
 * @param {string} typed
 */
export function code(workshop, typed) {
  const read = codeOf(typed);
  if (read === null) return { code: typed, says: 'wrong', things: [], after: [] };
  const facts = standing(workshop.subject(read), 'label');
  const marked = plain.once(facts.flatMap(({ body }) => plain.text(body.marks) ?? []));
  const found = marked.map((id) => thing(workshop, id)).filter(({ hidden }) => !hidden);
  return { code: read, says: says(facts, found), things: found, after: facts.map(({ id }) => id) };
}

/** @param {unknown} typed */
function codeOf(typed) {
  try {
    return parse(typeof typed === 'string' ? typed : '');
  } catch {
    return null;
  }
}

/**
 * Facts that differ are asked about: one thing and another, or a thing and "spoilt".
 * @param {Fact[]} facts
 * @param {{verdict: string | null}[]} found
 */
function says(facts, found) {
  const unmarking = facts.filter(({ body }) => plain.text(body.marks) === null);
  const nothing = plain.once(unmarking.map(({ body }) => plain.text(body.state) ?? 'free'));
  if (found.length + nothing.length > 1) return 'ask';
  if (found[0]) return found[0].verdict === 'scrap' ? 'scrapped' : 'thing';
  return nothing[0] === 'retired' ? 'retired' : 'blank';
}

/**
 * @param {Workshop} workshop
 * @param {string} id
 */
function thing(workshop, id) {
  const subject = workshop.subject(id);
  const said = things.verdict(subject);
  const latest = said.standing.at(-1);
  return {
    heading: subject?.heading ?? null,
    id,
    name: plain.text(value(subject, 'name')),
    ...things.described(subject),
    verdict: said.word,
    reason: latest?.reason ?? null,
    made: latest?.made ?? null,
    away: out(subject),
  };
}
