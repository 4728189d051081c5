/** What readings say, in words: limits, mean, verdict, how sure it is, what speaks against use. */

import { rounded } from '../../trade/units.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';
import '../texts/inspect_measures.js';
import { isCrossed, toldOf } from './readings.js';

const MOST_DECIMALS = 8;

/** @param {any} measure */
export function limitsSay(measure) {
  const { least, most, unit } = measure;
  const facts = { least: local(least ?? ''), most: local(most ?? ''), unit };
  if (!least && !most) return t('measure.limits.none');
  const says = least && most ? 'limits' : least ? 'limits.least' : 'limits.most';
  if (isCrossed(measure)) return `${t('measure.limits', facts)}, ${t('measure.limits.crossed')}`;
  return `${t(`measure.${says}`, facts)}, ${measure.source || t('measure.unsourced')}`;
}

/** Two figures of an uncertainty are told, the last one rounded up. @param {number} uncertainty */
function upward(uncertainty) {
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, 1 - Math.floor(Math.log10(uncertainty))));
  const up = Math.ceil(uncertainty * 10 ** decimals - 1e-6) / 10 ** decimals;
  return local(rounded(up, decimals));
}

/** How sure a reading is. @param {number} uncertainty @param {string} unit */
export const plusMinus = (uncertainty, unit) =>
  t('measure.sure', { value: upward(uncertainty), unit });

/** Where a reading stands, or nothing. @param {any} spot */
export const whereSays = (spot) => [spot?.position, spot?.direction].filter(Boolean).join(', ');

/** An amount with the decimals its readings are worth. @param {any} found @param {number} amount */
function figure(found, amount) {
  const more = found.times > found.spots.length ? 1 : 0;
  return local(rounded(amount, Math.min(MOST_DECIMALS, found.decimals + more)));
}

/** The mean, and of how many readings it is. @param {any} found */
export function meanSays(found) {
  const mean = `${local(found.value)} ${found.unit}`;
  return found.times > found.of ? `${mean}, ${t('measure.mean', { n: found.times })}` : mean;
}

/** One spot's mean in the words of a line. @param {any} found @param {any} spot */
export function spotSays(found, spot) {
  const mean = `${figure(found, spot.mean)} ${found.unit}`;
  return spot.times > 1 ? `${mean}, ${t('measure.mean', { n: spot.times })}` : mean;
}

/** One spot's mean with its uncertainty, for the record. @param {any} found @param {any} spot */
export function sureSays(found, spot) {
  const sure = plusMinus(spot.uncertainty, found.unit);
  const mean = `${figure(found, spot.mean)} ${sure}`;
  return spot.times > 1 ? `${mean}, ${t('measure.mean', { n: spot.times })}` : mean;
}

/** @param {any} found @returns {string[]} */
export const shapeSays = (found) =>
  ['out_of_round', 'taper'].flatMap((name) =>
    found[name] === null
      ? []
      : t(`measure.${name}`, { value: `${figure(found, found[name])} ${found.unit}` }),
  );

/** Of several spots the one the verdict comes from: their mean may lie where it does not. @param {any} found */
function deciding(found) {
  if (found.spots.length < 2 || !['outside', 'too-close'].includes(found.verdict)) return null;
  const spot = found.spots.find((/** @type {any} */ one) => one.verdict === found.verdict);
  return spot ? `${whereSays(spot)}: ${spotSays(found, spot)}` : null;
}

/** A measure's row while the piece is under the lamp. @param {any} measure @param {any} found */
export function foundSays(measure, found) {
  if (!found.times) return [measure.instrument, limitsSay(measure)].filter(Boolean).join('; ');
  return [
    deciding(found) ?? meanSays(found),
    found.of > 1 && found.read < found.of ? t('measure.far', found) : '',
    isCrossed(measure) ? t('measure.limits.crossed') : '',
    found.verdict ? t(`measure.${found.verdict}`) : '',
    ...shapeSays(found),
  ]
    .filter(Boolean)
    .join('; ');
}

/**
 * One spot outside its limits, in a sentence.
 * @param {any} measure
 * @param {any} found
 * @param {any} spot
 */
function outsideSays(measure, found, spot) {
  const { name, least, most, unit } = measure;
  const below = Boolean(least) && spot.mean < Number(least);
  const where = whereSays(spot);
  return t(below ? 'measure.below' : 'measure.above', {
    name: where ? `${name} (${where})` : name,
    value: `${figure(found, spot.mean)} ${unit}`,
    limit: local(below ? least : most),
  });
}

/**
 * What speaks against using a piece, a sentence each: answered no, or read outside its limits.
 * @param {import('./judging.js').Asked} asked
 * @param {any} draft
 * @returns {string[]}
 */
export const against = ({ criteria, measures, tools }, { looks, readings }) => [
  ...criteria
    .filter((one) => looks[one.id] === false)
    .map(({ asks }) => t('measure.answered-no', { asks })),
  ...measures.flatMap((measure) => {
    const found = toldOf(measure, readings, tools);
    return found.spots
      .filter(({ verdict }) => verdict === 'outside')
      .map((spot) => outsideSays(measure, found, spot));
  }),
];

const MOST_SENTENCES = 2;

/** Why a reason is asked for before it is used. @param {string[]} held */
export function heldSays(held) {
  const more = held.length - MOST_SENTENCES;
  return [
    ...held.slice(0, MOST_SENTENCES),
    ...(more > 0 ? [t('measure.against.more', { n: more })] : []),
    t('measure.against.why'),
  ].join(' ');
}
