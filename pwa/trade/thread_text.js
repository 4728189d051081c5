/** Designations of threads, read in the ways people write them. */
import { MM_AN_INCH } from './thread.js';
import {
  ThreadPitchImpossible,
  ThreadPitchMissing,
  ThreadSeriesDiffers,
  ThreadTwoMeanings,
  ThreadUnread,
} from './thread_errors.js';
import { FIRST_INCH_SIZES, inchParts, PARTS, sizeText } from './thread_inches.js';
import { COARSE, FINE, SERIES } from './thread_tables.js';

/** @typedef {import('./thread.js').Thread} Thread */

const LONGEST = 40;
const STEEPEST = 0.3;
const FINEST_MM = 0.2;
const LARGEST_MM = 1000;
const LARGEST_PITCH_MM = 8;

/** @type {Record<string, string>} */
const SIGNS = {
  '×': 'x',
  '*': 'x',
  '″': '"',
  '”': '"',
  '–': '-',
  '−': '-',
  '‑': '-',
  '½': ' 1/2 ',
  '¼': ' 1/4 ',
  '¾': ' 3/4 ',
  '⅜': ' 3/8 ',
  '⅝': ' 5/8 ',
  '⅞': ' 7/8 ',
};
const TOLERANCE = /[\s-]*\b(?:[3-9][ghe](?:[3-9][ghe])?(?:\/[3-9][ghe])?|[123][ab])(?=$|\s*x)/;
const SERIES_WORD = /(\d{1,2})?\s*-?\s*(un[rj]?(?:ef|c|f|s)?|nef|nc|nf|ns)\b/;
const LENGTH = '(?:\\s*x\\s*[0-9][0-9 ./-]*(?:mm|"|in)?)?';
const METRIC = new RegExp(
  `^(m?)\\s*(\\d+(?:\\.\\d+)?)\\s*(?:mm)?(?:\\s*([x/-])\\s*(\\d*\\.?\\d+)\\s*(?:mm)?)?${LENGTH}\\s*(coarse|fine)?$`,
);
const SIZE = '\\d+(?:\\s+|\\s*-\\s*)\\d+\\s*/\\s*\\d+|\\d+\\s*/\\s*\\d+|\\d*\\.\\d+|\\d+';
const INCH = new RegExp(
  `^(#|no\\.?|nr\\.?)?\\s*(${SIZE})\\s*(?:"|inch|in)?(?:\\s*[-x]\\s*|\\s+)?(\\d{1,2}(?:\\.\\d+)?)?\\s*(?:tpi)?${LENGTH}$`,
);
/** @type {Record<string, string>} */
const SERIES_NAMES = { nc: 'UNC', nf: 'UNF', nef: 'UNEF', ns: 'UNS' };

/**
 * The thread that a designation means: M8, m10 x 1,25, 7/16"-20, #10-32, 1/4 UNC, 0.3125-18. A
 * tolerance class and a length behind are passed over.
 * @param {string} typed
 * @returns {Thread}
 */
export function parse(typed) {
  const text = typeof typed === 'string' ? typed.trim() : '';
  if (!text || text.length > LONGEST) throw new ThreadUnread({ typed: text.slice(0, LONGEST) });
  let plain = [...text.toLowerCase()].map((sign) => SIGNS[sign] ?? sign).join('');
  plain = plain
    .trim()
    .split(/\s+/)
    .join(' ')
    .replace(/([0-9]),([0-9])/g, '$1.$2');
  plain = plain.replace(/[\s-]*\blh$/, '').replace(TOLERANCE, '');
  const metric = METRIC.exec(plain);
  if (metric && isMetric(metric)) return metricThread(text, metric);
  const series = SERIES_WORD.exec(plain);
  if (series) {
    const behind = plain.slice(series.index + series[0].length);
    plain = `${plain.slice(0, series.index)}${series[1] ?? ''}${behind}`.replace(
      /^[ -]+|[ -]+$/g,
      '',
    );
  }
  const inch = INCH.exec(plain);
  if (!inch) throw new ThreadUnread({ typed: text });
  return unified(text, inch, series ? seriesName(series[2] ?? '') : null);
}

/**
 * With an M, or as 8x1.25: what stands behind the cross is too little for threads per inch.
 * @param {RegExpExecArray} found
 */
