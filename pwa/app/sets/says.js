/** Sentences about a set, made from what the search found. */
import { t } from '../texts/index.js';
import { local } from '../values.js';

/** A size with the digits it was read with. @param {number} size @param {number} decimals */
export const figure = (size, decimals) => local(size.toFixed(Math.min(decimals, 6)));

/** The most decimals any piece was read with. @param {any[]} pieces @param {number} at */
export const decimalsOf = (pieces, at) =>
  Math.max(0, ...pieces.map(({ sizes }) => sizes[at]?.decimals ?? 0));

/** The names of sets, one after another. @param {{id: string, name: string | null}[]} sets */
export const namesSay = (sets) => sets.map(({ id, name }) => name ?? id).join(', ');

/** The other sets that hold pieces of this one, each once. @param {any[]} pieces @returns {any[]} */
export const othersOf = (pieces) => [
  ...new Map(
    pieces.flatMap(({ also }) => also.map((/** @type {any} */ one) => [one.id, one])),
  ).values(),
];

/** Spreads in words: "0.05 mm", or each with its measure. @param {any} asked @param {readonly number[]} spreads */
export function spreadSays({ measures, measured }, spreads) {
  const says = spreads.map((spread, i) => {
    const { at, unit, name } = measures[i];
    const size = figure(spread, decimalsOf(measured, at));
    const key = measures.length > 1 ? 'set.spread' : 'set.spread.one';
    return t(key, { size, unit: unit ?? '', measure: name });
  });
  return says.reduce((one, other) => t('set.and', { one, other }));
}

/** "These 12 span 0.05 mm. The next best spare, Rod 3, widens it to 0.08 mm." @param {any} asked @param {Map<string, string>} names */
export function setSays(asked, names) {
  const { found, count } = asked;
  const spread = spreadSays(asked, found.spreads);
  return `${t('set.spans', { n: count, spread })} ${nextSays(asked, spread, names)}`;
}

/** @param {any} asked @param {string} was @param {Map<string, string>} names */
function nextSays(asked, was, names) {
  const [next] = asked.found.spares;
  if (!next) return t('set.no-spare');
  const spread = spreadSays(asked, next.spreads);
  return t(spread === was ? 'set.same' : 'set.next', { name: names.get(next.name) ?? '', spread });
}
