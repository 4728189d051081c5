/** Sentences about a gauge study, made from what its view says. */
import { t } from '../texts/index.js';
import '../texts/study.js';
import { local as separated } from '../values.js';

/** A number as the device writes it, with a minus that can be seen. @param {string} text */
const local = (text) => separated(text.replace('-', '−'));

const DIGITS = 3;
const MOST_DECIMALS = 8;

/** A figure of three digits that count: 0.200, 1.04, 12.5, 437. @param {number} size */
export function figure(size) {
  const whole = size === 0 ? 0 : Math.floor(Math.log10(Math.abs(size)));
  const decimals = Math.min(MOST_DECIMALS, Math.max(0, DIGITS - 1 - whole));
  return local(size === 0 ? '0' : size.toFixed(decimals));
}

/** "20.1" of a share. @param {number} share */
export const percent = (share) => local((share * 100).toFixed(share < 1 ? 1 : 0));

/** "39.95 to 40.05 mm". @param {any} study */
export function limitsSay({ least, most, unit }) {
  if (least === null && most === null) return '';
  const word = least === null ? 'limits.most' : most === null ? 'limits.least' : 'limits';
  return t(`study.${word}`, { least: local(least ?? ''), most: local(most ?? ''), unit });
}

/** "Ann, Ben". @param {any} study */
export const planSays = ({ pieces, people, repeats }) =>
  t('study.plan', { pieces, people: people.join(', '), repeats });

/** A reading as it was typed. @param {{value: string, unit: string} | null} value */
export const readingSays = (value) => (value ? `${local(value.value)} ${value.unit}` : '');

/** "Ann, piece 2, time 1". @param {any} at */
export const atSays = ({ piece, person, repeat }) => t('study.trial', { piece, person, repeat });

/** What it came to, sentence after sentence. @param {any} study @returns {string[]} */
export function verdictSays(study) {
  const { figures, trouble, state } = study;
  if (trouble) return [troubleSays(trouble)];
  if (!figures) return [];
  const { against, verdict, share, share_of_total } = figures;
  const limits = against === 'limits' ? limitsSay(study) : t('study.these');
  const far = state === 'done' ? '' : t('study.so-far', { n: figures.repeats });
  const because = t(`study.because.${against}`, { share: percent(share ?? share_of_total) });
  return [[far, t(`study.verdict.${verdict}`, { limits }), because].filter(Boolean).join(' ')];
}

const TROUBLES = ['gauge-study-small', 'gauge-study-no-spread'];

/** @param {string} code */
const troubleSays = (code) =>
  t(TROUBLES.includes(code) ? `study.trouble.${code}` : 'study.trouble');

const CAUSES = ['repeatability', 'reproducibility', 'interaction'];

/** Where most of the scatter comes from; nothing where the gauge is good enough. @param {any} figures */
export function causeSays(figures) {
  if (figures.verdict === 'good') return '';
  const [worst] = [...CAUSES].sort((one, other) => figures[other] - figures[one]);
  return t(`study.cause.${worst}`);
}

/** A line of a list: how far it is, or what it came to. @param {any} study */
export function rowSays(study) {
  const { figures, asks, done, of, state } = study;
  const limits = limitsSay(study);
  if (asks.length) return [t('study.asks', { n: asks.length }), limits].filter(Boolean).join(' · ');
  if (state === 'done' && figures)
    return [t(`study.verdict.short.${figures.verdict}`), limits].filter(Boolean).join(' · ');
  return [t('study.far', { done, of }), limits].filter(Boolean).join(' · ');
}
