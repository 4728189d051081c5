/** What one inspection read, in the record of its part: each spot's mean, verdict and instruments. */

import { value } from '../../log/workshop.js';
import * as plain from '../../views/plain.js';
import { sameSpot } from '../../views/told.js';
import { html } from '../frame/html.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';
import '../texts/inspect_measures.js';
import { shapeSays, sureSays, whereSays } from './says.js';
import { Sign } from './sign.js';

/**
 * @param {{one: any, measured: any[], workshop: any}} props one: an inspection of the part view;
 *   measured: what the part's measures tell, every round of them
 */
export function Readings({ one, measured, workshop }) {
  const lines = [
    ...measured.flatMap((measure) => {
      const round = measure.rounds.find((/** @type {any} */ each) => each.inspection === one.id);
      return round ? linesOf(measure, round, workshop) : [];
    }),
    ...others(one, measured),
  ];
  if (!lines.length) return null;
  return html`<ul class="soft">${lines.map((line) => html`<${Line} struck=${one.struck} line=${line} />`)}</ul>`;
}

/** One line; what lies outside stands out, unless it was struck out. @param {{struck: any, line: string | {out: string}}} props */
function Line({ struck, line }) {
  const says = typeof line === 'string' ? line : line.out;
  if (struck) return html`<li><s>${says}</s></li>`;
  if (says === line) return html`<li>${says}</li>`;
  return html`<li class="off-limit"><${Sign} /><span>${says}</span></li>`;
}

/** @param {any} measure @param {any} round @param {any} workshop @returns {(string | {out: string})[]} */
function linesOf(measure, round, workshop) {
  if (!round.spots.length)
    return round.readings.map((/** @type {any} */ each) => asTyped(measure, each));
  const spots = round.spots.map((/** @type {any} */ spot) => {
    const words = [
      sureSays(round, spot),
      spot.verdict ? t(`measure.word.${spot.verdict}`) : '',
      withWhat(round, spot, workshop),
    ];
    const line = `${named(measure, spot)}: ${words.filter(Boolean).join('; ')}`;
    return spot.verdict === 'outside' ? { out: line } : line;
  });
  const shape = shapeSays(round).join('; ');
  return shape ? [...spots, `${measure.name}: ${shape}`] : spots;
}

/** @param {any} measure @param {any} spot */
const named = (measure, spot) => [measure.name, whereSays(spot)].filter(Boolean).join(', ');

/** @param {any} measure @param {any} reading */
const asTyped = (measure, reading) =>
  `${named(measure, reading)}: ${local(reading.value)} ${reading.unit}`;

/** @param {any} round @param {any} spot @param {any} workshop */
function withWhat(round, spot, workshop) {
  const ids = round.readings
    .filter((/** @type {any} */ each) => each.instrument && sameSpot(each, spot))
    .map((/** @type {any} */ each) => each.instrument);
  return plain
    .once(ids)
    .map((id) => value(workshop.subject(id), 'name') ?? t('measure.with.unknown'))
    .join(', ');
}

/** Readings of what the kind no longer measures. @param {any} one @param {any[]} measured */
function others(one, measured) {
  const known = new Set(measured.map(({ id }) => id));
  return plain.mappings(one.readings).flatMap((each) => {
    const read = plain.measured(each.value);
    if (!read || known.has(each.measure)) return [];
    return asTyped({ name: t('measure.gone') }, { ...each, ...read });
  });
}
