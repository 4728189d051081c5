/** What the list of sets reads: the pieces that are in one, and how many there are of each kind. */

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
