/** What a wrench is set to, in words: its nearest mark, and what that is at the bolt. */

import { t } from '../texts/index.js';
import { local, written } from './figures.js';

/** @param {string} off per cent as the view gives it */
export function offSays(off) {
  const percent = local(off.replace('-', ''));
  const side = Number(off) === 0 ? 'on' : off.startsWith('-') ? 'under' : 'over';
  return t(`wrench.off.${side}`, { percent });
}

/**
 * One wrench of a list: nearest mark and how far it is off, or what to set through an adapter.
 * @param {any} line as the joint view gives it
 * @param {boolean} through whether an adapter of known lengths is used
 */
export function markSays({ takes, set, mark, at_bolt, off }, through) {
  if (takes === false || !set) return '';
  if (mark && through) return t('wrench.mark.set', { mark: written(mark), bolt: written(at_bolt) });
  if (mark) return t('wrench.mark', { mark: written(mark), off: offSays(off) });
  return through ? t('wrench.set', { set: written(set) }) : '';
}
