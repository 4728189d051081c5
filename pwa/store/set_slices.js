/** What lists over all kinds read: the pieces in sets, how many of each kind, what has no kind. */

/** @typedef {import('./reader.js').Reader} Reader */

/** Every set with the pieces it holds, kinds and builds. @param {Reader} reader */
export async function sets(reader) {
  const [found] = await Promise.all(['set', 'kind', 'build'].map(reader.heading));
  const held = (found ?? []).flatMap((one) => {
    const pieces = one.fields.pieces?.value;
    return Array.isArray(pieces) ? pieces.map((each) => each?.part) : [];
  });
  await reader.all(held.filter((id) => typeof id === 'string'));
}

/** How many pieces there are of each kind. @param {Reader} reader @returns {Promise<Map<string, number>>} */
export async function countKinds(reader) {
  const kinds = await reader.heading('kind');
  const counts = await Promise.all(kinds.map(({ id }) => reader.count(id, 'of-kind')));
  return new Map(kinds.map(({ id }, at) => [id, counts[at] ?? 0]));
}

/** The parts of no kind that is here. @param {Reader} reader */
export async function kindless(reader) {
  const kinds = (await reader.heading('kind')).filter(({ hidden }) => !hidden);
  const [all, ...known] = await Promise.all([
    reader.ids('heading', 'part'),
    ...kinds.map(({ id }) => reader.ids('links', `of-kind ${id}`)),
  ]);
  const seen = new Set(known.flat());
  await reader.all((all ?? []).filter((id) => !seen.has(id)));
}
