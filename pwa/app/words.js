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
