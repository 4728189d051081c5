/** Sentences about what was found, when, by whom and on which device. */
import { dayOf } from '../dates.js';
import { nameOfOther, ownDevice } from '../device_names.js';
import { t } from '../texts/index.js';
import '../texts/history.js';
import { local } from '../values.js';
import { capital } from '../words.js';

const MOST_DIGITS = 6;

/** @param {number} size @param {number} decimals */
export const figure = (size, decimals) => local(size.toFixed(Math.min(decimals, MOST_DIGITS)));

/** A share as whole per cent. @param {number} share */
export const percent = (share) => String(Math.round(share * 100));

/** The device by its name; this one is called so. @param {string} device */
function deviceSays(device) {
  if (device === ownDevice.value || ownDevice.value === '') return t('history.own');
  return nameOfOther(device) ?? t('history.other');
}

/** "12 Oct, Kim, bench phone". @param {any} line */
export const madeSays = (line) =>
  [dayOf(line), line.by, deviceSays(line.device)].filter(Boolean).join(', ');

/** What a line is: a verdict, a look, a reading, a way to or from the machine shop. @param {any} line */
export function headSays(line) {
  const verdict = line.verdict ? t(`verdict.${line.verdict}`) : '';
  if (line.heading === 'sent') return t('history.sent', { to: line.to ?? '' });
  if (line.heading === 'returned')
    return t(verdict ? 'history.returned.verdict' : 'history.returned', { verdict });
  if (line.heading === 'reading') return capital(line.readings[0]?.name ?? t('history.reading'));
  return verdict || t('history.looked');
}

/** "Length, top: 187.05 mm". @param {any} reading */
export function readingSays({ name, position, direction, value, unit }) {
  const where = [name, position, direction].filter(Boolean).join(', ');
  const amount = `${local(value)} ${unit}`;
  return where ? `${where}: ${amount}` : amount;
}

/** A question inside our sentence, without its own full stop. @param {string} asks */
const bare = (asks) => asks.replace(/[.?]+$/, '');

/** What was not good. @param {any} line */
export const badSays = ({ bad }) =>
  bad.length ? t('history.bad', { what: bad.map(bare).join('; ') }) : '';

/** Everything of a line in one sentence, for a row. @param {any} line */
export const rowSays = (line) =>
  [
    headSays(line),
    line.struck && t('history.struck'),
    line.reason,
    line.for,
    badSays(line),
    line.note,
    ...line.readings.map(readingSays),
    madeSays(line),
  ]
    .filter(Boolean)
    .join(' · ');

/** The limits of a measure with where they come from. @param {any} measure */
export function limitsSay({ least, most, unit, source }) {
  const facts = {
    least: local(least ?? ''),
    most: local(most ?? ''),
    unit: unit ?? '',
    source: source ?? t('history.unsourced'),
  };
  if (!least && !most) return t('history.limits.none');
  const which = least && most ? 'limits' : least ? 'limits.least' : 'limits.most';
  return t(`history.${which}`, facts);
}

/** What is so outside or nearly. @param {any} measure */
function crossed({ outside, close }) {
  const words = [
    outside > 0 && t('history.outside', { n: outside }),
    close > 0 && t('history.close', { n: close }),
  ].filter(Boolean);
  return words.length ? `${words.join(', ')}.` : '';
}

/** The readings of a measure in sentences, for one part or for many. @param {any} measure @param {boolean} many */
export function measureSays(measure, many) {
  const { points, unit, low, high, mean, decimals, pieces } = measure;
  const open = points.filter((/** @type {any} */ point) => !point.struck);
  const n = open.length;
  if (!n) return limitsSay(measure);
  const facts = { n, unit: unit ?? '', low: figure(low, decimals), high: figure(high, decimals) };
  const span = many
    ? t('history.span.many', {
        ...facts,
        readings: t('history.readings', { n }),
        pieces: t('history.pieces', { n: pieces }),
        mean: figure(mean, decimals),
      })
    : t('history.span', facts);
  return [many ? '' : lastSays(open.at(-1), facts.unit), span, crossed(measure), limitsSay(measure)]
    .filter(Boolean)
    .join(' ');
}

/** @param {any} point @param {string} unit */
function lastSays({ size, decimals, verdict }, unit) {
  const facts = {
    size: figure(size, decimals),
    unit,
    lies: verdict ? t(`history.lies.${verdict}`) : '',
  };
  return t(verdict ? 'history.last.lies' : 'history.last', facts);
}