function isMetric(found) {
  if (found[1] || found[5]) return true;
  const bare = found[3] === 'x' || (found[3] === '-' && Number(found[2]) > FIRST_INCH_SIZES);
  return bare && found[4] !== undefined && Number(found[4]) <= LARGEST_PITCH_MM;
}

/** @type {(text: string, found: RegExpExecArray) => Thread} */
function metricThread(text, found) {
  const diameter = Number(found[2]);
  const size = `M${diameter}`;
  const pitch = metricPitch(text, found, diameter, size);
  possible(size, diameter, pitch, `a pitch of ${pitch} mm`);
  const coarse = COARSE.get(diameter) === pitch;
  return Object.freeze({
    standard: /** @type {const} */ ('metric'),
    size,
    series: coarse ? 'coarse' : 'fine',
    designation: coarse ? size : `${size}×${pitch}`,
    diameter_mm: diameter,
    pitch_mm: pitch,
    threads_per_inch: null,
  });
}

/** @type {(text: string, found: RegExpExecArray, diameter: number, size: string) => number} */
function metricPitch(text, found, diameter, size) {
  if (found[4] !== undefined) return Number(found[4]);
  if (found[5] !== 'fine') {
    const pitch = COARSE.get(diameter);
    if (!pitch) throw new ThreadPitchMissing({ typed: text, example: `${size}×1.5` });
    return pitch;
  }
  const [first, second] = FINE.get(diameter) ?? [];
  if (!first) throw new ThreadPitchMissing({ typed: text, example: `${size}×1` });
  if (!second) return first;
  const [one, other] = [`${size}×${first}`, `${size}×${second}`];
  throw new ThreadTwoMeanings({ typed: text, one, other });
}

/** @type {(size: string, diameter: number, pitch: number, said: string) => void} */
function possible(size, diameter, pitch, said) {
  const sized = diameter > 0 && diameter <= LARGEST_MM;
  if (!sized || !(pitch >= FINEST_MM - 1e-9 && pitch <= STEEPEST * diameter)) {
    throw new ThreadPitchImpossible({ size, pitch: said });
  }
}

/** @param {string} word */
function seriesName(word) {
  const plain = word.replace(/^un[rj]/, 'un');
  return SERIES_NAMES[plain] ?? plain.toUpperCase();
}

/** @type {(text: string, found: RegExpExecArray, series: string | null) => Thread} */
function unified(text, found, series) {
  const given = found[3] ? Number(found[3]) : null;
  const parts = inchParts(text, found[2] ?? '', Boolean(found[1]), given);
  const size = sizeText(parts);
  const tpi = given ?? onlyPitch(text, size, series);
  if (!tpi) throw new ThreadPitchImpossible({ size, pitch: '0 threads per inch' });
  const own = [...SERIES].find(([, table]) => table.get(size) === tpi)?.[0] ?? null;
  if (series && SERIES.has(series) && own !== series) {
    throw new ThreadSeriesDiffers({ typed: text, one: own ?? 'in no series', other: series });
  }
  const diameter = (parts * MM_AN_INCH) / PARTS;
  possible(size, diameter, MM_AN_INCH / tpi, `${tpi} threads per inch`);
  return Object.freeze({
    standard: /** @type {const} */ ('unified'),
    size,
    series: own ?? 'UN',
    designation: `${size}-${tpi} ${(own ?? 'UN').replace('8', '')}`,
    diameter_mm: diameter,
    pitch_mm: MM_AN_INCH / tpi,
    threads_per_inch: tpi,
  });
}

/** @type {(text: string, size: string, series: string | null) => number} */
function onlyPitch(text, size, series) {
  const table = series ? SERIES.get(series) : undefined;
  if (table) {
    const tpi = table.get(size);
    if (tpi) return tpi;
    throw new ThreadPitchMissing({ typed: text, example: `${size}-20` });
  }
  const usual = ['UNC', 'UNF'].flatMap((name) => SERIES.get(name)?.get(size) ?? []);
  const [one, other] = usual.map((tpi) => `${size}-${tpi}`);
  if (other) throw new ThreadTwoMeanings({ typed: text, one, other });
  throw new ThreadPitchMissing({ typed: text, example: one ?? `${size}-20` });
}
