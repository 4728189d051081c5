/** Which things the last writes touched, so that what was read before need not all be read again. */

const LATELY = 60;

/** The tables from which things are read; what lies in others changes none of them. */
const READ_FROM = ['entry', 'subject', 'dirty'];

/** @type {ReadonlySet<string>} */
const NOTHING = new Set();

/**
 * The things a write changed: none, those it tells itself, or null for any.
 * @param {string[]} tables @param {any} result what its work gave
 * @returns {ReadonlySet<string> | null}
 */
export function touchedBy(tables, result) {
  if (!READ_FROM.some((table) => tables.includes(table))) return NOTHING;
  return result?.touched instanceof Set ? result.touched : null;
}

/** How many writes there were, and what the latest of them touched. */
export function makeWritten() {
  let writes = 0;
  /** @type {(ReadonlySet<string> | null)[]} */
  const lately = [];
  return {
    count: () => writes,
    /** @param {ReadonlySet<string> | null} touched null: it may be anything */
    add: (touched) => {
      writes += 1;
      lately.push(touched);
      if (lately.length > LATELY) lately.shift();
    },
    /** What was touched after so many writes, or null when it may be anything. @param {number} count @returns {Set<string> | null} */
    since: (count) => {
      if (writes - count > lately.length) return null;
      const sets = lately.slice(lately.length - (writes - count));
      return sets.some((one) => one === null)
        ? null
        : new Set(sets.flatMap((one) => [...(one ?? [])]));
    },
  };
}
