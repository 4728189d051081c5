/** Cautions of the workings: a signal word, what may happen, and how to avoid it. */

/** Signal words of ISO 3864, the gravest first; so the cautions of a result stand. */
export const WEIGHTS = ['danger', 'warning', 'caution', 'notice'];

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
  'only-digits': [
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
  'preload-thumb': [
    'notice',
    'Nut factors scatter widely. This shows a slip of the keypad; it never judges the value of a manual.',
  ],
  'preload-no-class': [
    'notice',
    'Without the class of the bolt nothing can be said about its proof load.',
  ],
  'preload-out-by-ten': [
    'caution',
    'Out by ten? {typed} would be {share_as_typed} of the proof load, {value} would be {share}.',
  ],
  'preload-wrong-unit': [
    'caution',
    'Another unit? {typed} would be {share_as_typed} of the proof load, {value} would be {share}.',
  ],
  'preload-dry-on-oiled': [
    'caution',
    'A value for dry threads? On this thread it would be {share_as_typed} of the proof load, on a dry one {share}.',
  ],
  'preload-above-proof': [
    'warning',
    '{typed} would be {share} of the proof load. The bolt may stretch for good or break. Compare it with the service manual.',
  ],
  'preload-far-below': [
    'caution',
    '{typed} would be only {share} of the proof load. Compare it with the service manual.',
  ],
  'preload-may-pass-proof': [
    'notice',
    'Where friction is least it would be {share_high} of the proof load.',
  ],
  'preload-lubricant-differs': [
    'caution',
    'The value is for {value_for} threads and this one is {state}: the preload changes by {change}. Ask the manual for the value that fits.',
  ],
  'stretch-over-proof': [
    'warning',
    'This is more than the proof load. The bolt may stay longer for good.',
  ],
  'stretch-more': [
    'notice',
    'Head and nut give a little too, so the real stretch is somewhat more.',
  ],
  'ratio-strikes': [
    'warning',
    'The piston stands higher than the gasket is thick: it would strike the head. Measure again, and turn nothing over.',
  ],
  'ratio-quench': [
    'notice',
    'The quench is not what is usual (0.8 to 1.3 mm, rule of thumb). The manual decides.',
  ],
  'ratio-volumes': ['notice', 'Valve to piston and knocking are not judged by this.'],
  'preload-no-nut-factor': [
    'notice',
    'No nut factor is known for what is on the thread, so the band of all states is taken.',
  ],
  'bring-few': [
    'notice',
    'Inspected so far: {inspected}. The share is hardly known. Look at more, and work it out again.',
  ],
  'bring-new-cheaper': ['notice', 'The new ones cost no more than so many used ones.'],
  'set-outside': ['notice', 'Turned away by the limits: {pieces}.'],
};

/** @typedef {{word: string, code: string, facts: Record<string, string>, says: string}} Caution */

/**
 * A caution by its code.
 * @param {string} code
 * @param {Record<string, string>} [facts]
 * @param {string} [word] another signal word than its usual one
 * @returns {Caution}
 */
export function caution(code, facts = {}, word = SAYS[code]?.[0] ?? 'caution') {
  const says = SAYS[code]?.[1] ?? '';
  const filled = says.replace(/\{(\w+)\}/g, (_, name) => facts[name] ?? '');
  return Object.freeze({ word, code, facts, says: filled });
}
