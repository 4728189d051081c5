/**
 * The four merge rules. Each takes lines in order and gives its share of a subject.
 *
 * All of them are unions: commutative, associative and the same when a line comes twice, because
 * the fold has put the lines in one order and dropped doubles before.
 *
 * @typedef {import('./values.js').Entry} Entry
 * @typedef {import('./values.js').Fact} Fact
 * @typedef {import('./values.js').FieldNow} FieldNow
 * @typedef {import('./values.js').Strike} Strike
 * @typedef {import('./values.js').Struck} Struck
 * @typedef {{entry: Entry, order: string, struck: Struck | null}} Line
 * @typedef {{fields: Record<string, FieldNow>, facts: Fact[], strikes: Strike[]}} Share
 * @typedef {(lines: Line[]) => Share} Merge
 */

/** @type {(share: Partial<Share>) => Share} */
const share = (share) => ({ fields: {}, facts: [], strikes: [], ...share });

/**
 * Facts side by side: two devices that saw the same give two facts.
 * @type {Merge}
 */
export function keepBoth(lines) {
  return share({ facts: lines.map(fact) });
}

/**
 * Facts of which one is current: one stands until another of its heading names it.
 * A struck fact neither stands nor keeps others from standing.
 * @type {Merge}
 */
export function oneStands(lines) {
  const named = new Set();
  for (const { entry, struck } of lines) {
    if (struck) continue;
    for (const earlier of entry.after ?? []) named.add(`${entry.heading} ${earlier}`);
  }
  const facts = lines.map((line) => {
    const over = named.has(`${line.entry.heading} ${line.entry.id}`);
    return { ...fact(line), stands: line.struck === null && !over };
  });
  return share({ facts });
}

/**
 * Descriptions: for each field the last claim wins, the others stay as its history.
 * A null competes like a value; a struck description competes for none of its fields.
 * @type {Merge}
 */
export function latestPerField(lines) {
  /** @type {Map<string, import('./values.js').Claim[]>} */
  const claims = new Map();
  for (const line of lines) {
    if (line.struck) continue;
    const { device, id } = line.entry;
    for (const [name, value] of Object.entries(line.entry.body.fields)) {
      const said = claims.get(name) ?? [];
      claims.set(name, [{ value, order: line.order, device, entry: id }, ...said]);
    }
  }
  const fields = [...claims].map(([name, [last, ...lost]]) => [name, { ...last, lost }]);
  return share({ fields: Object.fromEntries(fields) });
}

/**
 * Strike-outs: each voids the entry it is about; which of them count is the fold's to say.
 * @type {Merge}
 */
export function strikeOut(lines) {
  const strikes = lines.map(({ entry, order }) => ({
    id: entry.id,
    target: entry.about,
    order,
    device: entry.device,
    made: entry.made,
    by: entry.by ?? null,
    n: entry.n,
    reason: entry.body.reason,
    counts: false,
  }));
  return share({ strikes });
}

/**
 * For each struck target its first strike-out; a second one changes nothing.
 * @param {Line[]} lines
 * @param {Set<string>} targets ids that may be struck, which those of strike-outs are not
 * @returns {Map<string, Struck>}
 */
export function struckBy(lines, targets) {
  const struck = new Map();
  for (const { entry } of lines) {
    if (!targets.has(entry.about) || struck.has(entry.about)) continue;
    const { id, made, device } = entry;
    struck.set(entry.about, { id, reason: entry.body.reason, made, device });
  }
  return struck;
}

/**
 * @param {Line} line
 * @returns {Fact}
 */
function fact({ entry, order, struck }) {
  return {
    id: entry.id,
    heading: entry.heading,
    order,
    stamp: entry.stamp,
    device: entry.device,
    made: entry.made,
    by: entry.by ?? null,
    n: entry.n,
    after: entry.after ?? [],
    body: entry.body,
    clock_off: order !== entry.stamp,
    struck,
  };
}
