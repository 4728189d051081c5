/** Fasteners that are used once: torque-to-yield bolts, lock tabs, crush washers. */
import { count } from './amounts.js';

/**
 * A caution where a fastener that is used once was used before; null where it may be used. Loosening
 * makes it no newer.
 * @param {boolean} singleUse
 * @param {number} usesBefore how often it was tightened to its value in an earlier run
 */
export function useCaution(singleUse, usesBefore) {
  const uses = count(usesBefore, 'number of uses');
  return singleUse && uses ? Object.freeze({ word: 'warning', code: 'used-already', uses }) : null;
}
