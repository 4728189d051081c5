/** What a joint that is done was really tightened to, as far as its wrenches can tell. */
import { permitted } from './judging.js';
import * as plain from './plain.js';
import { cellOf } from './progress.js';
import { adapter, applied as appliedBy, span } from './setting.js';

/**
 * From the least to the most of its last torque pass, by the deviation of its wrenches.
 * @param {import('../log/values.js').Subject | null} joint
 * @param {import('./progress.js').Progress | null} now
 * @param {plain.Workshop} workshop
 */
export function applied(joint, now, workshop) {
  if (!joint || !now) return null;
  const pass = [...now.plan.passes.values()].findLast(({ how }) => how === 'torque');
  if (!pass) return null;
  const latest = [...now.plan.fasteners.keys()].map((each) => cellOf(now, pass, each).latest);
  const facts = latest.flatMap((each) => (each ? [each.fact] : []));
  if (facts.length < latest.length) return null;
  const bands = facts.map(({ body, order }) => {
    const tool = workshop.subject(plain.asId(body.wrench));
    return appliedBy(body, adapter(joint, order), permitted(tool));
  });
  return span(bands);
}
