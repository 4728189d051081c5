/** Names of the person's own things inside our sentences. */

/** A name in the middle of a sentence: "Head bolts" becomes "head bolts", "M11 bolt" stays. @param {string} name */
export function inSentence(name) {
  const second = name.slice(1, 2);
  const ordinary =
    second !== '' && second === second.toLowerCase() && second !== second.toUpperCase();
  return ordinary ? name.slice(0, 1).toLowerCase() + name.slice(1) : name;
}

/** A noun at the head of a line. @param {string} noun */
export const capital = (noun) => noun.slice(0, 1).toUpperCase() + noun.slice(1);

/** "Rod 2" before "Rod 10". @param {string} one @param {string} other */
export const natural = (one, other) => one.localeCompare(other, 'en', { numeric: true });

/** Things in the order of their names. @param {{name?: string | null}} one @param {{name?: string | null}} other */
export const byName = (one, other) => natural(one.name ?? '', other.name ?? '');

const both = new Intl.ListFormat('en-GB');

/** "Bore, shaft and gap". @param {string[]} names */
export const inWords = (names) => both.format(names);

/** From so many numbers in a row on, only the first and the last are named. */
const RUN = 3;

/** Names as they are listed: "pedestal 1", "pedestal 2", "pedestal 3" become "pedestal 1 to 3". @param {string[]} names */
export function listed(names) {
  /** @type {Map<string, number[]>} */
  const stems = new Map();
  for (const name of names) {
    const [, stem = name, number] = /^(.*) (\d+)$/.exec(name) ?? [];
    const kept = stems.get(stem) ?? [];
    stems.set(stem, number === undefined ? kept : [...kept, Number(number)]);
  }
  return [...stems].map(([stem, numbers]) => [stem, spans(numbers)].filter(Boolean).join(' '));
}

/** "1 to 6, 9". @param {number[]} numbers */
function spans(numbers) {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  /** @type {number[][]} */
  const runs = [];
  for (const number of sorted) {
    const last = runs.at(-1);
    if (last && number === (last.at(-1) ?? 0) + 1) last.push(number);
    else runs.push([number]);
  }
  const words = runs.flatMap((run) =>
    run.length < RUN ? run.map(String) : [`${run[0]} to ${run.at(-1)}`],
  );
  return words.join(', ');
}
