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
