/** What the wrench in the hand is set to for a fastener, and what it then is at the bolt. */

import { quantityOf } from '../../trade/units.js';
import { atBolt, ratio, settingLine, shown } from '../../views/setting.js';
import { t } from '../texts/index.js';
import { local, written } from './figures.js';
import { offSays } from './marks.js';

/** @typedef {import('./figures.js').Measured} Measured */

/** Whether the joint's adapter says what to set. @param {any} view */
export const isThrough = (view) => ratio(view.adapter) !== null;

/**
 * Null for passes without a torque. Without a wrench the target's own unit counts.
 * @param {any} view
 * @param {any} fastener
 * @param {any} pass
 * @param {any} wrench
 */
export function settingNow(view, fastener, pass, wrench) {
  const target = fastener?.target;
  if (pass?.how !== 'torque' || !target) return null;
  const tool = isTorque(wrench?.unit) ? wrench : { ...NO_SCALE, unit: target.unit };
  const line = settingLine(tool, target, view.adapter);
  if (!line.set) return null;
  return { ...line, target, through: isThrough(view), figure: line.mark ?? line.set };
}

const NO_SCALE = { least: null, most: null, graduation: null };

/** @param {string | null | undefined} unit */
const isTorque = (unit) => Boolean(unit) && quantityOf(unit ?? '') === 'torque';

/**
 * The target as the scale of the wrench shows it, in a unit.
 * @param {any} view
 * @param {Measured} target
 * @param {string} unit
 * @returns {Measured}
 */
export function targetAtWrench(view, target, unit) {
  return settingLine({ ...NO_SCALE, unit }, target, view.adapter).set ?? target;
}

/** What arrives at the bolt by the nearest mark, where that is not what is wanted. @param {any} now */
export function markGives(now) {
  if (!now?.through || !now.mark || Number(now.off) === 0) return '';
  return t('run.mark.gives', { bolt: local(now.at_bolt.value) });
}

/** The nearest mark of the wrench and how far it is off, where the figure is no mark. @param {any} now */
export function markNear(now) {
  if (!now || now.through || !now.mark || Number(now.off) === 0) return '';
  return t('run.mark', { mark: written(now.mark), off: offSays(now.off) });
}

/** What a reading at the wrench is at the bolt, in its own unit. @param {any} view @param {Measured | null} reading */
export function boltSays(view, reading) {
  const bolt = reading && atBolt(reading, view.adapter);
  if (!bolt) return '';
  return t('reading.at-bolt', { value: local(shown(Number(bolt.value))) });
}

/** What the wrench pulls through, or nothing. @param {any} view */
export function adapterSays(view) {
  if (!view.adapter) return '';
  const name = view.adapter.name ?? t('run.adapter.unnamed');
  return isThrough(view) ? name : t('run.adapter.unknown', { name });
}

/** Why the wrench in the hand cannot be set so, or nothing. @param {any} wrench @param {any} now */
export function rangeSays(wrench, now) {
  if (!now || !wrench?.why) return '';
  const end = wrench.why === 'starts-at' ? wrench.least : wrench.most;
  const facts = { end: written({ value: end, unit: wrench.unit }), set: written(now.set) };
  return t(`run.range.${wrench.why}`, facts);
}
