/** A pull held against its target: what was read, with which wrench, and whether it is stale. */
import { value } from '../log/workshop.js';
import { against } from '../trade/torque.js';
import * as wrench from '../trade/wrench.js';
import * as plain from './plain.js';
import { same, wantsValue } from './programme.js';
import { adapter, atBolt, atWrench } from './setting.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {import('../log/values.js').Fact} Fact */
/** @typedef {plain.Workshop} Workshop */
/** @typedef {plain.Measured} Measured */
/** @typedef {import('./programme.js').Programme} Programme */
/** @typedef {import('./programme.js').Pass} Pass */

/**
 * Flags about what was read and which wrench was used; what cannot be read is not judged.
 * @param {Fact} fact
 * @param {Measured | null} targetNow
 * @param {Subject} joint
 * @param {Workshop} workshop
 * @param {Map<string, string | null>} fits what rangeFit said already, as a pass asks it often
 */
export function againstTarget({ body, order }, targetNow, joint, workshop, fits) {
  const target = targetNow && (plain.quantity(body.target) ?? plain.quantity(targetNow));
  if (!target) return [];
  const tool = workshop.subject(plain.asId(body.wrench));
  const flags = [];
  const through = adapter(joint, order);
  let reading = plain.quantity(body.reading);
  if (reading && through && body.read_at === 'set') reading = atBolt(reading, through);
  const said = reading ? judged(reading, target, permitted(tool)) : 'within';
  if (said !== 'within') flags.push(said);
  const wanted = atWrench(target, through);
  const asked = `${wanted.value} ${wanted.unit} ${body.wrench}`;
  if (!fits.has(asked)) fits.set(asked, rangeFit(tool, wanted));
  return ['takes', null].includes(fits.get(asked) ?? null) ? flags : [...flags, 'wrong-range'];
}

/**
 * @param {Measured} reading
 * @param {Measured} target
 * @param {number | null} share
 */
function judged(reading, target, share) {
  try {
    return against(reading, target, share);
  } catch {
    return 'within';
  }
}

/**
 * The wrench's permitted deviation as a share, or null where it is not known.
 * @param {Subject | null} tool
 */
export function permitted(tool) {
  try {
    return wrench.permitted(end(tool, 'most'), plain.text(value(tool, 'deviation')));
  } catch {
    return null;
  }
}

/**
 * takes, starts-at or ends-at; null where the range is not known or measures another thing.
 * @param {Subject | null} tool
 * @param {Measured | null} target
 */
export function rangeFit(tool, target) {
  const least = end(tool, 'least');
  const most = end(tool, 'most');
  if (!target || (!least && !most)) return null;
  try {
    return wrench.fit(target, least, most);
  } catch {
    return null;
  }
}

/**
 * @param {Subject | null} tool
 * @param {string} name
 */
function end(tool, name) {
  return plain.quantity({ value: value(tool, name), unit: value(tool, 'unit') });
}

/**
 * Whether value, unit or lubricant are no longer those of the programme.
 * @param {Fact} fact
 * @param {Measured | null} targetNow
 * @param {Pass} pass
 * @param {Programme} plan
 */
export function isStale({ body }, targetNow, pass, plan) {
  if (!wantsValue(pass)) return false;
  const lubricant = plain.text(body.lubricant);
  const changed = lubricant !== null && lubricant !== plan.lubricant;
  return changed || !same(body.target, targetNow);
}
