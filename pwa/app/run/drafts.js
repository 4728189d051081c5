/** The entries a run makes, as drafts for the store. */

/**
 * @typedef {import('./keeping.js').Draft} Draft
 * @typedef {import('./figures.js').Measured} Measured
 */

/**
 * One fastener confirmed at the pass that is open. The target stays in the programme's own unit, so
 * that it can be told later whether it was still the programme's.
 * @param {any} view
 * @param {{id: string, target: Measured | null}} fastener
 * @param {{wrench: string | null, reading?: Measured | null, readAt?: string, together?: boolean}} how
 * @returns {Draft}
 */
export function pull(view, fastener, { wrench, reading = null, readAt, together }) {
  /** @type {Record<string, any>} */
  const body = {
    run: view.run.id,
    fastener: fastener.id,
    pass: view.pass,
    wrench,
    target: fastener.target,
    reading,
  };
  if (view.programme.lubricant) body.lubricant = view.programme.lubricant;
  if (reading && readAt) body.read_at = readAt;
  if (together) body.together = true;
  return { heading: 'pull', about: view.id, after: view.after, body };
}

/**
 * @param {any} view
 * @param {{run: string, lubricant: string, wrench: string | null, overruled?: string, after?: string[]}} facts
 * @returns {Draft}
 */
export function begin(view, { run, lubricant, wrench, overruled, after }) {
  const body = { run, lubricant, wrench, ...(overruled ? { overruled } : {}) };
  return { heading: 'begin', about: view.id, after: after ?? view.after, body };
}

/**
 * Pulls that are void from now on; for one fastener or for all.
 * @param {any} view
 * @param {string[] | null} fasteners
 * @param {string} reason
 * @returns {Draft}
 */
export function loosening(view, fasteners, reason) {
  const meant = view.fasteners.filter(
    (/** @type {any} */ f) => !fasteners || fasteners.includes(f.id),
  );
  const pulls = meant.flatMap((/** @type {any} */ f) => f.live);
  const body = { run: view.run.id, pulls, fasteners, reason };
  return { heading: 'loosening', about: view.id, after: view.after, body };
}

/**
 * @param {any} view
 * @param {string} heading touch, onward, unsourced
 * @param {Record<string, any>} facts
 * @returns {Draft}
 */
export function runFact(view, heading, facts) {
  return { heading, about: view.id, body: { run: view.run.id, ...facts } };
}

/**
 * @param {any} view
 * @param {string} id
 * @param {string} reason
 * @returns {Draft}
 */
export const accept = (view, id, reason) => ({
  heading: 'accept',
  about: view.id,
  body: { pull: id, reason },
});

/**
 * @param {string} id
 * @param {string} reason
 * @returns {Draft}
 */
export const strikeOut = (id, reason) => ({ heading: 'strike-out', about: id, body: { reason } });
