/** Cautions of the workings: a signal word, what may happen, and how to avoid it. */

/** Code → signal word of ISO 3864 and sentence, filled in with facts. @type {Record<string, [string, string]>} */
export const SAYS = {
  'adapter-starts-at': [
    'caution',
    'The wrench starts at {least}, so it cannot be set to {setting}. Take a smaller wrench.',
  ],
  'adapter-ends-at': [
    'caution',
    'The wrench ends at {most}, so it cannot be set to {setting}. Take a larger wrench.',
  ],
  'adapter-grip': [
    'notice',
    'Pull at the middle of the grip, where the length was measured, and keep the angle. Otherwise something else arrives at the bolt.',
  ],
  'clearance-outside': ['caution', '{value} lies outside the window {window}.'],
  'clearance-close': [
    'caution',
    'Too close to call: these readings are sure to ±{sure} only. Measure again, or with a finer instrument.',
  ],
  'clearance-narrow': [
    'caution',
    'The window {window} is narrower than these readings can prove. Use a finer instrument.',
  ],
  'clearance-digits': [
    'notice',
    'Only the last digit typed is doubted here. Hand, warmth and instrument add more: type what each reading is sure to.',
  ],
  'ring-gap-small': [
    'caution',
    'The gap is smaller than usual. A ring whose ends meet when hot breaks or scores the bore.',
  ],
  'ring-gap-large': ['notice', 'The gap is larger than usual. Look at ring, bore and place again.'],
  'ring-gap-manual': [
    'notice',
    'The manual says how wide the gap must be, and often more for the second ring.',
  ],
  'fit-unusual': [
    'notice',
    '{value} is not what such a fit usually has ({usual}, rule of thumb). Measure again; the manual decides.',
  ],
};

/** @typedef {{word: string, code: string, facts: Record<string, string>, says: string}} Caution */

/**
 * A caution by its code.
 * @param {string} code
 * @param {Record<string, string>} [facts]
 * @returns {Caution}
 */
export function caution(code, facts = {}) {
  const [word, says] = /** @type {[string, string]} */ (SAYS[code]);
  const filled = says.replace(/\{(\w+)\}/g, (_, name) => facts[name] ?? '');
  return Object.freeze({ word, code, facts, says: filled });
}
